import type { ChangeKind } from './change.ts'
import type { DataRow, RecordTable } from './records.ts'

/** What tells the things of a list apart, and what a changed column of them means. */
export interface ThingSpec {
  table: Exclude<RecordTable, 'signals'>
  idOf(row: DataRow): string
  textOf(row: DataRow): string
  /** Columns of the name: its change is told as such. */
  idColumns: readonly string[]
  /** Undefined where they could not be read. */
  linksOf(row: DataRow): readonly string[] | undefined
  kinOf(row: DataRow): string
  /** Columns of the facts around it. */
  around: readonly string[]
  /** Column, without its language -> what its change means; the others are `changed`. */
  kinds: Readonly<Record<string, ChangeKind>>
  /** What a change means whose column is not among `kinds`. */
  otherwise: ChangeKind
  /** Found by its name alone: a setting of a format is nothing without it. */
  byName?: true
}

const cell = (column: string) => (row: DataRow) => row.values[column] ?? ''
const words = (column: string) => (row: DataRow) =>
  cell(column)(row)
    .split(' ')
    .filter((word) => word !== '')

/** A text of which a part could not be read is none. */
const text =
  (...columns: readonly string[]) =>
  (row: DataRow) =>
    columns.some((column) => row.unread?.includes(column))
      ? ''
      : columns
          .map((column) => cell(column)(row))
          .filter((it) => it !== '')
          .join(', ')

const itemTexts: Readonly<Record<string, string>> = {
  supply: 'supply of the controls',
  card: 'limits of a card',
  part: 'data sheet of a part',
  device: 'what is set and measured at a device',
}

/** Addresses of the signals of each device come from the I/O list. */
export function thingSpecs(addressesOf: (tag: string) => readonly string[] | undefined): readonly ThingSpec[] {
  return [
    {
      table: 'devices',
      idOf: cell('tag'),
      textOf: text('kind', 'description'),
      idColumns: ['tag'],
      linksOf: (row) => addressesOf(cell('tag')(row)),
      kinOf: cell('part'),
      around: ['area', 'place', 'drawing', 'sheet', 'technology', 'x', 'y'],
      kinds: {
        kind: 'reworded',
        description: 'reworded',
        area: 'moved',
        place: 'moved',
        x: 'moved',
        y: 'moved',
        part: 'part-replaced',
        drawing: 'drawing-changed',
        sheet: 'drawing-changed',
      },
      otherwise: 'changed',
    },
    {
      table: 'parts',
      idOf: cell('number'),
      textOf: text('description'),
      idColumns: ['number'],
      linksOf: (row) => [cell('makerNumber')(row)].filter((number) => number !== ''),
      kinOf: cell('maker'),
      around: ['unit', 'spare', 'quantity'],
      kinds: { description: 'reworded', quantity: 'quantity-changed', unit: 'quantity-changed', supersededBy: 'superseded' },
      otherwise: 'changed',
    },
    {
      table: 'drawings',
      idOf: cell('number'),
      textOf: text('title'),
      idColumns: ['number'],
      linksOf: (row) => [cell('file')(row)].filter((file) => file !== ''),
      kinOf: cell('kind'),
      around: ['sheets', 'revision'],
      kinds: { title: 'reworded', revision: 'revision-changed', sheets: 'revision-changed', supersededBy: 'superseded' },
      otherwise: 'changed',
    },
    {
      table: 'alarms',
      idOf: cell('number'),
      textOf: text('text'),
      idColumns: ['number'],
      linksOf: words('tags'),
      kinOf: cell('trigger'),
      around: ['area', 'reaction'],
      kinds: { text: 'reworded', trigger: 'reaction-changed', reaction: 'reaction-changed' },
      otherwise: 'changed',
    },
    {
      table: 'energy',
      idOf: cell('id'),
      textOf: text('name'),
      idColumns: ['id'],
      linksOf: words('isolation'),
      kinOf: cell('form'),
      around: ['areas', 'magnitude'],
      kinds: {},
      otherwise: 'energy-changed',
    },
    {
      table: 'hazards',
      idOf: cell('id'),
      textOf: text('name'),
      idColumns: ['id'],
      linksOf: (row) => [cell('assessment')(row)].filter((number) => number !== ''),
      kinOf: cell('group'),
      around: ['areas', 'caution', 'severity'],
      kinds: {},
      otherwise: 'hazard-changed',
    },
    {
      table: 'cards',
      idOf: cell('card'),
      textOf: text('description'),
      idColumns: ['card'],
      linksOf: (row) => [cell('slot')(row)].filter((slot) => slot !== ''),
      kinOf: cell('type'),
      around: ['part', 'drawing', 'sheet'],
      kinds: { description: 'reworded', part: 'part-replaced', drawing: 'drawing-changed', sheet: 'drawing-changed', slot: 'moved' },
      otherwise: 'changed',
    },
    {
      table: 'formats',
      idOf: (row) => `${cell('format')(row)} ${cell('setting')(row)}`,
      textOf: text('description'),
      idColumns: ['format', 'setting'],
      linksOf: () => [],
      kinOf: () => '',
      around: [],
      kinds: { description: 'reworded', value: 'value-changed', unit: 'value-changed' },
      otherwise: 'changed',
      byName: true,
    },
    {
      table: 'checkout',
      idOf: cell('id'),
      textOf: (row) => itemTexts[cell('kind')(row)] ?? '',
      idColumns: ['id'],
      linksOf: () => [],
      kinOf: () => '',
      around: [],
      kinds: {},
      otherwise: 'value-changed',
      byName: true,
    },
  ]
}

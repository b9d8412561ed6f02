import type { ReadData } from '../model/lost-data.ts'
import type { EnergySource, Machine } from '../model/machine.ts'
import { type TableName, tables } from '../model/schema/tables.ts'
import type { Words } from '../model/words.ts'
import { compare, type Located, type Place } from '../source/place.ts'
import { type DataRow, type MachineRecords, type RecordTable, recordTables } from './records.ts'

/**
 * The data of the units of a machine: each row that is fitted to one of them, once. `read`: what the folder held.
 * `serial`: it is about this unit alone.
 */
export function recordsOf(machines: readonly [Machine, ...Machine[]], read?: ReadData, serial?: string): MachineRecords {
  const [{ file, sourceLanguage: source }] = machines
  const others = othersOf(machines, read, source)
  const rows = <T extends Exclude<RecordTable, 'energy'>>(table: T) => [
    ...[...new Set(machines.flatMap((machine): readonly object[] => machine[table]))].map((row) => rowOf(table, row, source)),
    ...others.partly(table),
  ]
  const deviceFits = new Map(machines.flatMap(({ devices }) => devices.map(({ tag, fits }) => [tag.value, fits] as const)))
  const signals = [...new Set(machines.flatMap((machine) => machine.signals))].map((signal) =>
    // A signal is fitted as its device is; only what its own row says is data of the signal.
    rowOf('signals', signal.fits === deviceFits.get(signal.tag.value) ? { ...signal, fits: [] } : signal, source),
  )
  return {
    revision: {
      id: file.id,
      model: file.model,
      document: file.document,
      revision: file.revision,
      date: file.date,
      serials: serial === undefined ? file.units.map((unit) => unit.serial) : [serial],
      ...(serial === undefined ? {} : { fitted: machines[0].unit.fitted.toSorted(compare) }),
    },
    tables: {
      devices: rows('devices'),
      signals: [...signals, ...others.partly('signals')],
      cards: rows('cards'),
      parts: rows('parts'),
      drawings: rows('drawings'),
      alarms: rows('alarms'),
      formats: rows('formats'),
      energy: [...[...new Set(machines.flatMap(({ energy }) => energy))].map((it) => energyRow(it, source)), ...others.partly('energy')],
    },
    unlisted: recordTables.filter((table) => !file.data[table] && !(table === 'signals' && file.data.symbols)),
    leftOut: others.leftOut,
    lost: (read?.lost ?? []).flatMap(({ table, extent, place }) => (extent === 'row' || table === 'symbols' ? [] : [{ table, extent, place }])),
  }
}

/** Rows that are in none of the units: they fit none, or it is not known whether they do, or they could be read in part. */
function othersOf(machines: readonly [Machine, ...Machine[]], read: ReadData | undefined, source: string) {
  const known = new Set(Object.keys(machines[0].file.options ?? {}))
  const optionsOf = (row: object) => ('fits' in row && Array.isArray(row.fits) ? row.fits.map(({ value }: Located<string>) => value) : [])
  const isFitted = (row: object) => {
    const options = optionsOf(row)
    return options.length === 0 || options.some((it) => !known.has(it) || machines.some(({ unit }) => unit.fitted.includes(it)))
  }
  const asData = (table: RecordTable, row: object) => (table === 'energy' ? energyRow(row as EnergySource, source) : rowOf(table, row, source))
  const ofDevices = inheritedFits(read)
  const absent = (table: RecordTable) => {
    const present = new Set(machines.flatMap((machine): readonly object[] => machine[table]))
    return (read?.rows[table] ?? []).filter((row) => !present.has(row) && !(table === 'signals' && 'fits' in row && ofDevices.has(row.fits)))
  }
  const damaged = (table: RecordTable) => (read?.lost ?? []).flatMap((it) => (it.extent === 'row' && it.table === table ? [it] : []))
  return {
    leftOut: recordTables.flatMap((table) =>
      absent(table)
        .filter((row) => !isFitted(row))
        .map((row) => ({ table, row: asData(table, row) })),
    ),
    /** An option that machine.yaml does not know says nothing of the units. */
    partly: (table: RecordTable): DataRow[] => [
      ...absent(table)
        .filter(isFitted)
        .map((row) => ({ ...asData(table, row), unread: ['fits'] })),
      ...damaged(table)
        .filter(({ row }) => isFitted(row))
        .map(({ row, columns }) => ({ ...asData(table, row), unread: columns })),
    ],
  }
}

/** Options of devices, as they stand in the rows of their signals: such a signal is where its device is. */
function inheritedFits(read: ReadData | undefined): Set<unknown> {
  const damaged = (read?.lost ?? []).flatMap((it) => (it.extent === 'row' && it.table === 'devices' ? [it.row] : []))
  return new Set([...(read?.rows.devices ?? []), ...damaged].map((row) => ('fits' in row ? row.fits : undefined)))
}

function rowOf(table: TableName, row: object, sourceLanguage: string): DataRow {
  const cells = new Map<string, unknown>(Object.entries(row))
  const [key = ''] = Object.keys(tables[table])
  const place = (cells.get(key) as Located<string> | undefined)?.place
  return dataRow(
    Object.keys(tables[table]).map((column) => [column, cells.get(column)]),
    place,
    sourceLanguage,
  )
}

function energyRow(source: EnergySource, sourceLanguage: string): DataRow {
  const { isolation, verify } = source
  const each = (words: (point: EnergySource['isolation'][number]) => Words): Words => {
    const languages = new Set(isolation.flatMap((point) => Object.keys(words(point))))
    const place = source.id.place
    return Object.fromEntries(
      [...languages].map((language) => [
        language,
        { value: isolation.map((point) => `${point.point.value}: ${words(point)[language]?.value ?? ''}`).join('; '), place },
      ]),
    )
  }
  return dataRow(
    [
      ['id', source.id],
      ['form', source.form],
      ['name', source.name],
      ['magnitude', source.magnitude.map(({ value, unit }) => `${value} ${unit}`).join(', ')],
      ['areas', source.areas],
      ['hazard', source.hazard],
      ['isolation', isolation.map(({ tag }) => tag)],
      ['points', isolation.map(({ point }) => point)],
      ['lockable', isolation.map(({ point, lockable }) => `${point.value}: ${lockable ? 'yes' : 'no'}`).join('; ')],
      ['safe', each(({ safe }) => safe)],
      ['place', each(({ place }) => place)],
      ['hardware', each(({ hardware }) => hardware)],
      ['stored', source.stored ? 'yes' : 'no'],
      ['reaccumulates', source.reaccumulates ? 'yes' : 'no'],
      ['dissipate', source.dissipate],
      ['waitS', source.waitS],
      ['waitBasis', source.waitBasis],
      ['method', verify.method],
      ['expect', verify.expect],
      ['verifyTags', verify.tags],
      ['fits', source.fits],
    ],
    source.id.place,
    sourceLanguage,
  )
}

function dataRow(cells: readonly (readonly [string, unknown])[], place: Place | undefined, sourceLanguage: string): DataRow {
  const values: Record<string, string> = {}
  for (const [column, cell] of cells) for (const [name, text] of textsOf(column, cell, sourceLanguage)) if (text !== '') values[name] = text
  return place ? { values, place } : { values }
}

/** Lists in which the order says nothing. */
const unordered = new Set(['fits', 'tags'])

/** A cell as text; words in several languages give one each, those of the source language under the name of the column itself. */
function textsOf(column: string, cell: unknown, sourceLanguage: string): [string, string][] {
  if (cell === undefined || cell === null) return []
  if (typeof cell !== 'object') return [[column, String(cell)]]
  if (Array.isArray(cell)) {
    const items = cell.map(({ value }: Located<string>) => value)
    return [[column, (unordered.has(column) ? items.sort(compare) : items).join(' ')]]
  }
  if ('value' in cell && 'place' in cell) return [[column, String(cell.value)]]
  return Object.entries(cell as Words).map(([language, { value }]) => [language === sourceLanguage ? column : `${column}.${language}`, value])
}

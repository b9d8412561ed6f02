import { compare, type Place } from '../source/place.ts'
import type { RecordTable } from './records.ts'

/** What can happen to a thing from one revision to the next, in the order in which a report tells it. */
export const changeKinds = [
  'means-another',
  'energy-changed',
  'hazard-changed',
  'removed',
  'left-out',
  'renamed',
  're-addressed',
  're-terminaled',
  'moved',
  'drawing-changed',
  'revision-changed',
  'part-replaced',
  'superseded',
  'reaction-changed',
  'signal-changed',
  'reworded',
  'quantity-changed',
  'value-changed',
  'changed',
  'added',
] as const
export type ChangeKind = (typeof changeKinds)[number]

export const things = {
  devices: 'device',
  signals: 'signal',
  cards: 'card',
  parts: 'part',
  drawings: 'drawing',
  alarms: 'alarm',
  formats: 'setting',
  energy: 'energy source',
  hazards: 'hazard',
  checkout: 'checkout item',
} as const satisfies Record<RecordTable, string>
export type Thing = (typeof things)[RecordTable]

/** A value before and after; an empty one was not, or is no longer, there. */
export interface Detail {
  field: string
  was: string
  is: string
}

export interface Change {
  kind: ChangeKind
  thing: Thing
  /** The name in the old revision; undefined for what was added. */
  was: string | undefined
  /** The name in the new revision; undefined for what was removed. */
  is: string | undefined
  /** What it is, in the words of the data; of the new revision where it is there. */
  text: string
  details: readonly Detail[]
  /** Facts that belong to it: who has the name or the address now, what to order. */
  notes: readonly string[]
  /** Tags of the devices that a checkout item is about. */
  devices?: readonly string[]
  /** Where the rows stand; absent for a release. */
  oldPlace?: Place
  newPlace?: Place
}

/** What a change asks of the reader, the most pressing first. */
export const changeGroups = ['dangerous', 'energy', 'hazards', 'gone', 'elsewhere', 'different', 'new'] as const
export type ChangeGroup = (typeof changeGroups)[number]

const groupOfKind: Partial<Record<ChangeKind, ChangeGroup>> = {
  'means-another': 'dangerous',
  removed: 'gone',
  'left-out': 'gone',
  renamed: 'gone',
  're-addressed': 'elsewhere',
  're-terminaled': 'elsewhere',
  moved: 'elsewhere',
  'drawing-changed': 'elsewhere',
  'revision-changed': 'elsewhere',
  added: 'new',
}

export function groupOf({ kind, thing }: Pick<Change, 'kind' | 'thing'>): ChangeGroup {
  if (kind !== 'means-another' && thing === 'energy source') return 'energy'
  if (kind !== 'means-another' && thing === 'hazard') return 'hazards'
  return groupOfKind[kind] ?? 'different'
}

/** The one order of changes: group, kind, thing, name, in code units. */
export function compareChanges(a: Change, b: Change): number {
  return (
    changeGroups.indexOf(groupOf(a)) - changeGroups.indexOf(groupOf(b)) ||
    changeKinds.indexOf(a.kind) - changeKinds.indexOf(b.kind) ||
    compare(a.thing, b.thing) ||
    compare(a.is ?? a.was ?? '', b.is ?? b.was ?? '') ||
    compare(a.was ?? '', b.was ?? '') ||
    compare(JSON.stringify(a.details), JSON.stringify(b.details))
  )
}

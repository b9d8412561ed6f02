import type { Change, ChangeGroup, ChangeKind } from '../changes/change.ts'
import type { Comparison, NotCompared } from '../changes/compare-records.ts'
import type { Revision } from '../changes/records.ts'
import type { Relation, SpeakingPage } from '../changes/speaking-pages.ts'
import { where } from './short.ts'

/** A change and the pages that speak of it. */
export interface ToldChange extends Change {
  group: ChangeGroup
  pages: readonly SpeakingPage[]
}

/** What `fettle changes` tells, in every form. */
export interface ChangesReport extends Omit<Comparison, 'changes'> {
  changes: readonly ToldChange[]
  /** Which revision's pages were read; undefined where both are releases. */
  pagesOf: 'old' | 'new' | undefined
  /** What else the reader must know before the changes. */
  remarks: readonly string[]
}

/** Heading of a group, and what it asks for. */
export const groupWords: Readonly<Record<ChangeGroup, { title: string; ask: string }>> = {
  dangerous: {
    title: 'Names that now mean another thing',
    ask: 'The old text still finds something, and it is the wrong thing. Read each page named here first.',
  },
  energy: { title: 'Energy sources and their isolation', ask: 'Compare each lockout with the machine before anyone works by it.' },
  gone: { title: 'Gone, or under a new name', ask: 'Text with the old name finds nothing.' },
  elsewhere: { title: 'Found elsewhere', ask: 'Address, terminal, place, sheet or revision is another one.' },
  different: { title: 'Different in itself', ask: 'Part, text, reaction, quantity or value is another one.' },
  new: { title: 'New', ask: 'No page was written for it in the old revision.' },
}

const kindWords: Readonly<Record<Exclude<ChangeKind, 'means-another'>, string>> = {
  'energy-changed': 'changed',
  removed: 'is gone',
  renamed: 'has a new name',
  're-addressed': 'has another address',
  're-terminaled': 'has another terminal',
  moved: 'is in another place',
  'drawing-changed': 'is on another drawing or sheet',
  'revision-changed': 'is in another revision',
  'part-replaced': 'has another part',
  superseded: 'has another successor',
  'reaction-changed': 'is raised or answered in another way',
  'signal-changed': 'has other signals',
  reworded: 'is described in other words',
  'quantity-changed': 'is fitted in another quantity',
  'value-changed': 'has another value',
  changed: 'changed',
  added: 'is new',
}

/** What became of it, to stand after its name. */
export function sentenceOf({ kind, thing }: Pick<Change, 'kind' | 'thing'>): string {
  return kind === 'means-another' ? `now means another ${thing}` : kindWords[kind]
}

export const nameOf = ({ was, is, kind }: Pick<Change, 'was' | 'is' | 'kind'>): string => (kind === 'renamed' ? `${was} → ${is}` : (is ?? was ?? ''))

const fieldWords: Readonly<Record<string, string>> = {
  x: 'plan position, from the left',
  y: 'plan position, from the top',
  supersededBy: 'replaced by',
  makerNumber: 'number of the manufacturer',
  maker: 'manufacturer',
  fits: 'options',
  tags: 'devices',
  waitS: 'wait in s',
  waitBasis: 'basis of the wait',
  verifyTags: 'verified at',
  method: 'verification',
  isolation: 'isolated by',
  points: 'isolation points',
  safe: 'safe position',
  low: 'lower end of the range',
  high: 'upper end of the range',
}

/** A column in words: `supersededBy` -> `replaced by`; the signal before it and the language after it stay. */
export function fieldName(field: string): string {
  const [, signal = '', column = '', language] = /^(.* )?([^ .]+)(?:\.([a-z]{2}(?:-[A-Z]{2})?))?$/.exec(field) ?? []
  if (column === '') return field
  return `${signal}${fieldWords[column] ?? column}${language ? ` (${language})` : ''}`
}

export const relationWords: Readonly<Record<Relation, string>> = {
  names: 'names it',
  lesson: 'is made for it',
  lockout: 'locks it out',
  recovery: 'answers its alarm',
}

export const revisionWords = ({ model, document, revision, date }: Revision): string => `${model}, ${document} revision ${revision} of ${date}`

export function notComparedWords({ thing, id, place, side }: NotCompared): string {
  const what = id === undefined ? `the list of ${thing}` : `${thing} \`${id}\``
  return `not compared: ${what}, which the ${side} revision could not give${place ? ` (${where(place)})` : ''}`
}

/** `27 changes, 2 of them dangerous; 14 pages speak of them`. */
export function totalWords({ changes, pagesOf }: ChangesReport): string {
  const count = (number: number, one: string) => `${number} ${one}${number === 1 ? '' : 's'}`
  const dangerous = changes.filter(({ group }) => group === 'dangerous').length
  const pages = new Set(changes.flatMap((it) => it.pages.map(({ page }) => page))).size
  const told = `${count(changes.length, 'change')}${dangerous > 0 ? `, ${dangerous} of them dangerous` : ''}`
  if (pagesOf === undefined) return `${told}; a release holds no source of its pages, so none are named`
  return `${told}; ${count(pages, 'page')} of the ${pagesOf} revision ${pages === 1 ? 'speaks' : 'speak'} of them`
}

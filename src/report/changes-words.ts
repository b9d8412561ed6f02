import type { Change, ChangeGroup, ChangeKind } from '../changes/change.ts'
import type { Comparison } from '../changes/compare-records.ts'
import type { NotCompared } from '../changes/not-compared.ts'
import type { Revision } from '../changes/records.ts'
import type { Relation, SpeakingPage } from '../changes/speaking-pages.ts'
import type { Place } from '../source/place.ts'
import type { ToldRetraining } from './retraining.ts'
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
  /** By records of training, where they were given. */
  retraining?: ToldRetraining
}

/** Heading of a group, and what it asks for. */
export const groupWords: Readonly<Record<ChangeGroup, { title: string; ask: string }>> = {
  dangerous: {
    title: 'Names that now mean another thing',
    ask: 'The old text still finds something, and it is the wrong thing. Read each page named here first.',
  },
  energy: { title: 'Energy sources and their isolation', ask: 'Compare each lockout with the machine before anyone works by it.' },
  hazards: {
    title: 'Hazards and the messages about them',
    ask: 'Compare the safety chapter and each task with the risk assessment before anyone works by them.',
  },
  gone: { title: 'Gone, or under a new name', ask: 'Text with the old name finds nothing.' },
  elsewhere: { title: 'Found elsewhere', ask: 'Address, terminal, place, sheet or revision is another one.' },
  different: { title: 'Different in itself', ask: 'Part, text, reaction, quantity or value is another one.' },
  new: { title: 'New', ask: 'No page was written for it in the old revision.' },
}

/** The changes of each group that has some, the dangerous first. */
export function byGroup(changes: readonly ToldChange[]): { group: ChangeGroup; own: ToldChange[] }[] {
  const groups = Object.keys(groupWords) as ChangeGroup[]
  return groups.map((group) => ({ group, own: changes.filter((it) => it.group === group) })).filter(({ own }) => own.length > 0)
}

/** The places of a page, file by file: a translation is a file of its own. */
export function placesByFile({ places }: SpeakingPage): Place[][] {
  return [
    ...Map.groupBy(
      places.map(({ place }) => place),
      ({ file }) => file,
    ).values(),
  ]
}

/** Places in one file, the file said once: `pages/a.mdx:3:1, 7:12`. */
export function placesWords([first, ...rest]: readonly Place[]): string {
  return [first ? where(first) : '', ...rest.map(({ line, column }) => `${line}:${column}`)].join(', ')
}

const kindWords: Readonly<Record<Exclude<ChangeKind, 'means-another'>, string>> = {
  'energy-changed': 'changed',
  'hazard-changed': 'changed',
  removed: 'is gone',
  'left-out': 'is in the list still, for no option of these units',
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
  row: 'one of its rows',
  x: 'plan position, from the left',
  y: 'plan position, from the top',
  supersededBy: 'replaced by',
  makerNumber: 'number of the manufacturer',
  maker: 'manufacturer',
  fits: 'options',
  tags: 'devices',
  signalWord: 'signal word',
  accident: 'an accident, if it is not avoided',
  injury: 'death or serious injury, if the accident happens',
  avoidance: 'how to avoid it',
  nature: 'nature of the hazard',
  caution: 'standard caution',
  symbols: 'signs',
  builtIn: 'measures of the builder',
  user: 'measures of the user',
  tasks: 'pages of its tasks',
  waitS: 'wait in s',
  waitBasis: 'basis of the wait',
  store: 'what holds the energy',
  delayNoticeS: 'seconds on the delay notice',
  watch: 'how it is watched',
  verifyTags: 'verified at',
  method: 'verification',
  noVoltageTest: 'why no voltage test',
  isolation: 'isolated by',
  points: 'isolation points',
  devices: 'isolating devices',
  safe: 'safe position',
  service: 'position in service',
  taggedAt: 'tag in place of a lock',
  from: 'fed by',
  proofs: 'proved by',
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
  lockout: 'isolates or verifies by it',
  'area-lockout': 'is a lockout of its area',
  recovery: 'answers its alarm',
}

export const revisionWords = ({ model, document, revision, date }: Revision): string => `${model}, ${document} revision ${revision} of ${date}`

/** Names in one line, and lines of one list; the JSON form has them all. */
const mostNames = 8

/** What a revision could not give, a line each; of many rows of one list the first ones. */
export function notComparedLines(all: readonly NotCompared[]): string[] {
  return [...Map.groupBy(all, ({ side, thing, extent }) => `${side} ${thing} ${extent}`).values()].flatMap((own) => {
    const [first] = own
    const more = own.length - mostNames
    const rest = first && more > 0 ? [`not compared: ${more} more of the ${first.thing}s, which the ${first.side} revision could not give`] : []
    return [...own.slice(0, mostNames).map(notComparedWords), ...rest]
  })
}

function notComparedWords({ thing, extent, ids, place, side }: NotCompared): string {
  const more = ids.length > mostNames ? ` and ${ids.length - mostNames} more` : ''
  const names = `${thing}${ids.length === 1 ? '' : 's'} ${ids
    .slice(0, mostNames)
    .map((id) => `\`${id}\``)
    .join(', ')}${more}`
  const at = place ? ` (${where(place)})` : ''
  switch (extent) {
    case 'list':
      return `not compared: the list of ${thing}s, which the ${side} revision could not give${at}`
    case 'no-list':
      return `not compared: the list of ${thing}s, which the ${side} revision does not have`
    case 'column':
      return `not compared: ${ids.map((id) => `\`${fieldName(id)}\``).join(', ')} in the list of ${thing}s, a column that the ${side} revision does not have`
    case 'rows':
      return `not compared: a part of the list of ${thing}s, which the ${side} revision could not give${at}`
    case 'row':
      return `not compared: ${names}, which the ${side} revision could not give${at}`
    case 'unsure':
      return `not told as ${side === 'new' ? 'gone' : 'new'} or renamed: ${names}, because of what could not be read`
  }
}

/** `27 changes, 2 names now mean another thing; 14 pages speak of them`. */
export function totalWords({ changes, pagesOf }: ChangesReport): string {
  const count = (number: number, one: string) => `${number} ${one}${number === 1 ? '' : 's'}`
  const inGroup = (name: ChangeGroup) => changes.filter(({ group }) => group === name).length
  const [reused, energies, hazards] = [inGroup('dangerous'), inGroup('energy'), inGroup('hazards')]
  const pages = new Set(changes.flatMap((it) => it.pages.map(({ page }) => page))).size
  const told = [
    count(changes.length, 'change'),
    ...(reused > 0 ? [`${count(reused, 'name')} now ${reused === 1 ? 'means' : 'mean'} another thing`] : []),
    ...(energies > 0 ? [`${count(energies, 'change')} of energy sources`] : []),
    ...(hazards > 0 ? [`${count(hazards, 'change')} of hazards`] : []),
  ].join(', ')
  if (pagesOf === undefined) return `${told}; a release holds no source of its pages, so none are named`
  return `${told}; ${count(pages, 'page')} of the ${pagesOf} revision ${pages === 1 ? 'speaks' : 'speak'} of them`
}

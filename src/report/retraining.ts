import { oneLine } from './visible.ts'

/** Who has to be trained again because of a change, by records of training. */
export interface ToldRetraining {
  /** The file of the records, as it was typed. */
  file: string
  /** Number of entries, and the first digits of the last hash; undefined without entries. */
  entries: number
  hash: string | undefined
  /** The day on which it is judged, `YYYY-MM-DD`. */
  day: string
  people: readonly ToldPerson[]
  /** Lessons of the records that the new revision does not have. */
  unknownLessons: readonly string[]
}

export interface ToldPerson {
  person: string
  /** As the records name the person. */
  name: string | undefined
  lessons: readonly { lesson: string; title: string; revision: string; reasons: readonly ToldReason[] }[]
}

export interface ToldReason {
  change: 'text' | 'procedure' | 'new-hazard'
  /** Of the lesson, where its history tells the change; undefined for a change of the machine. */
  revision: string | undefined
  date: string
  what: string | undefined
}

const callWords: Readonly<Record<ToldReason['change'], string>> = {
  text: 'its text changed',
  procedure: 'what is taught changed',
  'new-hazard': 'a hazard is new',
}

export const reasonWords = ({ change, revision, date, what }: ToldReason): string =>
  `${callWords[change]}${revision === undefined ? '' : ` with revision ${revision}`} on ${date}${what === undefined ? '' : `: ${what}`}`

export const personWords = ({ person, name }: ToldPerson): string => (name === undefined ? person : `${person} ${name}`)

/** `2 people have to be trained again, by records.jsonl (14 entries, last hash 1a2b3c4d) on 2026-11-26`. */
export function retrainingTotal({ file, entries, hash, day, people }: ToldRetraining): string {
  const count =
    people.length === 1 ? '1 person has' : `${people.length === 0 ? 'nobody' : `${people.length} people`} ${people.length === 0 ? 'has' : 'have'}`
  const chain = hash === undefined ? 'no entry' : `${entries} ${entries === 1 ? 'entry' : 'entries'}, last hash ${hash}`
  return `${count} to be trained again because of a change, by ${file} (${chain}) on ${day}`
}

export const retrainingAsk =
  'Training that held until a change. Whoever is due for another reason, or never took a lesson, is not named here. The employer’s programme decides who is trained.'

/** The facts to be read with it. */
export function retrainingRemarks({ unknownLessons }: ToldRetraining): string[] {
  return unknownLessons.length === 0
    ? []
    : [`the records name lessons that the new revision does not have: ${unknownLessons.map((id) => `\`${id}\``).join(', ')}`]
}

export function retrainingText(told: ToldRetraining): string {
  const people = told.people.map((person) => {
    const lines = person.lessons.flatMap(({ lesson, revision, reasons }) =>
      reasons.map((reason) => `    ${lesson}, revision ${revision}: ${oneLine(reasonWords(reason))}`),
    )
    return [`  ${oneLine(personWords(person))}`, ...lines].join('\n')
  })
  return [[`Who has to be trained again (${told.people.length})`, retrainingAsk, ...retrainingRemarks(told).map(oneLine)].join('\n'), ...people].join(
    '\n\n',
  )
}

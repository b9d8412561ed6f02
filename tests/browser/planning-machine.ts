import { type Entry, entryAfter } from '../../src/training/journal.ts'
import { writeJournal } from '../../src/training/journal-file.ts'
import type { TrainingRecord } from '../../src/training/record.ts'
import { type BuiltMachine, buildSoundMachine } from './build-sound-machine.ts'

const training = `roles:
  - { id: operator, name: { en: Operator, es: Operador }, lockout: affected, needs: { lockout: 2, pressing: 3 } }
  - { id: maintenance, name: { en: Maintenance technician, es: Técnica de mantenimiento }, lockout: authorised, needs: { lockout: 3 } }
  - { id: trainer, name: { en: Trainer, es: Formadora }, trains: true }
skills:
  - { id: lockout, name: { en: Lock out, es: Bloquear }, people: 2, lessons: [stop-and-lock, lock-alone, teach-lockout] }
  - { id: pressing, name: { en: Press, es: Prensar }, people: 1, lessons: [start-it, run-it] }
sessions: { minutes: 40 }
sequences:
  - { id: first-day, name: { en: First day, es: Primer día }, role: operator, lessons: [run-it, look-round, stop-and-lock, start-it, check-pressure] }
  - { id: first-month, name: { en: First month, es: Primer mes }, role: maintenance, lessons: [look-round, stop-and-lock, lock-alone] }
`

interface Written {
  minutes: number
  head?: string
  body?: string
  title: string
  objective: string
}

const lessons: Readonly<Record<string, Written>> = {
  'stop-and-lock': {
    title: 'Stop the press & lock it',
    minutes: 20,
    objective: 'Stop the press and say who locks it',
    head: 'mode: demonstrate\nlevel: 2\nneeds: [look-round]\nduties: [affected, other]\npractical: [Stop the press]\nsignOff: { by: trainer }\nvalidMonths: 36\nroles: [operator, maintenance]',
    body: 'Stop the press. Find <Fact of="tag" tag="PS-101" />.',
  },
  'start-it': {
    title: 'Start the press',
    minutes: 15,
    objective: 'Start the press',
    head: 'mode: practise\nlevel: 1\nneedsSignedOff: [stop-and-lock]\nroles: [operator]',
  },
  'run-it': {
    title: 'Run the press',
    minutes: 25,
    objective: 'Run the press',
    head: 'mode: practise\nlevel: 3\nneeds: [start-it]\nroles: [operator]',
  },
  'lock-alone': {
    title: 'Lock the press out alone',
    minutes: 40,
    objective: 'Lock the press out',
    head: 'mode: practise\nlevel: 3\nneedsSignedOff: [stop-and-lock]\nduties: [authorised, tags-only]\npractical: [Lock it and try to start it]\nsignOff: { by: trainer }\nroles: [maintenance]',
  },
  'teach-lockout': {
    title: 'Teach lockout',
    minutes: 30,
    objective: 'Teach others to lock out',
    head: 'mode: practise\nlevel: 4\nneedsSignedOff: [lock-alone]\npractical: [Teach one lesson]\nsignOff: { by: trainer }\nroles: [trainer]',
  },
}

/** Builds the sound machine with lessons of three roles, duties and two skills: `planning.html`, in Spanish below `es/`. */
export function buildPlanning(): Promise<BuiltMachine> {
  const pages = Object.entries(lessons).map(([name, { title, minutes, objective, head = '', body = 'Do it.' }]) => [
    `pages/lessons/${name}.mdx`,
    `---\ntitle: ${title}\nrevision: A\nminutes: ${minutes}\nobjectives: [${objective}]\n${head}\n---\n${body}\n`,
  ])
  return buildSoundMachine({ 'training.yaml': training, ...Object.fromEntries(pages) })
}

/** A journal of the lessons, as a device saves it. */
export function journalOf(...bodies: readonly TrainingRecord[]): { text: string; last: string } {
  const entries: Entry[] = []
  for (const body of bodies) entries.push(entryAfter(entries[entries.length - 1], body))
  return { text: writeJournal(entries), last: entries[entries.length - 1]?.hash ?? '' }
}

/** A lesson that a person has taken, and that another has signed off where `by` is given. */
export function taken(person: string, name: string, lesson: string, date: string, by?: string): TrainingRecord[] {
  const what = { person, lesson, revision: 'A', date }
  return [{ event: 'completed', ...what, name }, ...(by === undefined ? [] : [{ event: 'signed-off', ...what, by } as const])]
}

import { type Entry, entryAfter } from '../../src/training/journal.ts'
import { lessonEvents, type TrainingRecord } from '../../src/training/record.ts'

export function journalOf(records: readonly TrainingRecord[]): Entry[] {
  const entries: Entry[] = []
  for (const record of records) entries.push(entryAfter(entries[entries.length - 1], record))
  return entries
}

/** Records of all kinds, the same each time. Names in several scripts, so that a character takes one to four bytes. */
export function manyRecords(count: number): TrainingRecord[] {
  const names = ['Ana Gómez', 'Jörg Weiß', 'Łucja Wójcik', '佐藤 花子', 'Sam 🛠 Reed']
  return Array.from({ length: count }, (_, index): TrainingRecord => {
    const person = `P-${String(index % 23).padStart(4, '0')}`
    const date = `20${20 + (index % 7)}-${String(1 + (index % 12)).padStart(2, '0')}-${String(1 + (index % 28)).padStart(2, '0')}`
    const by = `P-${String(100 + (index % 5))}`
    if (index % 10 === 8) return { event: 'named', person, name: names[index % names.length] ?? person }
    if (index % 10 === 9) return { event: 'inspected', procedure: `LO-${index % 6}`, people: [person], by, date }
    const event = lessonEvents[index % lessonEvents.length] ?? 'assigned'
    const score = event === 'passed' || event === 'failed' ? { score: { right: index % 6, of: 5 + (index % 3) } } : {}
    return { event, person, lesson: `lesson-${index % 40}`, revision: 'B', date, by, reason: 'Übung: "links" & rechts', ...score }
  })
}

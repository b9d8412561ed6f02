import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Entry, entryAfter, entryOf, verifyJournal } from '../../src/training/journal.ts'
import { addedBy, readJournal, readLine, writeJournal } from '../../src/training/journal-file.ts'
import { journalProblemText } from '../../src/training/journal-problem.ts'
import type { TrainingRecord } from '../../src/training/record.ts'
import { journalOf, manyRecords } from './records.ts'

const completed: TrainingRecord = { person: 'P-0042', lesson: 'LSN-014', revision: 'C', event: 'completed', date: '2026-11-25' }
const signed: TrainingRecord = { person: 'P-0042', lesson: 'LSN-014', revision: 'C', event: 'signed-off', by: 'P-0007', date: '2026-11-25' }
const two = journalOf([completed, signed])

const said = (read: ReturnType<typeof readJournal>) => ('problem' in read ? journalProblemText(read.problem) : `${read.entries.length} entries`)

// Case C28: computed with another implementation of SHA-256 over the same text.
test('the hashes of two entries', () => {
  expect(two.map(({ hash }) => hash)).toEqual([
    '5e414e2cbed5dbedfbb8e4a2241078a985e9f1b23f56a7464fa208bebd5ceb25',
    '5a8cb4907b65b4bea6f8e2e2b194b593617ff640886351e6bb3f85878616b224',
  ])
  expect(two[0]?.prev).toBe('0'.repeat(64))
})

// Case C29.
describe('two entries', () => {
  const [first, second] = two
  test.each<[string, unknown[], string]>([
    ['as they are', [first, second], '2 entries'],
    ['the date changed', [{ ...first, body: { ...completed, date: '2026-11-24' } }, second], 'entry 0: content changed'],
    ['the first removed', [second], 'entry 0: sequence 1'],
    ['swapped', [second, first], 'entry 0: sequence 1'],
    ['the second twice', [first, second, second], 'entry 2: sequence 1'],
    ['another first, made well', [entryAfter(undefined, { ...completed, date: '2026-11-24' }), second], 'entry 1: does not follow the entry before'],
    ['a foreign member', [{ ...first, note: '' }], 'entry 0: is no entry of a journal'],
    ['no object', [first, 7], 'entry 1: is no entry of a journal'],
    ['a body that is no JSON', [{ ...first, body: { ...completed, score: { right: Number.NaN, of: 1 } } }], 'entry 0: content changed'],
  ])('%s', (_, values, expected) => expect(said(verifyJournal(values))).toBe(expected))
})

test('a body that is no record is said at its member', () => {
  const wrong = { ...completed, date: '2026-02-30' } as TrainingRecord
  expect(() => entryAfter(undefined, wrong)).toThrow('date day')
  expect(() => entryAfter(undefined, { ...completed, birthday: '1990-01-01' } as TrainingRecord)).toThrow('birthday unknown')
})

describe('a file', () => {
  const text = writeJournal(two)
  test('is read as it was written', () => expect(readJournal(text)).toEqual({ entries: two }))

  test.each<[string, string, string]>([
    ['empty', '', '0 entries'],
    ['with a byte order mark and line ends of Windows', `\uFEFF${text.replaceAll('\n', '\r\n')}`, '2 entries'],
    ['with mixed line ends', text.replace('\n', '\r\n'), 'entry 0: is not written as a journal writes it'],
    ['without its last line end', text.slice(0, -1), 'entry 1: its line is cut off'],
    ['cut off', text.slice(0, -100), 'entry 1: its line is cut off'],
    ['with an empty line', text.replace('\n', '\n\n'), 'entry 1: is not written as a journal writes it'],
    ['with blanks', text.replace(':', ': '), 'entry 0: is not written as a journal writes it'],
    ['with a member twice', text.replace('{"date"', '{"date":"2020-01-01","date"'), 'entry 0: is not written as a journal writes it'],
    ['that is no journal', 'tag;text\n', 'entry 0: is not written as a journal writes it'],
    ['from the middle on', text.split('\n').slice(1).join('\n'), 'entry 0: sequence 1'],
  ])('%s', (_, changed, expected) => expect(said(readJournal(changed))).toBe(expected))
})

describe('a journal of 1,000 entries', () => {
  const journal = journalOf(manyRecords(1000))
  const lines = journal.map((entry) => writeJournal([entry]))
  const text = lines.join('')
  const found = (entries: readonly unknown[]) => {
    const read = verifyJournal(entries)
    return 'problem' in read ? read.problem.entry : undefined
  }

  // What stands before a changed line is unchanged and has been checked, so each line is read behind the one before it.
  test('every change of a single byte is found, at its entry', () => {
    let missed = 0
    for (const [index, line] of lines.entries()) {
      const bytes = new TextEncoder().encode(line)
      for (const at of bytes.keys()) {
        const changed = bytes.slice()
        changed[at] = (bytes[at] ?? 0) ^ (1 + ((index * 31 + at * 7) % 255))
        // A line that falls in two is wrong in its first part.
        const [part = ''] = new TextDecoder('utf-8', { ignoreBOM: true }).decode(changed).match(/[^\n]*\n|[^\n]+$/g) ?? []
        const read = readLine(part, journal[index - 1])
        if (!('problem' in read) || read.problem.entry !== index) missed++
      }
    }
    expect(missed).toBe(0)
  }, 120_000)

  test('so it is when the whole file is read', () => {
    const bytes = new TextEncoder().encode(text)
    fc.assert(
      fc.property(fc.nat({ max: bytes.length - 1 }), fc.integer({ min: 1, max: 255 }), (at, change) => {
        const changed = bytes.slice()
        changed[at] = (bytes[at] ?? 0) ^ change
        const read = readJournal(new TextDecoder().decode(changed))
        const entry = new TextDecoder().decode(bytes.slice(0, at)).split('\n').length - 1
        expect('problem' in read && read.problem.entry).toBe(entry)
      }),
      { numRuns: 60 },
    )
  })

  test('every removal is found where it is, but for that of the last', () => {
    for (let index = 0; index < 999; index++) expect(foundFrom(index, journal[index + 1])).toBe(index)
    expect(found(journal.filter((_, index) => index !== 500))).toBe(500)
    expect(found(journal.slice(0, -1))).toBeUndefined()
  })

  test('every swap with any other is found at the earlier one', () => {
    for (let early = 0; early < 1000; early++)
      for (let late = early + 1; late < 1000; late++) if (foundFrom(early, journal[late]) !== early) throw new Error(`${early} and ${late}`)
    const swapped = [...journal]
    ;[swapped[3], swapped[700]] = [swapped[700] as Entry, swapped[3] as Entry]
    expect(found(swapped)).toBe(3)
  })

  test('export and import give the same', () => expect(readJournal(text)).toEqual({ entries: journal }))

  /** Where a value is found wrong that stands at `index`, behind what is unchanged. */
  function foundFrom(index: number, value: unknown): number | undefined {
    const read = entryOf(value, journal[index - 1])
    return 'problem' in read ? read.problem.entry : undefined
  }
})

test('a journal that is handed over in any pieces, again and again, comes to the same', () => {
  const journal = journalOf(manyRecords(30))
  fc.assert(
    fc.property(fc.array(fc.nat({ max: 30 }), { maxLength: 8 }), (lengths) => {
      let kept: Entry[] = []
      for (const length of [...lengths, 30, 30]) {
        const theirs = readJournal(writeJournal(journal.slice(0, length)))
        const result = 'entries' in theirs ? addedBy(kept, theirs.entries) : theirs
        if ('problem' in result) throw new Error(journalProblemText(result.problem))
        kept = [...kept, ...result.added]
      }
      expect(kept).toEqual(journal)
    }),
  )
})

describe('another journal', () => {
  const ours = journalOf(manyRecords(6))
  test.each<[string, Entry[], Entry[], number | string]>([
    ['that goes on from ours', ours.slice(0, 4), ours, 2],
    ['the same again', ours, ours, 0],
    ['an older state of ours', ours, ours.slice(0, 2), 0],
    ['into none', [], ours, 6],
    ['none into ours', ours, [], 0],
    ['that went on otherwise', [...ours.slice(0, 3), entryAfter(ours[2], signed)], ours, 'entry 3: differs from this journal'],
    ['that is of another device', journalOf([signed]), ours, 'entry 0: differs from this journal'],
  ])('%s', (_, mine, theirs, expected) => {
    const result = addedBy(mine, theirs)
    expect('problem' in result ? journalProblemText(result.problem) : result.added.length).toBe(expected)
    if ('added' in result) expect(verifyJournal([...mine, ...result.added])).toHaveProperty('entries')
  })
})

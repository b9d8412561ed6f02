import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { type Entry, entryAfter } from '../../src/training/journal.ts'
import { writeJournal } from '../../src/training/journal-file.ts'
import type { TrainingRecord } from '../../src/training/record.ts'
import { runFettle } from './run-fettle.ts'

const folder = mkdtempSync(join(tmpdir(), 'fettle-train-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const train = (...args: string[]) =>
  runFettle(['train', 'tests/fixtures/sound-machine', '--shared', folder, ...args], { SOURCE_DATE_EPOCH: '1795564800' })

/** A file of records of the sound machine's lessons. */
function recordsOf(name: string, ...bodies: TrainingRecord[]): string {
  const entries: Entry[] = []
  for (const body of bodies) entries.push(entryAfter(entries[entries.length - 1], body))
  const file = join(folder, name)
  writeFileSync(file, writeJournal(entries))
  return file
}

const taken = (person: string, lesson: string): TrainingRecord => ({
  event: 'completed',
  person,
  name: `Name of ${person}`,
  lesson,
  revision: 'A',
  date: '2026-01-10',
})

test('the plan of a role as JSON', async () => {
  const { code, stdout } = await train('--role', 'operator', '--session', '25', '--format', 'json')
  expect(code).toBe(0)
  expect(JSON.parse(stdout)).toMatchObject({
    role: 'operator',
    sessions: [
      { minutes: 10, lessons: ['look-round'] },
      { minutes: 20, lessons: ['check-pressure'] },
    ],
    optimal: true,
    lowerBound: 2,
    done: [],
    missing: [
      { lesson: 'look-round', status: 'missing' },
      { lesson: 'check-pressure', status: 'missing' },
    ],
  })
})

test('as text and as CSV, in another language, without what is done', async () => {
  const text = await train('--role', 'operator', '--done', 'look-round')
  expect(text.stdout).toMatch(/^Training plan: Operator\n.*\n\nSession 1, 20 min\n {2}Check .+20 min/)
  expect(text.stdout).toContain('1 lesson in 1 session of at most 45 minutes. 20 minutes in all. No plan has fewer sessions.')
  expect(text.stdout).toContain('Done already: Look round.')
  const csv = await train('--role', 'operator', '--format', 'csv')
  expect(csv.stdout).toMatch(
    /^session,day,place,lesson,revision,title,minutes,mode,level,needs,needsSignedOff,why\r\n1,,1,look-round,A,Look round,10,/,
  )
  expect((await train('--role', 'operator', '--language', 'es')).stdout).toContain('Sesión 1, 30 min')
})

test('what holds in the records is done, of one person', async () => {
  const file = recordsOf('records.jsonl', taken('P-1', 'look-round'), taken('P-2', 'check-pressure'))
  const { stdout } = await train('--role', 'operator', '--records', file, '--person', 'P-1', '--format', 'json')
  expect(JSON.parse(stdout)).toMatchObject({
    person: { id: 'P-1', name: 'Name of P-1' },
    done: ['look-round'],
    sessions: [{ lessons: ['check-pressure'] }],
  })
  const several = await train('--role', 'operator', '--records', file)
  expect(several.code).toBe(2)
  expect(several.stderr).toContain('--person is missing')
  expect(several.stderr).toContain('it has P-1, P-2')
  const failed = recordsOf('failed.jsonl', { event: 'failed', person: 'P-1', lesson: 'look-round', revision: 'A', date: '2026-01-10' })
  expect((await train('--role', 'operator', '--records', failed)).stdout).toContain('Look round: not passed')
})

test('records that were changed are refused at their line', async () => {
  const file = recordsOf('changed.jsonl', taken('P-1', 'look-round'), taken('P-1', 'check-pressure'))
  writeFileSync(file, writeJournal([entryAfter(undefined, taken('P-1', 'look-round'))]).replace('P-1', 'P-3'))
  const { code, stdout, stderr } = await train('--role', 'operator', '--records', file)
  expect([code, stdout]).toEqual([1, ''])
  expect(stderr).toBe(`${file}:1:1: error: entry 0: content changed\n`)
})

test.each([
  [[], /--role is missing; training\.yaml has operator/],
  [['--role', 'operater'], /no role `operater`; the nearest role is `operator`/],
  [['--role', 'operator', '--done', 'look-around'], /no lesson `look-around`; the nearest lesson is `look-round`/],
  [['--role', 'operator', '--session', 'long'], /takes minutes such as `45`, not `long`/],
  [['--role', 'operator', '--session', '9'], /“look-round” takes 10 minutes\. A session has 9\. “check-pressure” takes 20/],
  [['--role', 'operator', '--person', 'P-1'], /--person takes --records with it/],
  [['--role', 'operator', '--records', 'nowhere.jsonl'], /no file `nowhere\.jsonl`/],
  [['--role', 'operator', '--language', 'xx'], /language `xx`/],
])('%j cannot run', async (args, message) => {
  const { code, stderr } = await train(...args)
  expect(code).toBe(2)
  expect(stderr).toMatch(message)
})

import { cpSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { type Entry, entryAfter } from '../../src/training/journal.ts'
import { writeJournal } from '../../src/training/journal-file.ts'
import type { TrainingRecord } from '../../src/training/record.ts'
import { writeTrainedMachine } from '../trained-machine.ts'
import { runFettle } from './run-fettle.ts'

const { folder: old, shared, dir, remove } = writeTrainedMachine()
afterAll(remove)

const now = join(dir, 'now')
const edit = (folder: string, path: string, was: string, is: string) => {
  const text = readFileSync(join(folder, path), 'utf8')
  expect(text).toContain(was)
  writeFileSync(join(folder, path), text.replace(was, is))
}
const stop = 'pages/lessons/stop-and-lock.mdx'
edit(old, stop, 'needs: [look-round]', 'needs: [look-round]\ncovers: { lockouts: [lo-1] }')
edit(old, stop, 'practical: [Stop the press and lock it]\n', '')
cpSync(old, now, { recursive: true })
edit(now, 'machine.yaml', "revision: A\ndate: '2026-01-01'", "revision: B\ndate: '2026-06-01'")
edit(now, 'data/energy.yaml', 'value: 400', 'value: 480')
edit(
  now,
  'pages/lessons/look-round.mdx',
  'revision: A',
  "revision: B\nhistory:\n  - { revision: A, date: '2026-01-01', change: text, what: First }\n  - { revision: B, date: '2026-05-01', change: new-hazard, what: A second press stands behind it }",
)

const records: TrainingRecord[] = [
  { event: 'named', person: 'P-1', name: 'Ana Ruiz' },
  { event: 'passed', person: 'P-1', lesson: 'stop-and-lock', revision: 'A', date: '2026-02-01', score: { right: 2, of: 2 } },
  { event: 'completed', person: 'P-1', lesson: 'look-round', revision: 'A', date: '2026-02-01' },
  { event: 'failed', person: 'P-2', lesson: 'stop-and-lock', revision: 'A', date: '2026-02-02', score: { right: 1, of: 2 } },
  { event: 'passed', person: 'P-3', lesson: 'stop-and-lock', revision: 'A', date: '2026-06-02', score: { right: 2, of: 2 } },
  { event: 'completed', person: 'P-3', lesson: 'look-round', revision: 'B', date: '2026-06-02' },
  { event: 'completed', person: 'P-3', lesson: 'old-lesson', revision: 'A', date: '2025-06-02' },
]
const entries: Entry[] = []
for (const record of records) entries.push(entryAfter(entries.at(-1), record))
const file = join(dir, 'records.jsonl')
writeFileSync(file, writeJournal(entries))

const env = { SOURCE_DATE_EPOCH: String(Date.UTC(2026, 6, 1) / 1000) }
const changes = (...args: string[]) => runFettle(['changes', old, now, '--shared', shared, '--records', file, ...args], env)

test('the people whose training held until the change are named, with the reasons; others are not', async () => {
  const { code, stdout } = await changes()
  expect(code).toBe(0)
  const [, told = ''] = stdout.split('Who has to be trained again')
  expect(told).toBe(` (1)
Training that held until a change. Whoever is due for another reason, or never took a lesson, is not named here. The employer’s programme decides who is trained.
the records name lessons that the new revision does not have: \`old-lesson\`

  P-1 Ana Ruiz
    look-round, revision B: a hazard is new with revision B on 2026-05-01: A second press stands behind it
    stop-and-lock, revision A: what is taught changed on 2026-06-01: energy source \`supply\` changed

1 change, 1 change of energy sources; 1 page of the new revision speaks of them
1 person has to be trained again because of a change, by ${file} (7 entries, last hash ${entries.at(-1)?.hash.slice(0, 8)}) on 2026-07-01
`)
})

test('the same as JSON and as a page', async () => {
  const { people, unknownLessons } = JSON.parse((await changes('--format', 'json')).stdout).retraining
  expect(unknownLessons).toEqual(['old-lesson'])
  expect(
    people.map(({ person, lessons }: { person: string; lessons: { lesson: string }[] }) => [person, lessons.map(({ lesson }) => lesson)]),
  ).toEqual([['P-1', ['look-round', 'stop-and-lock']]])
  const { stdout } = await changes('--format', 'html')
  expect(stdout).toContain('<h2>Who has to be trained again</h2>')
  expect(stdout).toContain('<h3>P-1 Ana Ruiz</h3>')
})

test('without records nobody is named', async () => {
  const { stdout } = await runFettle(['changes', old, now, '--shared', shared, '--format', 'json'])
  expect(JSON.parse(stdout).retraining).toBeNull()
})

test('a journal that was changed, and a file that is not there, are refused', async () => {
  const changed = join(dir, 'changed.jsonl')
  writeFileSync(changed, readFileSync(file, 'utf8').replace('2026-02-02', '2026-02-03'))
  const ran = await runFettle(['changes', old, now, '--shared', shared, '--records', changed])
  expect(ran).toMatchObject({ code: 2, stdout: '' })
  expect(ran.stderr).toContain('changed.jsonl: entry 3: content changed; nobody is named by records that do not hold')
  expect(await runFettle(['changes', old, now, '--records', join(dir, 'none.jsonl')])).toMatchObject({
    code: 2,
    stderr: expect.stringContaining('cannot be read'),
  })
})

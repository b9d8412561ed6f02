import { expect, test } from 'vitest'
import type { WordingFinding } from '../../src/check/wording.ts'
import { sentenceRules } from '../../src/check/wording-rules.ts'
import { plainKinds } from '../../src/reading/plain/finding.ts'

const place = { file: 'a.mdx', line: 1, column: 1, endLine: 1, endColumn: 2 }

const toldBy = (found: WordingFinding) => sentenceRules.flatMap(({ id, problems }) => problems([found]).map(({ message }) => [id, message]))

test.each(plainKinds)('what is found as %s is told by one rule, and as a note where it is not sure', (kind) => {
  const found = { kind, start: 0, end: 1, words: 'it', place, count: { is: 30, limit: 20 } }
  const sure = toldBy({ ...found, sure: true })
  expect(sure.length).toBe(1)
  expect(sure[0]?.[0]).not.toBe('unsure-wording')
  expect(toldBy({ ...found, sure: false }).map(([id]) => id)).toEqual(['unsure-wording'])
})

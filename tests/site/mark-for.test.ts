import { expect, test } from 'vitest'
import { markFor } from '../../src/site/scripts/mark-for.ts'

const marks = [
  { file: 'a.mdx', line: 5 },
  { file: 'caution.mdx', line: 4 },
  { file: 'a.mdx', line: 9 },
  { file: 'a.mdx', line: 9, inner: true },
]

test.each([
  ['a.mdx', 5, 0],
  ['a.mdx', 8, 0],
  ['a.mdx', 9, 2],
  ['a.mdx', 99, 2],
  ['a.mdx', 2, 0],
  ['caution.mdx', 6, 1],
])('what is found in %s in line %i stands at block %i', (file, line, at) => expect(markFor({ file, line }, marks)).toBe(marks[at]))

test('what is found in another file has no block', () => expect(markFor({ file: 'data/bom.csv', line: 1 }, marks)).toBeUndefined())

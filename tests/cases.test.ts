import { expect, test } from 'vitest'
import { readCases, withFindings } from './cases.ts'

const page = `# some-rule

Prose.

## one

\`\`\`csv data/list.csv
tag
A1
\`\`\`

\`\`\`remove pages/front/use.mdx
\`\`\`

\`\`\`findings
data/list.csv:2:1: error: nothing [some-rule]
\`\`\`

## two

A block without a path is prose:

\`\`\`text
not a file
\`\`\`

\`\`\`findings
\`\`\`
`

const found = (text: string) => readCases(text).map(({ name, files, expected }) => [name, [...files], expected.value])

test('a rule page holds its cases', () => {
  expect(found(page)).toEqual([
    [
      'one',
      [
        ['data/list.csv', 'tag\nA1\n'],
        ['pages/front/use.mdx', undefined],
      ],
      'data/list.csv:2:1: error: nothing [some-rule]',
    ],
    ['two', [], ''],
  ])
})

test.each([0, 1])('an update changes the findings of case %i and nothing else', (index) => {
  const before = readCases(page)[index]
  if (!before) throw new Error('no such case')
  const updated = withFindings(page, before.expected, 'first line\n\n  second')
  const after = readCases(updated)[index]
  if (!after) throw new Error('the case is lost')
  expect(after.expected.value).toBe('first line\n\n  second')
  expect(withFindings(updated, after.expected, before.expected.value)).toBe(page)
})

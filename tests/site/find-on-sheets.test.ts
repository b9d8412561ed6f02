import { expect, test } from 'vitest'
import { findAnchor, readFindAnchor } from '../../src/site/scripts/drawing/find-address.ts'
import { findOnSheets } from '../../src/site/scripts/drawing/find-on-sheets.ts'

const at = (text: string) => [text, 0, 0, 14, 0] as const
const sheets = [
  { sheet: 1, texts: [at('PRS204'), at('Límite superior'), at('X2:14')] },
  { sheet: 2, texts: [at('-PRS204:4'), at('PRS205'), at('24 V d.c.')] },
]

test.each([
  ['PRS204', ['1 PRS204', '2 -PRS204:4']],
  ['prs 204', ['1 PRS204', '2 -PRS204:4']],
  ['prs-20', ['1 PRS204', '2 -PRS204:4', '2 PRS205']],
  ['limite', ['1 Límite superior']],
  ['X2 14', ['1 X2:14']],
  ['d.c', ['2 24 V d.c.']],
  ['  ', []],
  ['PRS206', []],
  // Separators of words count: no tag is asked for.
  ['limitesup', []],
])('"%s" is found on the sheets where it stands', (query, found) => {
  expect(findOnSheets(sheets, query).map(({ sheet, text }) => `${sheet} ${text[0]}`)).toEqual(found)
})

test('what is searched stands in the address, and no other anchor is taken for it', () => {
  for (const finding of [
    { query: 'X2:14 & 50 % #1', at: 3 },
    { query: 'Límite', at: undefined },
  ])
    expect(readFindAnchor(findAnchor(finding))).toEqual(finding)
  for (const anchor of ['', '#at-PRS204', '#find', '#find=%E0%A4', '#find=a&at=x']) expect(readFindAnchor(anchor)).toBeUndefined()
})

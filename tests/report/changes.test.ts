import { parse } from 'parse5'
import { describe, expect, test } from 'vitest'
import { reportChangesJson } from '../../src/report/changes-json.ts'
import { reportChangesPage } from '../../src/report/changes-page.ts'
import { reportChangesText } from '../../src/report/changes-text.ts'
import type { ChangesReport, ToldChange } from '../../src/report/changes-words.ts'

const at = (file: string, line: number, column: number) => ({ file, line, column, endLine: line, endColumn: column + 5 })
const revision = (revision: string) => ({ id: 'm', model: 'M 1', document: 'D-7', revision, date: '2026-01-01', serials: ['001'] })
const plain = { details: [], notes: [], pages: [] }

const reused: ToldChange = {
  kind: 'means-another',
  group: 'dangerous',
  thing: 'device',
  was: 'B10',
  is: 'B10',
  text: 'switch, Lift up',
  details: [{ field: 'text', was: 'switch, Lift down', is: 'switch, Lift up' }],
  notes: ['what was `B10` is gone'],
  pages: [
    {
      page: 'front/use',
      collection: 'front',
      title: 'Use <it> & "see"',
      relation: 'names',
      places: [1, 2, 3, 4]
        .map((line) => ({ language: 'en', place: at('p/use.mdx', line, 7) }))
        .concat([{ language: 'es', place: at('p/use.es.mdx', 9, 1) }]),
      translations: ['de', 'es'],
    },
  ],
}
const report: ChangesReport = {
  old: revision('A'),
  now: revision('B'),
  remarks: ['the units carry other options'],
  notCompared: [
    { thing: 'signal', extent: 'list', ids: [], side: 'old' },
    { thing: 'part', extent: 'row', ids: ['P1'], place: at('d/bom.csv', 3, 1), side: 'new' },
    { thing: 'card', extent: 'no-list', ids: [], side: 'new' },
    { thing: 'device', extent: 'column', ids: ['description.es'], side: 'new' },
    { thing: 'alarm', extent: 'rows', ids: [], place: at('d/alarms.csv', 3, 1), side: 'new' },
    { thing: 'alarm', extent: 'unsure', ids: ['A1', 'A2'], side: 'new' },
    { thing: 'alarm', extent: 'unsure', ids: ['A3'], side: 'old' },
  ],
  pagesOf: 'new',
  changes: [
    reused,
    {
      ...plain,
      kind: 'renamed',
      group: 'gone',
      thing: 'device',
      was: 'B11',
      is: 'B12',
      text: 'valve',
      details: [{ field: 'name', was: 'B11', is: 'B12' }],
    },
    {
      ...plain,
      kind: 'superseded',
      group: 'different',
      thing: 'part',
      was: 'P2',
      is: 'P2',
      text: 'Belt',
      details: [
        { field: 'supersededBy', was: '', is: 'P3' },
        { field: 'description.es', was: 'Correa', is: '' },
      ],
    },
  ],
}

describe('changes as text', () => {
  test('the dangerous first, each with its values, facts and pages', () =>
    expect(reportChangesText(report)).toBe(`old: M 1, D-7 revision A of 2026-01-01
new: M 1, D-7 revision B of 2026-01-01
the units carry other options
not compared: the list of signals, which the old revision could not give
not compared: part \`P1\`, which the new revision could not give (d/bom.csv:3:1)
not compared: the list of cards, which the new revision does not have
not compared: \`description (es)\` in the list of devices, a column that the new revision does not have
not compared: a part of the list of alarms, which the new revision could not give (d/alarms.csv:3:1)
not told as gone or renamed: alarms \`A1\`, \`A2\`, because of what could not be read
not told as new or renamed: alarm \`A3\`, because of what could not be read

Names that now mean another thing (1)
The old text still finds something, and it is the wrong thing. Read each page named here first.

  device \`B10\` now means another device
    text: switch, Lift down → switch, Lift up
    what was \`B10\` is gone
    p/use.mdx:1:7, 2:7, 3:7 and 1 more names it; written in de too
    p/use.es.mdx:9:1 names it

Gone, or under a new name (1)
Text with the old name finds nothing.

  device \`B11 → B12\` has a new name: valve

Different in itself (1)
Part, text, reaction, quantity or value is another one.

  part \`P2\` has another successor: Belt
    replaced by: P3 (was empty)
    description (es): Correa → (now empty)

3 changes, 1 name now means another thing; 1 page of the new revision speaks of them
`))

  test('two releases say that no page was read', () =>
    expect(reportChangesText({ ...report, pagesOf: undefined })).toContain('a release holds no source of its pages, so none are named'))

  test('what moves the cursor of a terminal is shown as a dot', () => {
    const wild = { ...reused, was: 'B\u001b[2J', is: 'B\u001b[2J', text: 'a\nb', notes: ['x\u202ey'], kind: 'changed' as const }
    expect(reportChangesText({ ...report, changes: [wild] })).not.toMatch(/[^\P{Cc}\n]|\p{Cf}|a\nb/u)
  })
})

test('changes as JSON leave no field out', () => {
  const { format, changes, notCompared, pagesOf, ...rest } = JSON.parse(reportChangesJson(report))
  expect(format).toBe('fettle-changes-1')
  expect(Object.keys(rest)).toEqual(['old', 'new', 'remarks', 'retraining'])
  expect(pagesOf).toBe('new')
  expect(notCompared.slice(0, 2)).toEqual([
    { side: 'old', thing: 'signal', extent: 'list', ids: [], place: null },
    { side: 'new', thing: 'part', extent: 'row', ids: ['P1'], place: at('d/bom.csv', 3, 1) },
  ])
  const fields = ['kind', 'group', 'thing', 'was', 'is', 'text', 'details', 'notes', 'oldPlace', 'newPlace', 'pages']
  for (const change of changes) expect(Object.keys(change)).toEqual(fields)
  expect(changes[0].pages[0].places[4]).toEqual({ language: 'es', ...at('p/use.es.mdx', 9, 1) })
})

describe('changes as a page', () => {
  const page = reportChangesPage(report, 'b{content:"</style>"}')

  test('it is whole HTML, and what authors wrote is text', () => {
    const errors: string[] = []
    parse(page, { onParseError: ({ code }) => errors.push(code) })
    expect(errors).toEqual([])
    expect(page).toContain('Use &#60;it&#62; &#38; &#34;see&#34;')
    expect(page.match(/<\/style>/g)).toHaveLength(1)
  })

  test('it runs nothing and loads nothing', () => expect(page).not.toMatch(/<script|<link|<img|src=|href="[^#]|@import|url\((?!data:)/))
  test('it shows every place', () => expect(page).toContain('p/use.mdx:1:7, 2:7, 3:7, 4:7'))
  test('each heading of the summary leads to its group', () => {
    for (const [, id] of page.matchAll(/href="#([a-z]+)"/g)) expect(page).toContain(`id="${id}"`)
    expect(page.match(/href="#/g)).toHaveLength(3)
  })
  test('without a change it says so', () => expect(reportChangesPage({ ...report, changes: [] }, '')).toContain('Both revisions say the same.'))
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { framesOf } from '../../src/report/frame.ts'
import { placeOfCell } from '../../src/source/cell.ts'

/** The frame of the first `[…]` in a text, whose brackets are taken out. */
function frameOf(marked: string): string[] {
  const start = marked.indexOf('[')
  const end = marked.indexOf(']', start) - 1
  const text = marked.replace('[', '').replace(']', '')
  const position = (offset: number) => {
    const lines = text.slice(0, offset).split('\n')
    return { line: lines.length, column: (lines.at(-1) ?? '').length + 1 }
  }
  const [from, to] = [position(start), position(end)]
  const place = { file: 'a', ...from, endLine: to.line, endColumn: to.column }
  return framesOf(new Map([['a', text]]))(place)?.split('\n') ?? []
}

const many = (text: string, times: number) => text.repeat(times)

test.each([
  ['a word', 'Check [PS-103] first.', ['  1 | Check PS-103 first.', '    |       ^^^^^^']],
  ['a point', 'Check []PS-103.', ['  1 | Check PS-103.', '    |       ^']],
  ['the end of a line', 'Check[]\nfirst', ['  1 | Check', '    |      ^']],
  ['an empty line', 'a\n[]\nb', ['  2 |', '    | ^']],
  ['a text over two lines', 'one [two\nthree] four', ['  1 | one two', '    |     ^^^']],
  ['line 10', `${many('\n', 9)}a[b]`, ['  10 | ab', '     |  ^']],
  ['a line after CR LF', 'one\r\ntwo [three]\r\n', ['  2 | two three', '    |     ^^^^^']],
  ['tabs', '\ta\t[b]', ['  1 |   a  b', '    |      ^']],
  ['a tab itself', 'a[\t]b', ['  1 | a  b', '    |  ^^']],
  ['wide characters', '日本[語]x', ['  1 | 日本語x', '    |     ^^']],
  ['combining marks', 'e\u0301e\u0301[e\u0301]x', ['  1 | e\u0301e\u0301e\u0301x', '    |   ^']],
  ['emoji', '😀[😀]x', ['  1 | 😀😀x', '    |   ^^']],
  ['a colour and a bell', '\u009b31mred\u0007[y]', ['  1 | ·31mred·y', '    |         ^']],
  ['a line that is turned round', 'a\u202e[b]', ['  1 | a·b', '    |   ^']],
  ['a zero-width space', 'a\u200b[b]', ['  1 | a·b', '    |   ^']],
])('%s', (_, marked, expected) => expect(frameOf(marked)).toEqual(expected))

describe('a cell of a workbook', () => {
  const rows = 'number\tdescription\n\n100-01\tPressure switch\t\t2'
  const frames = framesOf(new Map([['bom.xlsx!Parts', rows]]))
  test.each([
    ['stands in its row', placeOfCell('bom.xlsx', 'Parts', 3, 2), ['  3 | 100-01  Pressure switch    2', '    |         ^^^^^^^^^^^^^^^']],
    ['may be empty', placeOfCell('bom.xlsx', 'Parts', 3, 3), ['  3 | 100-01  Pressure switch    2', '    |                          ^']],
    ['may stand right of all others', placeOfCell('bom.xlsx', 'Parts', 1, 9), ['  1 | number  description', '    |                    ^']],
    [
      'may be a row of cells',
      { ...placeOfCell('bom.xlsx', 'Parts', 1, 1), endColumn: 3 },
      ['  1 | number  description', '    | ^^^^^^^^^^^^^^^^^^^'],
    ],
  ])('%s', (_, place, expected) => expect(frames(place)?.split('\n')).toEqual(expected))

  test('of another sheet is not shown', () => expect(frames(placeOfCell('bom.xlsx', 'Old parts', 3, 2))).toBeUndefined())
})

describe('a long line', () => {
  test('that just fits is whole', () => {
    expect(frameOf(`${many('a', 90)}[${many('b', 10)}]`)).toEqual([
      `  1 | ${many('a', 90)}${many('b', 10)}`,
      `    | ${many(' ', 90)}${many('^', 10)}`,
    ])
  })
  test('is cut after the carets', () => {
    expect(frameOf(`a [b] ${many('c', 200)}`)).toEqual([`  1 | a b ${many('c', 96)}…`, '    |   ^'])
  })
  test('is cut before the carets', () => {
    expect(frameOf(`${many('a', 200)}[b]`)).toEqual([`  1 | …${many('a', 40)}b`, `    | ${many(' ', 41)}^`])
  })
  test('is cut before a letter, not before its accent', () => {
    expect(frameOf(`${many('e\u0301', 200)}[b]`)).toEqual([`  1 | …${many('e\u0301', 40)}b`, `    | ${many(' ', 41)}^`])
  })
  test('is cut on both sides, between wide characters', () => {
    expect(frameOf(`${many('語', 200)}[b]${many('語', 200)}`)).toEqual([`  1 | …${many('語', 20)}b${many('語', 29)}…`, `    | ${many(' ', 41)}^`])
  })
  test('that is all marked is cut with its carets', () => {
    expect(frameOf(`[${many('a', 300)}]`)).toEqual([`  1 | ${many('a', 100)}…`, `    | ${many('^', 101)}`])
  })
  test('of marks without width is cut too', () => {
    const [line = ''] = frameOf(`[x]${many('\u0301', 5000)}`)
    expect(line.length).toBeLessThan(1000)
  })
})

test('no text, no frame', () => {
  expect(framesOf(new Map())({ file: 'a', line: 1, column: 1, endLine: 1, endColumn: 1 })).toBeUndefined()
})

test('a place outside the text still has a frame', () => {
  expect(framesOf(new Map([['a', 'x']]))({ file: 'a', line: 7, column: 9, endLine: 7, endColumn: 12 })).toBe('  7 |\n    | ^')
})

test('whatever stands in a line, the carets stand under what is marked', () => {
  const piece = fc.array(fc.constantFrom('a', ' ', '\t', '語', '\u0007', '\u200b', '\u00df'), { maxLength: 120 }).map((it) => it.join(''))
  const width = (text: string) => [...text].reduce((sum, it) => sum + (it === '語' ? 2 : 1), 0)
  fc.assert(
    fc.property(piece, piece, (before, after) => {
      const [line = '', carets = ''] = frameOf(`${before}[PS]${after}`)
      expect(width(line.slice(0, line.indexOf('PS')))).toBe(carets.indexOf('^'))
      expect(carets.trimStart()).toMatch(/^\| *\^\^$/)
      expect(width(line)).toBeLessThanOrEqual(108)
    }),
  )
})

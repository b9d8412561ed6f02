import { expect, test } from 'vitest'
import { numberFigures } from '../../src/print/figures.ts'
import { writeElement } from '../../src/print/html-tree.ts'
import { idIn, takePage } from '../../src/print/taken-page.ts'
import { sitePage } from './printed-pages.ts'

const taken = (main: string, lists: readonly string[] = []) => writeElement(takePage('a/b.html', sitePage('T', main), 'p7', new Set(lists)).main)

test.each([
  ['what is hidden', '<p hidden>a</p><p>b</p>', '<p>b</p>'],
  ['a form', '<form><input></form><p>b</p>', '<p>b</p>'],
  [
    'a field, but no box for a pen',
    '<input><label class="route-tick"><input type="checkbox"></label>',
    '<label class="route-tick"><input type="checkbox"></label>',
  ],
  ['a list that led on to something else', '<section class="links"><h2>X</h2><nav><a href="c.html">c</a></nav></section>', ''],
])('%s is left out', (_, main, expected) => expect(taken(main)).toBe(`<main>${expected}</main>`))

test('a list that the index takes the place of is left out by its heading', () => {
  const section = '<section class="links"><h2>Other pages</h2><ul><li>a</li></ul></section>'
  expect(taken(section, ['Other pages'])).toBe('<main></main>')
  expect(taken(section)).toContain('Other pages')
})

test('what is folded is open', () =>
  expect(taken('<details><summary>a</summary>b</details>')).toBe('<main><details open=""><summary>a</summary>b</details></main>'))

test.each([
  ['stand side by side on a page stay whole', 'Quantity', ''],
  ['are wider than a page may break', 'Fördergurtüberwachung', ' class="wide-heads"'],
  ['have a place to break at stay whole', 'Förder-gurt-überwachung', ''],
])('heads of a table that %s', (_, head, attributes) => {
  const table = `<tbody><tr>${`<th>${head}</th>`.repeat(5)}</tr></tbody></table>`
  expect(taken(`<table>${table}`)).toBe(`<main><table${attributes}>${table}</main>`)
})

test('a picture is loaded before anybody scrolls to it', () =>
  expect(taken('<img src="a.svg" loading="lazy">')).toBe('<main><img src="a.svg"></main>'))

test('ids and what names them get the key of the page', () => {
  const html = taken('<h2 id="qué">a</h2><p aria-labelledby="qué b">c</p><svg><pattern id="h"/><path fill="url(#h)"/><use href="#h"/></svg>')
  expect(html).toContain('id="p7-qu_e9_"')
  expect(html).toContain('aria-labelledby="p7-qu_e9_ p7-b"')
  expect(html).toContain('fill="url(#p7-h)"')
  expect(html).toContain('<use href="#p7-h">')
})

test('ids of different names stay different', () => expect(idIn('p1', 'a b')).not.toBe(idIn('p1', 'a_b')))

test('the title is told without the machine', () => expect(takePage('a.html', sitePage('Stop · now', ''), 'p1', new Set()).title).toBe('Stop · now'))

test('a text that is no page is refused by its path', () =>
  expect(() => takePage('a.html', '<p>a</p>', 'p1', new Set())).toThrow('a.html has no main part'))

test('figures and tables are numbered, with their own words or those above them', () => {
  const { main } = takePage(
    'a.html',
    sitePage(
      'T',
      '<h2>Parts</h2><table class="data"><tbody><tr><td>1</td></tr></tbody></table><figure><img src="a" alt="A belt"></figure><figure><img src="a" alt=""><figcaption>A pin</figcaption></figure><figure class="sheet"></figure>',
    ),
    'p1',
    new Set(),
  )
  const words = { figure: (number: number) => `Figure ${number}`, table: (number: number) => `Table ${number}` }
  expect(numberFigures(main, { figures: 3, tables: 0 }, words)).toEqual({ figures: 5, tables: 1 })
  const html = writeElement(main)
  expect(html).toContain('<caption>Table 1: Parts</caption>')
  expect(html).toContain('<figcaption>Figure 4: A belt</figcaption>')
  expect(html).toContain('<figcaption>Figure 5: A pin</figcaption>')
})

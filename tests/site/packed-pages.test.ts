import { expect, test } from 'vitest'
import { packPages } from '../../src/site/packed-pages.ts'

const page = (main: string) =>
  `<!DOCTYPE html><html><head><link rel="stylesheet" href="../assets/site.css?v=1"></head><body><a class="plate" href="../index.html">Washer</a><a class="plate-language" href="../es/lessons/a.html">ES</a><main id="main">${main}</main><nav class="rail"><a href="../alarms.html">Alarms</a></nav></body></html>`

const site: Readonly<Record<string, string>> = {
  'lessons/a.html': page(
    '<p><a href="../tags/PS-101.html#meter">PS-101</a> <a href="b.html">B</a> <a href="#main">up</a> <a href="../sheets/E-1.svg">sheet</a></p>',
  ),
  'lessons/b.html': page(
    '<section class="links"><h2>Also</h2><ul><li><a class="row" href="c.html">C</a></li></ul></section><form action="../search.html"></form><form data-filter></form>',
  ),
  'tags/PS-101.html': page('<a href="../parts/1.html">part</a><img src="../images/a%20b.svg">'),
  'parts/1.html': page(''),
}
const read = (path: string) => site[path] ?? ''
const mainOf = (html: string | undefined) => /<main id="main">(.*)<\/main>/.exec(html ?? '')?.[1]

test('the roots and one link from them; what leads further becomes text', () => {
  const { pages, assets } = packPages(['lessons/a.html'], read, (path) => path.startsWith('tags/'))
  expect([...pages.keys()]).toEqual(['lessons/a.html', 'tags/PS-101.html'])
  expect(mainOf(pages.get('lessons/a.html'))).toBe(
    '<p><a href="../tags/PS-101.html#meter">PS-101</a> <a>B</a> <a href="#main">up</a> <a href="../sheets/E-1.svg">sheet</a></p>',
  )
  expect(mainOf(pages.get('tags/PS-101.html'))).toBe('<a>part</a><img src="../images/a%20b.svg">')
  expect([...assets].sort()).toEqual(['assets/site.css', 'images/a b.svg', 'sheets/E-1.svg'])
})

test('what leads out alone is left out: rail, search, languages, lists of other pages', () => {
  const { pages } = packPages(['lessons/b.html'], read, () => false)
  const html = pages.get('lessons/b.html') ?? ''
  expect(mainOf(html)).toBe('<form data-filter=""></form>')
  expect(html).toContain('<a class="plate">Washer</a><main')
  expect(html).not.toContain('rail')
})

test('a page is there once, whoever leads to it, and another lesson of the package keeps its link', () => {
  const { pages } = packPages(['lessons/a.html', 'lessons/b.html'], read, () => true)
  expect([...pages.keys()]).toEqual(['lessons/a.html', 'lessons/b.html', 'tags/PS-101.html', 'lessons/c.html'])
  expect(mainOf(pages.get('lessons/a.html'))).toContain('<a href="b.html">B</a>')
})

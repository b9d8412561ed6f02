import { expect, test } from 'vitest'
import { type OpenedPage, readOpened, withOpened } from '../../src/site/scripts/opened.ts'

const page = (path: string): OpenedPage => ({ path, kind: 'device', id: path, title: 'A switch' })

test('a page that is opened again moves to the front and stands there once; the oldest leave', () => {
  const list = ['tags/A.html', 'tags/B.html'].map(page)
  expect(withOpened(list, page('tags/B.html')).map(({ path }) => path)).toEqual(['tags/B.html', 'tags/A.html'])
  const many = Array.from({ length: 20 }, (_, index) => page(`tags/${index}.html`)).reduce(withOpened, [] as OpenedPage[])
  expect(many.map(({ path }) => path)).toEqual(Array.from({ length: 12 }, (_, index) => `tags/${19 - index}.html`))
})

test('what was kept is read back; a damaged store is empty, and no entry leads out of the site', () => {
  const list = [page('tags/A.html'), page('drawings/E-104/2.html'), page('tags/=S1+C2-B13.html')]
  expect(readOpened(JSON.stringify(list))).toEqual(list)
  for (const text of [undefined, '', '{', '7', 'null', '{"path":"a.html"}']) expect(readOpened(text)).toEqual([])
  const bad = ['https://example.org/a.html', '/a.html', '//a/b.html', 'javascript:alert(1)//.html', 'tags/A.txt', '']
  expect(readOpened(JSON.stringify([...bad.map(page), null, 7, { path: 'tags/A.html' }]))).toEqual([])
})

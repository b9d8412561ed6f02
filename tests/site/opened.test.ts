import { expect, test } from 'vitest'
import { type OpenedPage, readOpened, withOpened, writeOpened } from '../../src/site/scripts/opened.ts'

const page = (path: string): OpenedPage => ({ path, kind: 'device', id: path, title: 'A switch' })

test('a page that is opened again moves to the front and stands there once; the oldest leave', () => {
  const list = ['tags/A.html', 'tags/B.html'].map(page)
  expect(withOpened(list, page('tags/B.html')).map(({ path }) => path)).toEqual(['tags/B.html', 'tags/A.html'])
  const many = Array.from({ length: 20 }, (_, index) => page(`tags/${index}.html`)).reduce(withOpened, [] as OpenedPage[])
  expect(many.map(({ path }) => path)).toEqual(Array.from({ length: 12 }, (_, index) => `tags/${19 - index}.html`))
})

test('what was kept is read back; a damaged store is empty, and no entry leads out of the site', () => {
  const list = [page('tags/A.html'), page('drawings/E-104/2.html'), page('tags/=S1+C2-B13.html'), { ...page('procedures/a.html'), id: '' }]
  expect(readOpened(writeOpened(list))).toEqual(list)
  expect(readOpened(writeOpened([{ ...page('tags/A.html'), title: 'Two\nlines\tand a tab' }]))).toMatchObject([{ title: 'Two lines and a tab' }])
  for (const text of [undefined, '', '{', '7', 'null', '{"path":"a.html"}', 'tags/A.html', 'tags/A.html\tdevice\tA'])
    expect(readOpened(text)).toEqual([])
  const bad = ['https://example.org/a.html', '/a.html', '//a/b.html', 'javascript:alert(1)//.html', 'tags/A.txt', '']
  expect(readOpened(writeOpened(bad.map(page)))).toEqual([])
})

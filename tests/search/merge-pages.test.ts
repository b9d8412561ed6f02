import { expect, test } from 'vitest'
import type { SearchEntry, SearchKind } from '../../src/search/entry.ts'
import { type EnginePage, mergePages, pageSorts } from '../../src/search/merge-pages.ts'
import { readPassage, withoutHeadings } from '../../src/search/runtime/passage.ts'

const drawing: SearchEntry = { kind: 'drawing', id: 'E-104', path: 'drawings/E-104.html', title: 'Lift', language: 'en' }
const alarm: SearchEntry = { kind: 'alarm', id: 'A0104', path: 'alarms/A0104.html', title: 'Lift stuck', language: 'en' }
const sortOf = pageSorts({
  entries: [drawing, alarm],
  pages: [
    { path: 'lessons/clean.html', kind: 'lesson' },
    { path: 'es/checks/a/LS1.html', kind: 'lesson' },
    { path: 'procedures/clean.html', kind: 'job', place: 'Tank' },
  ],
})

function page(path: string, score: number, title = path): EnginePage {
  return { id: path, score, path, title, anchor: '', section: '', passage: [] }
}

function merge(answers: [weight: number, pages: EnginePage[]][], asked: SearchKind[] = []) {
  const all = answers.map(([weight, pages]) => ({ weight, answer: { total: pages.length, pages } }))
  return mergePages(all, sortOf, new Set(asked)).map(({ path }) => path)
}

test('a page of several searches counts once, with its best score', () => {
  const first = [page('a.html', 5), page('b.html', 4)]
  const second = [page('b.html', 10), page('c.html', 1)]
  expect(
    merge([
      [1, first],
      [0.8, second],
    ]),
  ).toEqual(['b.html', 'a.html', 'c.html'])
})

test('sheets of a drawing and lessons of one title are one hit, the best of them', () => {
  expect(merge([[1, [page('drawings/E-104.html', 2), page('drawings/E-104/2.html', 3)]]])).toEqual(['drawings/E-104/2.html'])
  expect(merge([[1, [page('lessons/a/LS1.html', 3, 'Check a switch'), page('lessons/a/LS2.html', 2, 'Check a switch')]]])).toEqual([
    'lessons/a/LS1.html',
  ])
})

test('a lesson about a job comes after the job itself, unless it fits much better', () => {
  const of = (lesson: number) => merge([[1, [page('lessons/clean.html', lesson), page('procedures/clean.html', 3), page('es/checks/a/LS1.html', 2)]]])
  expect(of(3.5)).toEqual(['procedures/clean.html', 'lessons/clean.html', 'es/checks/a/LS1.html'])
  expect(of(4.5)[0]).toBe('lessons/clean.html')
})

test('a page is what the list says it is, or the thing that it belongs to, or just a page', () => {
  expect(sortOf('procedures/clean.html')).toEqual({ entry: undefined, kind: 'job', place: 'Tank' })
  expect(sortOf('drawings/E-104/2.html')).toEqual({ entry: drawing, kind: 'drawing', place: undefined })
  expect(sortOf('front/use.html')).toEqual({ entry: undefined, kind: 'page', place: undefined })
})

test('a lesson comes first where a lesson was asked for', () => {
  const pages = [page('lessons/clean.html', 2.5), page('procedures/clean.html', 3)]
  expect(merge([[1, pages]], ['lesson'])).toEqual(['lessons/clean.html', 'procedures/clean.html'])
})

test('the kind that was asked for is lifted, and equal pages keep one order', () => {
  const pages = [page('z.html', 3), page('alarms/A0104.html', 2.5), page('m.html', 3)]
  expect(merge([[1, pages]])).toEqual(['m.html', 'z.html', 'alarms/A0104.html'])
  expect(merge([[1, pages]], ['alarm'])).toEqual(['alarms/A0104.html', 'm.html', 'z.html'])
})

test('a passage is text with marks, whatever stands in it', () => {
  expect(readPassage('Never &lt;b&gt; &amp;amp; <mark>lift.</mark> <mark>&lt;i&gt;</mark>')).toEqual([
    { text: 'Never <b> &amp; ', marked: false },
    { text: 'lift', marked: true },
    { text: '.', marked: false },
    { text: ' ', marked: false },
    { text: '<i>', marked: true },
  ])
})

test('a passage does not say again what stands above it', () => {
  const passage = readPassage('<mark>PRS104</mark> Lift down. Inductive <mark>PRS104</mark> switch')
  const text = (headings: string[]) =>
    withoutHeadings(passage, headings)
      .map(({ text }) => text)
      .join('')
  expect(text(['PRS104', 'Lift down'])).toBe('Inductive PRS104 switch')
  expect(text(['', 'PRS104 Lift down'])).toBe('Inductive PRS104 switch')
  expect(text(['Pusher'])).toBe('PRS104 Lift down. Inductive PRS104 switch')
})

import { expect, test } from 'vitest'
import { composeBook } from '../../src/print/book.ts'
import type { ChapterInput } from '../../src/print/chapters.ts'
import { en } from '../../src/print/words/en.ts'
import { labelsOf } from '../../src/site/words/labels.ts'
import { sitePage } from './printed-pages.ts'

const facts = {
  language: 'en',
  languageName: 'English',
  name: 'Crate washer',
  builder: 'Tarnwell Machinery',
  model: 'RCW 400',
  serial: '0400-017',
  document: '0400-MAN-07',
  revision: 'D',
  date: '2026-09-14',
  options: ['Blow-off fan'],
  version: 'Original instructions',
  demonstration: undefined,
  checkValue: 'b552 bc55',
}

function bookOf(chapters: readonly ChapterInput[], whole = true) {
  const names = labelsOf('en')
  if (!names) throw new Error('no words')
  return composeBook({
    chapters,
    rows: new Map([['parts/4410.html', { path: 'parts.html', anchor: 'part-4410' }]]),
    things: new Map([
      ['tags/PRS104.html', { group: 'tags', name: 'PRS104', said: 'Lift at bottom' }],
      ['parts/4410.html', { group: 'partNumbers', name: '4410', said: 'Switch' }],
    ]),
    facts,
    names,
    words: en,
    paper: 'a4',
    drawings: 'turned',
    styles: '',
    lists: new Set(['Other pages that name it']),
    whole,
  })
}

const chapters: ChapterInput[] = [
  {
    layout: 'own',
    pages: [
      {
        path: 'front/safety.html',
        html: sitePage('Safety', '<h1>Safety</h1><h2 id="signs">Signs</h2><a class="ref" href="../procedures/stop.html#slow">Stop</a>'),
      },
    ],
  },
  {
    title: 'Jobs',
    layout: 'own',
    pages: [
      {
        path: 'procedures/stop.html',
        html: sitePage(
          'Stop',
          '<header class="page-head"><p class="plate-number mono">J-1</p><div><h1>Stop</h1></div></header><h2 id="slow">Slowly</h2><a class="label" href="../tags/PRS104.html">PRS104</a><a class="ref" href="../lessons/far.html">A lesson</a><img src="../images/a.svg" alt="A belt"><button>Print</button>',
        ),
      },
    ],
  },
  {
    title: 'Devices',
    layout: 'together',
    listed: false,
    pages: [{ path: 'tags/PRS104.html', html: sitePage('PRS104 Lift at bottom', '<h1>Lift at bottom</h1>', 'device') }],
  },
  {
    layout: 'own',
    pages: [{ path: 'parts.html', html: sitePage('Parts', '<h1>Parts</h1><table class="data"><tr id="part-4410"><td>4410</td></tr></table>') }],
  },
]

const text = (html: string) =>
  html
    .replace(/<style>[\s\S]*?<\/style>|<head>[\s\S]*?<\/head>/g, '')
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ')
const pages = new Map([
  ['p1', 4],
  ['p2', 8],
  ['c1', 4],
  ['c2', 8],
  ['c3', 9],
  ['c4', 12],
  ['p3', 9],
  ['p4-part-4410', 12],
  ['p2-slow', 8],
  ['p2-_m0', 8],
  ['declaration', 13],
  ['effective', 14],
  ['index', 15],
  ['contents', 2],
])

test('links lead to the place in the book, and one that leaves it is its text', () => {
  const html = bookOf(chapters).html(pages, 15)
  expect(html).toContain('<a class="ref" href="#p2-slow">Stop<span class="to-page"> (page 8)</span></a>')
  expect(html).toContain('<span class="ref">A lesson</span>')
  expect(html).toContain('<img src="images/a.svg"')
  expect(html).not.toContain('<button')
  expect(html).not.toContain('It stopped')
})

test('headings are numbered, in the contents as above the text', () => {
  const html = bookOf(chapters).html(pages, 15)
  expect(html).toContain('<h1><span class="heading-number">1 </span>Safety</h1>')
  expect(html).toContain('<h2 id="p1-signs"><span class="heading-number">1.1 </span>Signs</h2>')
  expect(html).toContain('<h1 class="chapter-title">2 Jobs</h1>')
  expect(html).toContain('<h2><span class="heading-number">2.1 </span><span class="plate-number mono">J-1</span> Stop</h2>')
  expect(text(html)).toContain('Contents 1 Safety 4 2 Jobs 8 2.1 Stop 8 3 Devices 9 4 Parts 12 Declaration')
})

test('the index names the page of a thing and the pages that name it', () => {
  const html = text(bookOf(chapters).html(pages, 15))
  expect(html).toContain('PRS104 Lift at bottom 9 , 8')
  expect(html).toContain('4410 Switch 12')
})

test('each part ends before the next begins, and the last with the book', () => {
  const html = text(bookOf(chapters).html(pages, 17))
  expect(html).toContain('Cover and contents 1–3 D 2026-09-14 1 Safety 4–7 D 2026-09-14 2 Jobs 8 D 2026-09-14 3 Devices 9–11')
  expect(html).toContain('Index 15–17 D 2026-09-14')
})

test('every id whose page is printed has a link, so that the PDF has a place for it', () => {
  const { ids, html } = bookOf(chapters)
  const hidden = html(pages, 15).split('<div hidden>')[1] ?? ''
  for (const id of ids) expect(hidden).toContain(`href="#${id}"`)
  expect(ids).toEqual(expect.arrayContaining(['p2-_m0', 'p4-part-4410', 'p2-slow', 'index']))
})

test('a part of the manual has neither index nor declaration', () =>
  expect(text(bookOf(chapters.slice(0, 1), false).html(pages, 4))).not.toMatch(/Declaration|Index/))

test('the running head says chapter, machine and revision, whatever they are made of', () => {
  const html = bookOf([{ title: 'Jobs "A" </style>', layout: 'own', pages: chapters[1]?.pages ?? [] }]).html(pages, 15)
  expect(html).toContain('@top-left{content:"1 Jobs \\22 A\\22  \\3c /style\\3e "')
  expect(html).toContain('"0400-MAN-07 · Rev. D · 2026-09-14"')
  expect(html).toContain('content:"Page " counter(page) " of " counter(pages)')
})

import { expect, test } from 'vitest'
import { graphOf } from '../../src/model/graph.ts'
import { planBook, safetyPages } from '../../src/print/book-plan.ts'
import { en } from '../../src/print/words/en.ts'
import { planSite } from '../../src/site/site-map.ts'
import { labelsOf } from '../../src/site/words/labels.ts'
import { loadSound } from '../sound-machine.ts'

function planned(changes?: ReadonlyMap<string, string>) {
  const [machine] = loadSound(changes).machines
  const labels = labelsOf('en')
  if (!machine || !labels) throw new Error('no machine')
  const graph = graphOf(machine)
  return { machine, graph, chapters: planBook(machine, graph, labels, en) }
}

const summary = '---\ntitle: Dangers\norder: 9\n---\n\n<SafetySummary />\n'

test('the chapter that explains the signal words comes first, whatever its order', () => {
  const { machine, graph, chapters } = planned(new Map([['pages/front/dangers.mdx', summary]]))
  expect(safetyPages(machine, graph).map(({ id }) => id)).toEqual(['front/dangers'])
  expect(chapters[0]?.addresses).toEqual(['front/dangers.html'])
  expect(chapters.filter(({ addresses }) => addresses.includes('front/dangers.html'))).toHaveLength(1)
})

test('every page of the book is a page of the site, and none is in it twice', () => {
  const { machine, graph, chapters } = planned()
  const known = new Set(planSite(machine, graph).map(({ address }) => address))
  const addresses = chapters.flatMap((chapter) => chapter.addresses)
  expect(addresses.filter((it) => !known.has(it))).toEqual([])
  expect(new Set(addresses).size).toBe(addresses.length)
})

test('the book holds every page of the site but lists, lessons, and what parts and areas have a page for', () => {
  const { machine, graph, chapters } = planned()
  const addresses = new Set(chapters.flatMap((chapter) => chapter.addresses))
  const left = planSite(machine, graph).filter(({ address, language }) => language === machine.sourceLanguage && !addresses.has(address))
  const kinds = new Set(left.map(({ view }) => (view.kind === 'page' ? view.id.split('/')[0] : view.kind)))
  expect([...kinds].sort()).toEqual(
    [
      'about',
      'alarms',
      'area',
      'devices',
      'drawings',
      'lesson-for',
      'lessons',
      'lockouts',
      'lookup',
      'manual',
      'part',
      'path',
      'planning',
      'procedures',
      'search',
      'start',
    ].sort(),
  )
})

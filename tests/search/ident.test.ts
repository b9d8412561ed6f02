import { expect, test } from 'vitest'
import type { SearchEntry } from '../../src/search/entry.ts'
import { findNames, nameOf } from '../../src/search/ident.ts'
import { kindAskedBy } from '../../src/search/kind-words.ts'
import { entries } from './site.ts'

const series = Array.from({ length: 4 }, (_, index): SearchEntry => ({ kind: 'tag', id: `B10${index}`, path: '', title: '', language: 'en' }))
const early: SearchEntry = { kind: 'alarm', id: 'A0009', path: '', title: '', language: 'en' }
const names = [...entries.filter(({ language }) => language === 'en'), ...series, early].map(nameOf)

function find(query: string) {
  const typed = query.split(' ')
  const { found, definite, near } = findNames(
    names,
    typed,
    typed.map((word) => kindAskedBy(word, 'en')),
  )
  return { ids: found.map(({ entry }) => entry.id), definite: definite?.entry.id, near }
}

test.each([
  // Tags, however they are spelled.
  ['PX-104', 'PX-104'],
  ['px104', 'PX-104'],
  ['PX 104', 'PX-104'],
  ['px.104', 'PX-104'],
  ['prs104', 'PRS104'],
  ['PRS 104', 'PRS104'],
  ['PRS-104', 'PRS104'],
  ['KF-0231', 'KF-0231'],
  ['KF 231', 'KF-0231'],
  ['0231', 'KF-0231'],
  ['PRS1O4', 'PRS104'], // a letter O for the zero
  // Part numbers without dashes, with spaces, and by their pieces.
  ['7410-2250-03', '7410-2250-03'],
  ['7410225003', '7410-2250-03'],
  ['7410 2250 03', '7410-2250-03'],
  ['2250', '7410-2250-03'],
  ['2250-03', '7410-2250-03'],
  ['225003', '7410-2250-03'],
  // Alarm numbers without zeros or letter.
  ['A0217', 'A0217'],
  ['A217', 'A0217'],
  ['217', 'A0217'],
  ['0217', 'A0217'],
  ['alarm 217', 'A0217'],
  // IEC 81346, from any aspect on.
  ['=S1+C2-B12', '=S1+C2-B12'],
  ['S1+C2-B12', '=S1+C2-B12'],
  ['+C2-B12', '=S1+C2-B12'],
  ['-B12', '=S1+C2-B12'],
  ['b12', '=S1+C2-B12'],
])('`%s` names %s', (typed, id) => {
  expect(find(typed)).toMatchObject({ ids: [id, ...find(typed).ids.slice(1)], definite: id, near: false })
})

test.each([
  ['PRS-1', ['PRS104', 'PRS105', 'PRS112']],
  ['prs10', ['PRS104', 'PRS105']],
  ['PRS', ['PRS104', 'PRS105', 'PRS112']],
  ['kf-02', ['KF-0231']],
  ['KF 2', ['KF-0231']],
  ['7410-22', ['7410-2250-03']],
  ['=S1', ['=S1+C2-B12', '=S1+C2-B13']],
  ['-B1', ['B100', 'B101', 'B102', 'B103', '=S1+C2-B12', '=S1+C2-B13']],
])('the beginning `%s` lists its series', (typed, ids) => {
  expect(find(typed)).toEqual({ ids, definite: undefined, near: false })
})

test('the kind that was named comes first', () => {
  // A bare number names all that have it; one that was read off a screen is an alarm.
  expect(find('104')).toMatchObject({ ids: ['A0104', 'E-104', 'PX-104', 'PRS104'], definite: undefined })
  expect(find('alarm 104').ids[0]).toBe('A0104')
  expect(find('drawing 104').ids[0]).toBe('E-104')
  expect(find('device 104').ids[0]).toBe('PX-104')
  expect(find('part 22').ids[0]).toBe('2217-0040')
  expect(find('alarm 104').definite).toBe('A0104')
  expect(find('alarm 104').ids).toEqual(['A0104'])
  expect(find('alarm 9')).toEqual({ ids: ['A0009'], definite: 'A0009', near: false })
  expect(find('9').ids).toEqual([])
})

test('one letter or digit off is offered only when nothing fits', () => {
  expect(find('PX-1045')).toEqual({ ids: ['PX-104'], definite: undefined, near: true })
  expect(find('PRS140')).toEqual({ ids: ['PRS104'], definite: undefined, near: true })
  expect(find('PRS999')).toEqual({ ids: [], definite: undefined, near: true })
})

test('what a part of the words names is hidden by what all of them name', () => {
  expect(find('PRS 104').ids).toEqual(['PRS104'])
  expect(find('px 104').ids).toEqual(['PX-104'])
  expect(find('PRS104 PX104').ids).toEqual(['PX-104', 'PRS104'])
})

test('a quantity among words is no name', () => {
  expect(find('supply of 22 V').ids).toEqual([])
  expect(find('tank level').ids).toEqual([])
  expect(find('lift PRS104').ids).toEqual(['PRS104'])
})

const hazards = [
  ['raised-load', 'Falling carriage'],
  ['noise', 'Noise at the air knives'],
].map(([id = '', title = '']): SearchEntry => ({ kind: 'hazard', id, path: 'front/safety.html', anchor: `hazard-${id}`, title, language: 'en' }))

test.each([
  ['raised-load', ['raised-load']],
  ['Falling carriage', ['raised-load']],
  ['hazard falling', ['raised-load']],
  ['noise', ['noise']],
  // A word of a sentence, a slip of the hand and a short beginning are left to the text of the pages.
  ['carriage', []],
  ['noise of the fan', []],
  ['noises', []],
  ['fal', []],
])('`%s` names the hazards %j', (query, ids) => {
  const typed = query.split(' ')
  const { found } = findNames(
    [...names, ...hazards.map(nameOf)],
    typed,
    typed.map((word) => kindAskedBy(word, 'en')),
  )
  expect(found.filter(({ entry }) => entry.kind === 'hazard').map(({ entry }) => entry.id)).toEqual(ids)
})

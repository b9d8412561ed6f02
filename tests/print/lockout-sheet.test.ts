import { expect, test } from 'vitest'
import { writeElement } from '../../src/print/html-tree.ts'
import { tightenLockout } from '../../src/print/lockout-sheet.ts'
import { takePage } from '../../src/print/taken-page.ts'
import { en } from '../../src/print/words/en.ts'
import { sitePage } from './printed-pages.ts'

function tightened(html: string): string {
  const { main } = takePage('lockout/a.html', sitePage('A', html, 'lockout'), 'p1', new Set())
  tightenLockout(main, en)
  return writeElement(main)
}

const step = (act: string, at: string, device: string, position = '') =>
  `<li class="route-step" data-act="${act}" data-at="${at}" data-device="${device}" data-position="${position}"><div class="route-text"><p>${act} ${at}</p></div></li>`
const written = '<li class="route-step"><div class="route-text">by hand</div></li>'
const plain = (html: string) =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()

test('steps that set points to the same position, one after the other, are one step in the same order', () => {
  const steps = [step('set-safe', 'P2', 'HV2', 'CLOSED'), step('set-safe', 'W1', 'HV9', 'CLOSED')].join('')
  expect(plain(tightened(`<ol>${steps}</ol>`))).toBe('Set each to CLOSED, one after the other, as on the board: P2 HV2 W1 HV9 .')
})

test.each([
  ['another position between them', step('set-safe', 'G1', 'PIN1', 'IN')],
  ['a step of the author between them', written],
])('%s keeps steps apart', (_, between) => {
  const html = tightened(`<ol>${step('set-safe', 'P2', 'HV2', 'CLOSED')}${between}${step('set-safe', 'W1', 'HV9', 'CLOSED')}</ol>`)
  expect(html.split('<li').length - 1).toBe(3)
  expect(html).toContain('set-safe P2')
})

test('steps of two phases are never one', () => {
  const lock = (at: string) => `<ol>${step('lock', at, 'HV2')}</ol>`
  expect(tightened(lock('P2') + lock('W1')).split('<li').length - 1).toBe(2)
})

test('messages of one word that follow one another stand under it once, in their order', () => {
  const message = (word: string, text: string) =>
    `<div class="prose"><aside class="safety safety-${word}"><p class="safety-word">${word}</p><div class="safety-body">${text}</div></aside></div>`
  const html = tightened(
    `<div class="lockout-before">${message('danger', 'a')}${message('warning', 'b')}${message('warning', 'c')}<p>d</p>${message('warning', 'e')}</div>`,
  )
  expect(plain(html)).toBe('danger a warning b c d warning e')
  // Only messages of which several have one word can be parted from it, and have it again in the next column.
  expect(html.match(/<aside class="[^"]*safety-several"><div class="safety-lead"><p class="safety-word">[^<]*/g)?.map(plain)).toEqual(['warning'])
})

test('a point of two sources is described and ticked once, with the box before its number', () => {
  const source = `<li class="source"><header class="source-head"><p>400 V</p></header><ul><li class="point"><span class="point-number">E1</span><div class="point-what"><p><a class="label">Q1</a> <span>Cabinet</span></p><p>Set to <b class="position">OFF</b> · Lock with: <span>padlock</span></p></div><label class="point-tick"><input type="checkbox"></label></li></ul><dl class="source-rest"><div class="stored"><dt>Stored energy</dt><dd><b>5 J</b></dd></div><div><dt>Prove it</dt><dd>Measure</dd></div></dl></li>`
  const html = tightened(source + source)
  expect(plain(html)).toBe('400 V Stored energy: 5 J . E1 Q1 Cabinet Set to OFF · Lock with: padlock 400 V Stored energy: 5 J . E1 Q1 Set to OFF')
  expect(html.split('<input').length - 1).toBe(1)
  expect(html.indexOf('<input')).toBeLessThan(html.indexOf('E1'))
})

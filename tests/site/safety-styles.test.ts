import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { type MessageForm, panelOf } from '../../src/hazard/panel.ts'
import { inOrderOfHarm, type SignalWord } from '../../src/hazard/signal-word.ts'

const css = readFileSync('src/site/styles/safety.css', 'utf8')

function styled(form: MessageForm, word: SignalWord): Record<string, string> {
  const block = css.split('\n').find((line) => line.startsWith(`.safety-${form}.safety-${word} {`)) ?? ''
  return Object.fromEntries([...block.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map(([, name = '', colour = '']) => [name, colour]))
}

test.each((['z535', 'iso-3864-2'] as const).flatMap((form) => inOrderOfHarm.map((word) => [form, word] as const)))(
  'the style sheet has the colours of panel.ts: %s, %s',
  (form, word) => {
    const { ground, letters, alert } = panelOf(word, form)
    const ofAlert = alert && { 'alert-triangle': alert.triangle, 'alert-mark': alert.mark, 'alert-border': alert.border }
    expect(styled(form, word)).toEqual({ 'word-ground': ground, 'word-letters': letters, ...ofAlert })
  },
)

test('NOTICE alone is italic, and in the Z535 form alone', () => {
  expect(css.match(/^.*font-style: italic.*$/gm)).toEqual(['.safety-z535.safety-notice .safety-word { font-style: italic; }'])
  expect(inOrderOfHarm.filter((word) => panelOf(word, 'z535').italic)).toEqual(['notice'])
})

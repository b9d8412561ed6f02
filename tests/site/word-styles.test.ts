import { expect, test } from 'vitest'
import { type MessageForm, panelOf } from '../../src/hazard/panel.ts'
import { inOrderOfHarm, type SignalWord } from '../../src/hazard/signal-word.ts'
import { wordStyles } from '../../src/site/word-styles.ts'

function styled(form: MessageForm, word: SignalWord): Record<string, string> {
  const block = new RegExp(`\\.safety-${form}\\.safety-${word}{(.*?)}`).exec(wordStyles(form))?.[1] ?? ''
  return Object.fromEntries([...block.matchAll(/--([a-z-]+):(#[0-9a-f]{6})/g)].map(([, name = '', colour = '']) => [name, colour]))
}

test.each((['z535', 'iso-3864-2'] as const).flatMap((form) => inOrderOfHarm.map((word) => [form, word] as const)))(
  'the styles of a page have the colours of the panel: %s, %s',
  (form, word) => {
    const { ground, letters, alert } = panelOf(word, form)
    const ofAlert = alert && { 'alert-triangle': alert.triangle, 'alert-mark': alert.mark, 'alert-border': alert.border }
    expect(styled(form, word)).toEqual({ 'word-ground': ground, 'word-letters': letters, ...ofAlert })
  },
)

test('NOTICE alone is italic, and in the Z535 form alone', () => {
  expect(wordStyles('z535').match(/[^}]*{font-style:italic}/g)).toEqual(['.safety-z535.safety-notice .safety-word{font-style:italic}'])
  expect(wordStyles('iso-3864-2')).not.toContain('italic')
})

import { expect, test } from 'vitest'
import { findWords } from '../../src/site/scripts/find-words.ts'

test.each([
  ['Open the  valve\nnow.', ['the valve'], 'the  valve'],
  ['Open V12 (1 in.) and wait.', ['Open', '(1 in.) and'], 'Open V12 (1 in.) and'],
  ['a+b costs $5', ['$5'], '$5'],
  ['Open it.', ['Close'], undefined],
  ['Open it.', [], undefined],
  ['wait, then open', ['open', 'wait'], undefined],
])('%s', (text, pieces, words) => {
  const found = findWords(text, pieces)
  expect(found && text.slice(found.start, found.end)).toBe(words)
})

import { expect, test } from 'vitest'
import { offsetOf, sourceText } from '../../src/source/source-text.ts'

test.each(['\n', '\r\n', '\r'])('offsetOf gives back every place of a text whose lines end with %j', (end) => {
  const source = sourceText('a.txt', ['one', '', 'three'].join(end))
  for (let offset = 0; offset <= source.text.length; offset++) {
    const { line, column } = source.place(offset)
    expect(offsetOf(source, line, column)).toBe(offset)
  }
  expect(offsetOf(source, 9, 1)).toBe(source.text.length)
})

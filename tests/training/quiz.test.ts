import fc from 'fast-check'
import { expect, test } from 'vitest'
import { isRight, passes } from '../../src/training/quiz.ts'

test.each([
  [[0], [0], true],
  [[0], [1], false],
  [[0, 2], [2, 0], true],
  [[0, 2], [0], false],
  [[0, 2], [0, 1, 2], false],
  [[0], [], false],
])('right %j, chosen %j', (right, chosen, expected) => expect(isRight(right, chosen)).toBe(expected))

test.each([
  [4, 5, 80, true],
  [3, 5, 80, false],
  [0, 1, 1, false],
  [5, 5, 100, true],
  // A share that no decimal number holds: 70 percent of 10 is 7.
  [7, 10, 70, true],
  [2, 3, 67, false],
  [2, 3, 66, true],
])('%d of %d right pass %d percent', (right, of, percent, expected) => expect(passes({ right, of }, percent)).toBe(expected))

test('one more right answer never fails, and all right always pass', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 40 }), fc.nat(), fc.integer({ min: 1, max: 100 }), (of, some, percent) => {
      const right = some % of
      if (passes({ right, of }, percent)) expect(passes({ right: right + 1, of }, percent)).toBe(true)
      expect(passes({ right: of, of }, percent)).toBe(true)
      expect(passes({ right: 0, of }, percent)).toBe(false)
    }),
  )
})

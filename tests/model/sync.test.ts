import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { pairBlocks } from '../../src/model/sync.ts'

/** One character a block; for each block of the source the stamp, with `!` where its text has changed, or `-`. */
const paired = (stamps: string, source: string) =>
  pairBlocks([...stamps], [...source])
    .map((pair) => (pair ? `${pair.stamp}${pair.same ? '' : '!'}` : '-'))
    .join(' ')

describe('a block of the source is paired with the stamp of what was translated', () => {
  test.each([
    ['nothing changed', 'abc', 'abc', '0 1 2'],
    ['one changed', 'abc', 'axc', '0 1! 2'],
    ['the first changed', 'abc', 'xbc', '0! 1 2'],
    ['the last changed', 'abc', 'abx', '0 1 2!'],
    ['two neighbours changed', 'abcd', 'axyd', '0 1! 2! 3'],
    ['all changed', 'abc', 'xyz', '0! 1! 2!'],
    ['one added', 'abc', 'abxc', '0 1 - 2'],
    ['one added at the start', 'abc', 'xabc', '- 0 1 2'],
    ['one taken away', 'abc', 'ac', '0 2'],
    ['one changed and one added after it', 'abc', 'axyc', '0 1! - 2'],
    ['one moved', 'abc', 'bca', '1 2 0'],
    ['one moved and one changed', 'abcd', 'cabx', '2 0 1 3!'],
    ['blocks of one text', 'aba', 'aa', '0 2'],
    ['nothing was there', '', 'ab', '- -'],
    ['nothing is left', 'ab', '', ''],
  ])('%s', (_, stamps, source, expected) => expect(paired(stamps, source)).toBe(expected))

  const blocks = fc.array(fc.constantFrom('a', 'b', 'c', 'd', 'e'), { maxLength: 12 })

  test('no stamp is given twice, and a text that is stamped is never called changed for want of a stamp', () => {
    fc.assert(
      fc.property(blocks, blocks, (stamps, source) => {
        const pairs = pairBlocks(stamps, source)
        const taken = pairs.flatMap((pair) => pair?.stamp ?? [])
        expect(new Set(taken).size).toBe(taken.length)
        const count = (list: readonly string[], text: string) => list.filter((it) => it === text).length
        for (const text of new Set(source)) {
          const same = pairs.filter((pair, index) => source[index] === text && pair?.same).length
          expect(same).toBe(Math.min(count(stamps, text), count(source, text)))
        }
      }),
    )
  })

  test('a source that is what was translated has no change, in whatever order', () => {
    fc.assert(fc.property(blocks, (source) => pairBlocks(source.toReversed(), source).every((pair) => pair?.same)))
  })
})

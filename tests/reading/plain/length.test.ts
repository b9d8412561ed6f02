import { describe, expect, test } from 'vitest'
import type { BlockKind } from '../../../src/reading/block.ts'
import { findingsOf, kindsOf } from './read.ts'

const sentenceOf = (words: number) =>
  `Turn ${Array.from({ length: words - 1 }, (_, index) => `w${'aeiou'[index % 5]}${'bcdfg'[Math.floor(index / 5)]}e`).join(' ')}.`
const lengths = (kind: BlockKind, text: string) =>
  findingsOf(kind, text).flatMap((finding) => (finding.kind === 'long-sentence' ? [finding.count] : []))

// Source: ASD-STE100 Issue 9, rules 5.1, 5.5, 6.3.
describe('a sentence', () => {
  test.each<[BlockKind, number]>([
    ['step', 20],
    ['message', 20],
    ['paragraph', 25],
    ['item', 25],
    ['note', 25],
    ['lead-in', 25],
    ['cell', 25],
  ])('of a %s has at most %i words', (kind, limit) => {
    expect(lengths(kind, sentenceOf(limit))).toEqual([])
    expect(lengths(kind, sentenceOf(limit + 1))).toEqual([{ is: limit + 1, limit }])
  })

  // Source: ASD-STE100 Issue 9, rules 5.1 and 8.4 to 8.7: 25 words by its own count.
  const long =
    'Put preservation oil into the unit through the vent hole until the oil level is approximately 6 mm (0.24 inches) below the surface of the flange cover.'
  test('of 25 words is too long in a procedure, and not in a description', () => {
    expect(lengths('step', long)).toEqual([{ is: 25, limit: 20 }])
    expect(lengths('paragraph', long)).toEqual([])
  })

  // Source: ASD-STE100 Issue 9, rule 8.4: 20 words by its own count, with its two item numbers.
  test('counts an item number in parentheses as one word', () => {
    expect(lengths('step', 'WHEN YOU REMOVE THE SHROUD (26), BE CAREFUL NOT TO CAUSE DAMAGE TO THE SURFACE OF THE FLANGE ASSEMBLY (22).')).toEqual([])
  })

  test('is found as a whole', () => {
    const [finding] = findingsOf('step', `Open it. ${sentenceOf(21)}`)
    expect(finding).toMatchObject({ kind: 'long-sentence', start: 9, words: sentenceOf(21) })
  })
})

// Source: ASD-STE100 Issue 9, rule 6.6.
describe('a paragraph', () => {
  const sentences = (number: number) => Array.from({ length: number }, () => 'The lamp is red.').join(' ')

  test('has at most 6 sentences', () => {
    expect(kindsOf('paragraph', sentences(6))).toEqual([])
    const found = findingsOf('paragraph', sentences(8))
    expect(found).toMatchObject([{ kind: 'long-paragraph', words: sentences(2), count: { is: 8, limit: 6 } }])
  })

  test.each<BlockKind>(['item', 'step', 'note', 'message', 'cell'])('is not what a long %s is', (kind) => {
    expect(kindsOf(kind, sentences(8))).not.toContain('long-paragraph')
  })
})

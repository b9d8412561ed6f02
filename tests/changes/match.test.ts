import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { likenessOf } from '../../src/changes/likeness.ts'
import { matchBestPairs } from '../../src/changes/match.ts'
import { marked, scorePair, settledTexts, type Traits } from '../../src/changes/score.ts'

/** `BG10 Lift at the bottom @0.1 #P1`: tag, text, addresses, part. */
function row(written: string): Traits {
  const words = written.split(' ')
  const marked = (mark: string) => words.filter((word) => word.startsWith(mark)).map((word) => word.slice(1))
  return {
    id: words[0] ?? '',
    text: words
      .slice(1)
      .filter((word) => !/^[@#]/.test(word))
      .join(' '),
    links: marked('@'),
    kin: marked('#')[0] ?? '',
    around: [],
  }
}

/** Tags of the pairs, `old>now`. */
const pairsOf = (old: readonly Traits[], now: readonly Traits[]) =>
  matchBestPairs(old, now).map((pair) => `${old[pair.old]?.id}>${now[pair.now]?.id}`)
const check = (old: readonly string[], now: readonly string[], expected: readonly string[]) =>
  expect(pairsOf(old.map(row), now.map(row)).sort()).toEqual([...expected].sort())

describe('the best pairs of two lists', () => {
  test.each([
    ['the same', ['A1 Lift down @1 #P'], ['A1 Lift down @1 #P'], ['A1>A1']],
    ['a new tag', ['A1 Lift down @1 #P'], ['B1 Lift down @1 #P'], ['A1>B1']],
    ['a new tag where nothing but the text is known', ['A1 Lift down'], ['B1 Lift down'], ['A1>B1']],
    ['a new address', ['A1 Lift down @1 #P'], ['A1 Lift down @2 #P'], ['A1>A1']],
    ['a new part', ['A1 Lift down @1 #P'], ['A1 Lift down @1 #Q'], ['A1>A1']],
    ['a new text', ['A1 Lift down @1 #P'], ['A1 Carriage at the floor @1 #P'], ['A1>A1']],
    ['a text that is worded otherwise, with nothing else known', ['A1 Lift at the bottom'], ['A1 Lift at its bottom end'], ['A1>A1']],
    ['another device under the tag', ['A1 Lift down @1 #P'], ['A1 Oil low @2 #Q'], []],
    ['another device under the tag and address', ['A1 Lift down @1 #P'], ['A1 Oil low @1 #Q'], []],
    [
      'a chain of new tags',
      ['BG10 Gripper open @1 #P', 'BG11 Gripper closed @2 #P', 'BG12 Gripper turned @3 #P'],
      ['BG11 Gripper open @1 #P', 'BG12 Gripper closed @2 #P', 'BG13 Gripper turned @3 #P'],
      ['BG10>BG11', 'BG11>BG12', 'BG12>BG13'],
    ],
    [
      'a chain of new tags with a number in each text',
      ['BG10 Gripper 1 closed @1 #P', 'BG11 Gripper 2 closed @2 #P'],
      ['BG11 Gripper 1 closed @1 #P', 'BG12 Gripper 2 closed @2 #P'],
      ['BG10>BG11', 'BG11>BG12'],
    ],
    ['two tags exchanged', ['A1 Lift down @1 #P', 'A2 Lift up @2 #P'], ['A2 Lift down @1 #P', 'A1 Lift up @2 #P'], ['A1>A2', 'A2>A1']],
    [
      'two tags exchanged, of valves with no address',
      ['HV1 hand valve Drains the wash tank #P', 'HV2 hand valve Drains the rinse tank #P'],
      ['HV2 hand valve Drains the wash tank #P', 'HV1 hand valve Drains the rinse tank #P'],
      ['HV1>HV2', 'HV2>HV1'],
    ],
    ['two addresses exchanged', ['A1 Lift down @1 #P', 'A2 Lift up @2 #P'], ['A1 Lift down @2 #P', 'A2 Lift up @1 #P'], ['A1>A1', 'A2>A2']],
    [
      'two addresses exchanged between the same texts',
      ['A1 Lift end @1 #P', 'A2 Lift end @2 #P'],
      ['A1 Lift end @2 #P', 'A2 Lift end @1 #P'],
      ['A1>A1', 'A2>A2'],
    ],
    ['a tag spelt otherwise', ['PS-102 Air @1'], ['PS102 Air pressure @1'], ['PS-102>PS102']],
    ['a tag whose location changed', ['+C1-B10 Lift down #P'], ['+C2-B10 Lift down #P'], ['+C1-B10>+C2-B10']],
    [
      'one taken out of a row of equal ones',
      ['CB1 breaker spare', 'CB2 breaker spare', 'CB3 breaker spare'],
      ['CB1 breaker spare', 'CB3 breaker spare'],
      ['CB1>CB1', 'CB3>CB3'],
    ],
    ['nothing', [], ['A1 Lift down'], []],
  ])('%s', (_, old, now, expected) => check(old, now, expected))

  test('as many as there can be among equally good ones, where taking each in turn would leave one over', () => {
    // Each has all but its name in common with each other; what stands around decides.
    const old: Traits[] = [
      { ...row('A1 Valve'), around: ['lift'] },
      { ...row('A2 Valve'), around: ['wash'] },
    ]
    const now: Traits[] = [
      { ...row('B1 Valve'), around: ['wash'] },
      { ...row('B2 Valve'), around: ['lift'] },
    ]
    expect(pairsOf(old, now)).toEqual(['A1>B2', 'A2>B1'])
  })
})

const some = fc.record({
  id: fc.constantFrom('A1', 'A2', 'A3', 'A4', 'B1', '+C1-B1', '+C2-B1', '+C3-B1', 'A-1'),
  text: fc.constantFrom('', 'Lift down', 'Lift up', 'Lift 1 down', 'Lift 2 down', 'Oil low', 'oil  LOW'),
  links: fc.uniqueArray(fc.constantFrom('1', '2', '3'), { maxLength: 2 }),
  kin: fc.constantFrom('', 'P', 'Q'),
  around: fc.tuple(fc.constantFrom('lift', 'wash')),
})
const rows = fc.array(some, { maxLength: 8 })
const written = (old: readonly Traits[], now: readonly Traits[]) =>
  matchBestPairs(old, now)
    .map((pair) => JSON.stringify([old[pair.old], now[pair.now]]))
    .sort()

describe('laws of the best pairs', () => {
  test('a row is in one pair', () =>
    fc.assert(
      fc.property(rows, rows, (old, now) => {
        const pairs = matchBestPairs(old, now)
        expect(new Set(pairs.map((pair) => pair.old)).size).toBe(pairs.length)
        expect(new Set(pairs.map((pair) => pair.now)).size).toBe(pairs.length)
      }),
    ))

  test('the order of the rows does not matter', () =>
    fc.assert(
      fc.property(rows, rows, fc.infiniteStream(fc.nat()), (old, now, chance) => {
        const mixed = <T>(list: readonly T[]) =>
          list
            .map((it) => ({ it, at: chance.next().value ?? 0 }))
            .sort((a, b) => a.at - b.at)
            .map(({ it }) => it)
        expect(written(mixed(old), mixed(now))).toEqual(written(old, now))
      }),
    ))

  test('exchanging old and new exchanges each pair', () =>
    fc.assert(
      fc.property(rows, rows, (old, now) => {
        const back = matchBestPairs(now, old).map((pair) => JSON.stringify([old[pair.now], now[pair.old]]))
        expect(back.sort()).toEqual(written(old, now))
      }),
    ))

  test('no pair above the threshold is left over, whatever it shares', () =>
    fc.assert(
      fc.property(rows, rows, (old, now) => {
        const pairs = matchBestPairs(old, now)
        const [left, right] = [new Set(pairs.map((pair) => pair.old)), new Set(pairs.map((pair) => pair.now))]
        const [before, after] = [old.map(marked), now.map(marked)]
        const settled = settledTexts(before, after)
        const over = before.flatMap((a, i) =>
          after.flatMap((b, j) => (left.has(i) || right.has(j) ? [] : (scorePair(a, b, likenessOf(), settled) ?? []))),
        )
        expect(over).toEqual([])
      }),
    ))
})

describe('likeness', () => {
  test.each([
    ['Lift at bottom', 'lift  at bottom', 1],
    ['night', 'nacht', 0.25],
    ['Gripper 1', 'Gripper 2', 0.4375],
    ['', 'x', 0],
  ])('of %j and %j is %f', (a, b, expected) => {
    expect(likenessOf()(a, b)).toBe(expected)
    expect(likenessOf()(b, a)).toBe(expected)
  })
})

import { expect, test } from 'vitest'
import { formatsOf, settingsFor, settingsGone } from '../../src/model/changeover.ts'
import type { FormatSetting } from '../../src/model/machine.ts'

const at = <T>(value: T) => ({ value, place: { file: 'f', line: 1, column: 1, endLine: 1, endColumn: 1 } })
const row = (
  format: string,
  setting: string,
  value: number,
  more: { unit?: string; low?: number; high?: number; perTurn?: number; raises?: string } = {},
) =>
  ({
    format: at(format),
    setting: at(setting),
    value: at(value),
    unit: at(more.unit ?? 'mm'),
    ...Object.fromEntries((['low', 'high', 'perTurn', 'raises'] as const).flatMap((key) => (more[key] === undefined ? [] : [[key, at(more[key])]]))),
  }) as unknown as FormatSetting

const steps = (formats: FormatSetting[], to: string, from?: string) =>
  settingsFor(formats, to, from).map(({ row, from, by, turns, turn }) => [row.setting.value, from, by, turns, turn])

// A spindle of 4 mm pitch moves its nut by 4 mm a turn: 412 mm less 312 mm is 25 turns.
const formats = [
  row('A', 'width', 412, { perTurn: 4, raises: 'clockwise' }),
  row('B', 'width', 312),
  row('A', 'delay', 0.3, { unit: 's' }),
  row('B', 'delay', 0.1, { unit: 's' }),
  row('A', 'crates', 6, { unit: 'pcs' }),
  row('B', 'crates', 6, { unit: 'pcs' }),
  row('A', 'knife', 240),
]

test('from one product to another: how much, how many turns, which way; the pitch may stand at either', () => {
  expect(steps(formats, 'B', 'A')).toEqual([
    ['width', 412, -100, 25, 'counter-clockwise'],
    ['delay', 0.3, -0.2, undefined, undefined],
    ['crates', 6, 0, undefined, undefined],
  ])
  expect(steps(formats, 'A', 'B')).toEqual([
    ['width', 312, 100, 25, 'clockwise'],
    ['delay', 0.1, 0.2, undefined, undefined],
    ['crates', 6, 0, undefined, undefined],
    ['knife', undefined, undefined, undefined, undefined],
  ])
  expect(settingsGone(formats, 'B', 'A').map(({ setting }) => setting.value)).toEqual(['knife'])
})

test('there and back are the same turns the other way', () => {
  const [there] = settingsFor(formats, 'B', 'A')
  const [back] = settingsFor(formats, 'A', 'B')
  expect(there?.turns).toBe(back?.turns)
  expect(there?.by).toBe(-(back?.by ?? 0))
  expect(there?.turn).not.toBe(back?.turn)
})

test('without a product on the machine nothing is subtracted, and nothing between two units', () => {
  expect(steps(formats, 'B')).toEqual([
    ['width', undefined, undefined, undefined, undefined],
    ['delay', undefined, undefined, undefined, undefined],
    ['crates', undefined, undefined, undefined, undefined],
  ])
  expect(steps([row('A', 'width', 41.2, { unit: 'cm' }), row('B', 'width', 312)], 'B', 'A')).toEqual([
    ['width', undefined, undefined, undefined, undefined],
  ])
})

test('a pitch without a way to turn gives turns alone, a pitch of nothing none', () => {
  expect(steps([row('A', 'w', 10, { perTurn: 5 }), row('B', 'w', 20)], 'B', 'A')).toEqual([['w', 10, 10, 2, undefined]])
  expect(steps([row('A', 'w', 10, { perTurn: 0, raises: 'clockwise' }), row('B', 'w', 20)], 'B', 'A')).toEqual([['w', 10, 10, undefined, undefined]])
})

test('products come in the order of the list', () => expect(formatsOf({ formats })).toEqual(['A', 'B']))

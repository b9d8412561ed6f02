import { describe, expect, test } from 'vitest'
import { leavesOutAffected, trainingFaults } from '../../src/energy/certificates.ts'

const today = '2026-06-01'

describe('training records. Source: 29 CFR 1910.147(c)(7)(iv): name and dates', () => {
  test('D21: a name alone', () => {
    expect(trainingFaults([{ employee: 'A. Moor', dates: [] }], ['A. Moor'], today).undated).toEqual([0])
    expect(trainingFaults([{ employee: 'A. Moor', dates: ['2024-02-01'] }], ['A. Moor'], today)).toEqual({ without: [], undated: [], ahead: [] })
  })
  test('a user without a record, and a day that has not come', () => {
    const { without, ahead } = trainingFaults([{ employee: 'A. Moor', dates: ['2024-02-01', '2026-06-02'] }], ['A. Moor', 'B. Tarn'], today)
    expect(without).toEqual(['B. Tarn'])
    expect(ahead).toEqual([{ record: 0, date: '2026-06-02' }])
  })
})

// Source: 29 CFR 1910.147(c)(6)(i)(C) and (D).
test('D22: with tags, who is affected takes part in the inspection', () => {
  expect(leavesOutAffected(undefined, true)).toBe(true)
  expect(leavesOutAffected([], true)).toBe(true)
  expect(leavesOutAffected(['D. Reed'], true)).toBe(false)
  expect(leavesOutAffected(undefined, false)).toBe(false)
})

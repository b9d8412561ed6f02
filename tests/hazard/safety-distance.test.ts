import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { minimumGapMm } from '../../src/hazard/minimum-gap.ts'
import { isDistance, safetyDistance } from '../../src/hazard/safety-distance.ts'

const curtain = (stopTimeS: number, resolutionMm: number) => safetyDistance({ kind: 'light-curtain', stopTimeS, resolutionMm })

describe('ISO 13855:2010, 6.2.3.1: a light curtain up to 40 mm, approached at a right angle', () => {
  test.each([
    // Source: operating instructions of a sensor maker.
    ['H01', 0.165, 14, 330, 2000],
    // Source: operating instructions of a sensor maker: 640 mm are over 500 mm, so the slower speed counts.
    ['H02', 0.29 + 0.03, 14, 512, 1600],
    // Source of these: the rule of the clause. The slower speed never gives less than 500 mm, and no distance is under 100 mm.
    ['H03', 0.2, 30, 500, 1600],
    ['H04', 0.25, 30, 528, 1600],
    ['H05', 0.03, 14, 100, 2000],
  ])('%s: %d s and %d mm', (_, stopTimeS, resolutionMm, distanceMm, approachMmPerS) => {
    expect(curtain(stopTimeS, resolutionMm)).toMatchObject({ distanceMm, approachMmPerS })
  })

  // From memory.
  test('H06: finer than 14 mm adds no reach, and takes none off', () => expect(curtain(0.1, 10)).toMatchObject({ distanceMm: 200, reachMm: 0 }))
})

// Source: the rule of the clause, computed independently.
test.each([
  ['SF-01', 0.12, 14, 240],
  ['SF-02', 0.3, 30, 608],
  ['SF-03', 0.2, 30, 500],
  ['SF-04', 0.3, 50, 1330],
])('%s: %d s and %d mm', (_, stopTimeS, resolutionMm, distanceMm) => {
  const found = curtain(stopTimeS, resolutionMm)
  expect(isDistance(found) && found.distanceMm).toBeCloseTo(distanceMm, 6)
})

// From memory: ISO 13855:2010, clause 8.
test('H07: two hands', () => {
  expect(safetyDistance({ kind: 'two-hand-control', stopTimeS: 0.2, covered: false })).toMatchObject({ distanceMm: 570, reachMm: 250 })
  expect(safetyDistance({ kind: 'two-hand-control', stopTimeS: 0.02, covered: true })).toMatchObject({ distanceMm: 100, reachMm: 0 })
})

// From memory: ISO 13855:2010, 6.2.3.2 and clause 7.
test('an arm through a coarse curtain, and a step on a mat', () => {
  expect(curtain(0.2, 50)).toMatchObject({ distanceMm: 1170, reachMm: 850 })
  expect(safetyDistance({ kind: 'pressure-mat', stopTimeS: 0.2 })).toMatchObject({ distanceMm: 1520, reachMm: 1200 })
})

test('what is missing or cannot be is said, and nothing is put in its place', () => {
  expect(safetyDistance({ kind: 'light-curtain', stopTimeS: undefined, resolutionMm: undefined })).toEqual({
    notComputed: ['stopTimeS', 'resolutionMm'],
  })
  expect(safetyDistance({ kind: 'light-curtain', stopTimeS: 0.2, resolutionMm: undefined })).toEqual({ notComputed: ['resolutionMm'] })
  expect(curtain(0, 14)).toHaveProperty('impossible')
  expect(curtain(0.2, 0)).toHaveProperty('impossible')
  expect(curtain(0.2, 80)).toHaveProperty('impossible')
  expect(curtain(Number.NaN, 14)).toHaveProperty('impossible')
})

test('a machine that stops later, or a coarser curtain, never may stand nearer', () => {
  const stopTimeS = fc.double({ min: 0.001, max: 3, noNaN: true })
  const resolutionMm = fc.integer({ min: 1, max: 70 })
  fc.assert(
    fc.property(stopTimeS, stopTimeS, resolutionMm, resolutionMm, (t1, t2, d1, d2) => {
      const [near, far] = [curtain(Math.min(t1, t2), Math.min(d1, d2)), curtain(Math.max(t1, t2), Math.max(d1, d2))]
      if (!isDistance(near) || !isDistance(far)) throw new Error('not computed')
      expect(near.distanceMm).toBeLessThanOrEqual(far.distanceMm)
      expect(near.distanceMm).toBeGreaterThanOrEqual(100)
    }),
  )
})

// Source: ISO 13854, table 1, as a national accident insurer prints it.
test('H08: gaps that crush nothing', () => {
  expect([minimumGapMm.hand, minimumGapMm.finger, minimumGapMm.body, minimumGapMm.head]).toEqual([100, 25, 500, 300])
})

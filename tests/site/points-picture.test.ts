import { expect, test } from 'vitest'
import { pointsPicture } from '../../src/site/plan/points-picture.ts'

const sheet = { x: 0, y: 0, width: 1600, height: 700 }
const points = [
  { text: 'E1', x: 590, y: 72 },
  { text: 'G1', x: 496, y: 366 },
  { text: 'P1', x: 1068, y: 76 },
]

test('every point has a label with its number, and its leader begins at the point', () => {
  const picture = pointsPicture(points, sheet)
  expect(picture?.labels.map(({ spot }) => spot.text)).toEqual(['E1', 'G1', 'P1'])
  const scale = (picture?.map.width ?? 0) / (picture?.view.width ?? 1)
  for (const { spot, leader } of picture?.labels ?? []) {
    expect(leader[0].x).toBeCloseTo((picture?.map.x ?? 0) + (spot.x - (picture?.view.x ?? 0)) * scale)
    expect(leader[0].y).toBeCloseTo((picture?.map.y ?? 0) + (spot.y - (picture?.view.y ?? 0)) * scale)
  }
})

test('a single point is shown with at least a third of the machine round it', () => {
  const picture = pointsPicture(points.slice(0, 1), sheet)
  expect(picture?.view.width).toBeGreaterThanOrEqual(1600 / 3 - 1)
})

test('without a point there is no plan', () => expect(pointsPicture([], sheet)).toBeUndefined())

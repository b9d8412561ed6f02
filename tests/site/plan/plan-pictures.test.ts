import fc from 'fast-check'
import { expect, test } from 'vitest'
import { panelSizes } from '../../../src/panel/panel-sizes.ts'
import { cross, overlap, type Point, type Rect } from '../../../src/site/plan/geometry.ts'
import type { PlanPicture } from '../../../src/site/plan/place-labels.ts'
import { planPictures as pictured } from '../../../src/site/plan/plan-pictures.ts'
import { planSizes } from '../../../src/site/plan/plan-sizes.ts'
import type { DeviceAt, NumberedSpot } from '../../../src/site/plan/spots-of.ts'

const sheet = { x: 0, y: 0, width: 1600, height: 760 }
const lift = { x: 324, y: 212, width: 196, height: 360 }

const planPictures = (devices: readonly DeviceAt[], outline: Rect | undefined, on: Rect) => pictured(devices, outline, on, planSizes(undefined))

/** Devices in an area of any shape. Many stand on one spot or in a row. */
const areas = fc
  .record({
    x: fc.integer({ min: 0, max: 900 }),
    y: fc.integer({ min: 0, max: 400 }),
    width: fc.integer({ min: 20, max: 700 }),
    height: fc.integer({ min: 20, max: 360 }),
  })
  .chain((outline) =>
    fc.record({
      outline: fc.constant(outline),
      places: fc.array(fc.record({ right: fc.integer({ min: 0, max: 12 }), down: fc.integer({ min: 0, max: 8 }) }), { minLength: 1, maxLength: 40 }),
      long: fc.boolean(),
    }),
  )
  .map(({ outline, places, long }) => ({
    outline,
    devices: places.map(
      ({ right, down }, index): DeviceAt => ({
        tag: `${long ? '=A1+C2-' : ''}B${100 + index}`,
        x: outline.x + (right * outline.width) / 12,
        y: outline.y + (down * outline.height) / 8,
      }),
    ),
  }))

test('labels do not overlap, leaders cross neither each other nor a label, and every device has one', () => {
  fc.assert(
    fc.property(areas, ({ outline, devices }) => {
      const pictures = planPictures(devices, outline, sheet)
      if (!pictures) throw new Error('the devices have no plan')
      expect(pictures.tags.toSorted()).toEqual(devices.map(({ tag }) => tag).toSorted())
      for (const picture of [pictures.wide, pictures.middle, pictures.narrow]) expectClear(picture, devices)
    }),
    { numRuns: 150 },
  )
}, 60_000)

function expectClear({ width, height, map, view, labels }: PlanPicture<NumberedSpot>, devices: readonly DeviceAt[]): void {
  expect(labels.flatMap(({ spot }) => spot.tags).toSorted()).toEqual(devices.map(({ tag }) => tag).toSorted())
  for (const [index, { box, leader, spot }] of labels.entries()) {
    expect(isInside(box, { x: 0, y: 0, width, height })).toBe(true)
    expect(overlap(box, map)).toBe(false)
    expect(isInside({ ...leader[0], width: 0, height: 0 }, map)).toBe(true)
    expect(leader[0].x).toBeCloseTo(map.x + ((spot.x - view.x) * map.width) / view.width)
    for (const other of labels.slice(index + 1)) {
      expect(overlap(box, other.box)).toBe(false)
      expect(cross(leader, other.leader)).toBe(false)
    }
    for (const other of labels) if (other.box !== box) expect(edgesOf(other.box).some((edge) => cross(leader, edge))).toBe(false)
  }
}

/** A hundredth of a px is rounding. */
const isInside = (one: Rect, other: Rect) =>
  one.x >= other.x - 0.01 &&
  one.y >= other.y - 0.01 &&
  one.x + one.width <= other.x + other.width + 0.01 &&
  one.y + one.height <= other.y + other.height + 0.01

function edgesOf({ x, y, width, height }: Rect): [Point, Point][] {
  const corners = [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ]
  return corners.map((corner, index): [Point, Point] => [corner, corners[(index + 1) % 4] ?? corner])
}

test('a few devices have their tags on a panel, and numbers in the order of the list on a phone', () => {
  const devices = ['PRS204', 'PRS205', 'LS206'].map((tag, index) => ({ tag, x: 346, y: 340 - 36 * index }))
  const pictures = planPictures(devices, lift, sheet)
  expect(pictures?.numbersOnly).toBe(false)
  expect(textsOf(pictures?.wide)).toEqual(['PRS204', 'PRS205', 'LS206'])
  expect(textsOf(pictures?.narrow)).toEqual(['1', '2', '3'])
  expect(pictures?.tags).toEqual(['PRS204', 'PRS205', 'LS206'])
})

test('devices that are too many for labels share numbers, which run through the list', () => {
  const devices = Array.from({ length: 300 }, (_, index) => ({ tag: `K${index}`, x: 330 + (index % 5) * 40, y: 220 + Math.floor(index / 5) }))
  const pictures = planPictures(devices, lift, sheet)
  expect(pictures?.numbersOnly).toBe(true)
  expect(pictures?.tags.toSorted()).toEqual(devices.map(({ tag }) => tag).toSorted())
  const spots = pictures?.wide.labels.map(({ spot }) => spot) ?? []
  expect(spots.flatMap(({ first, tags }) => tags.map((tag, index) => pictures?.tags[first - 1 + index] === tag))).not.toContain(false)
  expect(textsOf(pictures?.wide)).toContainEqual(expect.stringMatching(/^1–\d+$/))
}, 20_000)

test.each([
  [1024, 768, 15, 'wide'],
  [1280, 800, 10.1, 'wide'],
  [800, 480, 7, 'middle'],
] as const)('on a panel of %d x %d and %d inches labels are as large as gloves and eyes need, and all there', (widthPx, heightPx, inches, shown) => {
  const panel = { diagonalMm: inches * 25.4, widthPx, heightPx, distanceMm: 600, touch: 'gloves', textArcMin: 20 } as const
  const { rootPx, smallestShare, targetPx } = panelSizes(panel)
  const devices = Array.from({ length: 22 }, (_, index) => ({ tag: `CB${100 + index}`, x: 590 + (index % 11) * 42, y: index < 11 ? 72 : 122 }))
  const pictures = pictured(devices, { x: 556, y: 40, width: 474, height: 116 }, sheet, planSizes(panel))
  if (!pictures) throw new Error('the devices have no plan')
  const picture = pictures[shown]
  expectClear(picture, devices)
  const scale = (Math.min(widthPx, 1240) - 40) / picture.width
  expect(picture.fontSizePx * scale).toBeGreaterThanOrEqual(rootPx * smallestShare - 0.01)
  for (const { box } of picture.labels) expect(Math.min(box.width, box.height) * scale).toBeGreaterThanOrEqual(targetPx - 0.01)
})

test('two devices on one spot have a label each', () => {
  const pictures = planPictures(
    [
      { tag: 'PB051', x: 400, y: 300 },
      { tag: 'LT051', x: 400, y: 300 },
    ],
    lift,
    sheet,
  )
  expect(textsOf(pictures?.wide)).toEqual(['PB051', 'LT051'])
})

test('an area without devices shows its outline, and one without either has no plan', () => {
  expect(textsOf(planPictures([], lift, sheet)?.wide)).toEqual([])
  expect(planPictures([], undefined, sheet)).toBeUndefined()
})

const textsOf = (picture: PlanPicture<NumberedSpot> | undefined) => picture?.labels.map(({ spot }) => spot.text)

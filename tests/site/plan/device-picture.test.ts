import fc from 'fast-check'
import { expect, test } from 'vitest'
import { devicePicture } from '../../../src/site/plan/device-picture.ts'
import { overlap } from '../../../src/site/plan/geometry.ts'

const sheet = { x: 0, y: 0, width: 1600, height: 760 }

test('wherever a device is, it is in view, with its label beside it and the small plan in a free corner', () => {
  const place = fc.record({ x: fc.integer({ min: 0, max: 1600 }), y: fc.integer({ min: 0, max: 760 }), hasArea: fc.boolean() })
  fc.assert(
    fc.property(place, ({ x, y, hasArea }) => {
      const { width, height, mark, box, inset, insetMark } = devicePicture(
        { tag: 'PRS204', x, y },
        hasArea ? { x: 324, y: 212, width: 196, height: 360 } : undefined,
        sheet,
      )
      for (const rect of [box, inset, { ...mark, width: 0, height: 0 }, { ...insetMark, width: 0, height: 0 }]) {
        expect(rect.x).toBeGreaterThanOrEqual(0)
        expect(rect.y).toBeGreaterThanOrEqual(0)
        expect(rect.x + rect.width).toBeLessThanOrEqual(width)
        expect(rect.y + rect.height).toBeLessThanOrEqual(height)
      }
      expect(overlap(inset, box)).toBe(false)
      expect(overlap(inset, { x: mark.x - 25, y: mark.y - 25, width: 50, height: 50 })).toBe(false)
    }),
  )
})

import { expect, test } from 'vitest'
import { fixDates } from '../../src/print/fixed-dates.ts'

const pdf = (text: string) => new Uint8Array(Buffer.from(text, 'latin1'))

test('both dates become the day of the revision, and every other byte stays', () => {
  const before = pdf("%PDF-1.4\n/Title (D:20261126101500)\n/CreationDate (D:20261126101502+00'00')\n/ModDate (D:20261126101502+00'00')\n\xff\xfe")
  const after = fixDates(before, '2026-09-14')
  expect(after).toEqual(
    pdf("%PDF-1.4\n/Title (D:20261126101500)\n/CreationDate (D:20260914000000+00'00')\n/ModDate (D:20260914000000+00'00')\n\xff\xfe"),
  )
  expect(after.length).toBe(before.length)
})

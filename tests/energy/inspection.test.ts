import { expect, test } from 'vitest'
import { inspectionDue, inspectionFaults } from '../../src/energy/inspection.ts'

/** Source: 29 CFR 1910.147(c)(6)(i), (i)(A), (ii). */
const inspection = { machine: 'RCW 400', date: '2025-03-14', employees: ['A. Moor'], inspector: 'B. Tarn' }

test('the next inspection is due a year later', () => {
  expect(inspectionDue('2025-03-14')).toBe('2026-03-14')
  expect(inspectionDue('2028-02-29')).toBe('2029-02-28')
})

test.each([
  ['2026-03-14', undefined],
  ['2026-03-15', '2026-03-14'],
])('on %s it is overdue since %s', (today, since) => {
  expect(inspectionFaults(inspection, [], today).overdueSince).toBe(since)
})

test('an inspector who uses the procedure', () => {
  expect(inspectionFaults(inspection, ['B. Tarn'], '2025-04-01').inspectorUsesIt).toBe(true)
  expect(inspectionFaults(inspection, ['A. Moor'], '2025-04-01').inspectorUsesIt).toBe(false)
})

test('the four fields of the certificate', () => {
  expect(inspectionFaults({}, [], '2025-04-01').missing).toEqual(['machine', 'date', 'employees', 'inspector'])
  expect(inspectionFaults({ ...inspection, employees: [] }, [], '2025-04-01').missing).toEqual(['employees'])
  expect(inspectionFaults(inspection, [], '2025-04-01').missing).toEqual([])
})

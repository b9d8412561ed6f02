import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

/** How many published cases each group of the sensor calculations has. */
const groups = { PX: 25, DI: 21, DO: 1, PE: 8, AN: 17, RT: 16, TC: 16, NT: 2, MS: 7, SF: 6, OU: 12, DG: 9, UC: 4 }

test('144 of 144 published cases of sensors, outputs and designations stand in a test by their number', () => {
  const wanted = Object.entries(groups).flatMap(([group, count]) =>
    Array.from({ length: count }, (_, index) => `${group}-${String(index + 1).padStart(2, '0')}`),
  )
  const files = readdirSync('tests', { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.test.ts'))
  const told = new Set(files.flatMap((file) => readFileSync(`tests/${file}`, 'utf8').match(/\b[A-Z]{2}-\d{2}\b/g) ?? []))
  const missing = wanted.filter((id) => !told.has(id))
  expect([wanted.length, missing]).toEqual([144, []])
})

import { execFileSync } from 'node:child_process'
import { expect, test } from 'vitest'

test('views are compiled once, give the bytes of views compiled anew, and tell what a page fails of', () => {
  const said = JSON.parse(execFileSync(process.execPath, ['tests/cli/views.ts'], { encoding: 'utf8', timeout: 100_000 }))
  expect(said).toEqual({
    stepsOfKept: [],
    steps: ['views'],
    folders: [1, 0],
    pages: expect.any(Number),
    differ: [],
    failed: expect.stringContaining('NONE'),
  })
  expect(said.pages).toBeGreaterThan(60)
}, 120_000)

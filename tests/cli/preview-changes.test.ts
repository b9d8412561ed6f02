import { execFileSync } from 'node:child_process'
import { expect, test } from 'vitest'

test('after each kind of change the preview shows what a clean build has, to the byte', () => {
  const said = execFileSync(process.execPath, ['tests/cli/preview-changes.ts'], { encoding: 'utf8', timeout: 240_000 })
  const rounds = said
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as { what: string; compared: number; pages: number; differ: string[] })
  expect(rounds.map(({ what, differ }) => [what, differ])).toEqual(rounds.map(({ what }) => [what, []]))
  expect(rounds).toHaveLength(12)
  for (const { compared, pages } of rounds) {
    expect(pages).toBeGreaterThan(60)
    expect(compared).toBeGreaterThan(pages)
  }
}, 300_000)

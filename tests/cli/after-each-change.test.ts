import { execFileSync } from 'node:child_process'
import { expect, test } from 'vitest'

interface Round {
  what: string
  compared: number
  pages: number
  differ: string[]
  keptDiffer: string[]
  taken: Record<string, number>
}

test('after each kind of change the preview and a build that keeps what it can have what a clean build has, to the byte', () => {
  const said = execFileSync(process.execPath, ['tests/cli/after-each-change.ts'], { encoding: 'utf8', timeout: 240_000 })
  const rounds = said
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Round)
  expect(rounds.map(({ what, differ }) => [what, differ])).toEqual(rounds.map(({ what }) => [what, []]))
  expect(rounds.map(({ what, keptDiffer }) => [what, keptDiffer])).toEqual(rounds.map(({ what }) => [what, []]))
  expect(rounds).toHaveLength(15)
  // The first build has nothing yet; of the others each makes anew what was changed, and takes the rest.
  const all = { pages: 1, photo: 1, sheet: 1 }
  const { photo, sheet } = all
  expect(Object.fromEntries(rounds.map(({ what, taken }) => [what, taken]))).toEqual({
    ...Object.fromEntries(rounds.map(({ what }) => [what, all])),
    [rounds[0]?.what ?? '']: {},
    'a photo': { pages: 1, sheet },
    'a sheet of a PDF': { pages: 1, photo },
  })
  for (const { compared, pages } of rounds) {
    expect(pages).toBeGreaterThan(30)
    expect(compared).toBeGreaterThan(pages)
  }
}, 300_000)

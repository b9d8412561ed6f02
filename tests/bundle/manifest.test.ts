import { execFileSync } from 'node:child_process'
import { readFileSync, symlinkSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkValue, parseManifest, writeManifest } from '../../src/bundle/manifest.ts'
import { parseSums, sumsText } from '../../src/bundle/sums.ts'
import { identity, workFolder, writeBundle, writeFiles } from './bundles.ts'

describe('the manifest', () => {
  test('lists every file but the two lists, in code-unit order', () => {
    const dir = writeBundle(workFolder(), { 'b.html': 'b', 'B.html': '', 'a/z.html': 'é', 'a-1.html': 'a' })
    expect(readFileSync(join(dir, 'manifest.json'), 'utf8')).toBe(`{
  "format": "fettle-manifest-1",
  "tool": "fettle 0.1.0",
  "machine": {
    "id": "rcw",
    "model": "RCW",
    "serial": "0017"
  },
  "data": [
    {
      "file": "data/io-list.csv",
      "sha256": "${'a'.repeat(64)}",
      "revision": "C"
    }
  ],
  "check": {
    "errors": 0,
    "warnings": 2,
    "notes": 1
  },
  "checkValue": "0123 4567 89ab",
  "files": [
    {
      "path": "B.html",
      "size": 0,
      "sha256": "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"
    },
    {
      "path": "a-1.html",
      "size": 1,
      "sha256": "ca978112ca1bbdcafac231b39a23dc4da786eff8147c4e72b9807785afee48bb"
    },
    {
      "path": "a/z.html",
      "size": 2,
      "sha256": "4a99557e4033c3539de2eb65472017cad5f9557f7a0625a09f1c3f6e2ba69c4c"
    },
    {
      "path": "b.html",
      "size": 1,
      "sha256": "3e23e8160039594a33894f6564e1b1348bbd7a0088d42c4acb73eeaed59c009d"
    }
  ]
}
`)
  })

  test('is the same when it is written again over itself', () => {
    const dir = writeBundle(workFolder())
    const first = readFileSync(join(dir, 'manifest.json'), 'utf8')
    writeManifest(dir, { ...identity, machine: { serial: '0017', id: 'rcw', model: 'RCW' } })
    expect(readFileSync(join(dir, 'manifest.json'), 'utf8')).toBe(first)
  })

  test('is not written for a folder with a link in it', () => {
    const dir = writeFiles(workFolder(), { 'a.html': 'a' })
    symlinkSync('a.html', join(dir, 'b.html'))
    expect(() => writeManifest(dir, identity)).toThrow('b.html is not a plain file')
  })

  test.each([
    ['{ "format": ', '`manifest.json` is not JSON'],
    ['[]', '`manifest.json` does not say its format, so it is not one of ours'],
    ['{ "format": "web-app-2" }', '`manifest.json` has the format `web-app-2`; known here is `fettle-manifest-1`'],
    ['{ "format": "fettle-manifest-1", "tool": 7 }', 'says it has the format `fettle-manifest-1` but has not: at `tool`'],
  ])('of another kind is told from ours: %s', (text, problem) => {
    expect(parseManifest(text)).toEqual({ problem: expect.stringContaining(problem) })
  })
})

describe('SHA256SUMS', () => {
  test('is accepted by sha256sum, awkward names included', () => {
    const dir = writeBundle(workFolder(), {
      'a b.html': '1',
      'ä#.html': '2',
      'back\\slash.html': '3',
      'new\nline.html': '4',
      're\rturn': '5',
      '-n': '6',
    })
    const said = execFileSync('sha256sum', ['--check', '--strict', 'SHA256SUMS'], { cwd: dir, encoding: 'utf8' })
    expect(said.match(/: OK$/gm)).toHaveLength(7)
    expect(said).toContain('manifest.json: OK')
  })

  test('is what sha256sum itself would write', () => {
    const dir = writeBundle(workFolder(), { 'a.html': '1', 'back\\slash.html': '2', 'new\nline.html': '3' })
    const names = ['a.html', 'back\\slash.html', 'manifest.json', 'new\nline.html']
    expect(readFileSync(join(dir, 'SHA256SUMS'), 'utf8')).toBe(execFileSync('sha256sum', names, { cwd: dir, encoding: 'utf8' }))
  })

  test('reads back what it wrote', () => {
    const name = fc.string({ unit: fc.constantFrom('a', '\\', '\n', '\r', 'n', ' ', '*', 'ü'), minLength: 1 })
    fc.assert(
      fc.property(fc.uniqueArray(name), (paths) => {
        const sums = paths.map((path, index) => ({ path, sha256: `${index}`.padStart(64, '0') }))
        expect(parseSums(sumsText(sums))).toEqual(new Map(sums.map(({ path, sha256 }) => [path, sha256])))
      }),
    )
  })

  test.each([
    ['a line cut off', `${'0'.repeat(64)}  a.html`],
    ['another hash', `${'0'.repeat(40)}  a.html\n`],
    ['a name twice', `${'0'.repeat(64)}  a\n${'1'.repeat(64)}  a\n`],
  ])('with %s is not guessed at', (_, text) => {
    expect(parseSums(text)).toBeUndefined()
  })
})

describe('the check value', () => {
  const inputs = [
    { path: 'machine/machine.yaml', sha256: '1'.repeat(64) },
    { path: 'content/lessons/check.mdx', sha256: '2'.repeat(64) },
  ]

  test('is three groups of four digits, whatever the order of the inputs', () => {
    expect(checkValue(inputs)).toMatch(/^[0-9a-f]{4} [0-9a-f]{4} [0-9a-f]{4}$/)
    expect(checkValue(inputs.toReversed())).toBe(checkValue(inputs))
  })

  test('changes with a path, a hash and a missing file', () => {
    const [first, second] = inputs
    const others = [[first], [{ ...first, path: 'machine/a.yaml' }, second], [{ ...first, sha256: '3'.repeat(64) }, second]]
    const values = [inputs, ...others].map((list) => checkValue(list.map((input) => ({ path: '', sha256: '', ...input }))))
    expect(new Set(values).size).toBe(4)
  })
})

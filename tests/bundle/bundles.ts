import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { onTestFinished } from 'vitest'
import { type ManifestIdentity, writeManifest } from '../../src/bundle/manifest.ts'

export const pages: Readonly<Record<string, string>> = {
  'start.html': '<h1>Returnable-crate washer</h1>',
  'tags/PRS104.html': '<h1>PRS104</h1>',
  'tags/PRS-1 #2.html': '<h1>PRS-1 #2</h1>',
  'photos/Wäsche über Tank.png': '\x89PNG not really',
  'search/index.js': 'window.index = []',
}

export const identity: ManifestIdentity = {
  tool: 'fettle 0.1.0',
  machine: { model: 'RCW', id: 'rcw', serial: '0017' },
  data: [{ file: 'data/io-list.csv', sha256: 'a'.repeat(64), revision: 'C' }],
  check: { errors: 0, warnings: 2, notes: 1 },
  checkValue: '0123 4567 89ab',
}

/** A folder of its own for one test, removed after it. */
export function workFolder(): string {
  const dir = mkdtempSync(join(tmpdir(), 'fettle bundle #ü '))
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }))
  return dir
}

export function writeFiles(dir: string, files: Readonly<Record<string, string>>): string {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(dir, path)), { recursive: true })
    writeFileSync(join(dir, path), text)
  }
  return dir
}

/** A finished build in `dir`. */
export function writeBundle(dir: string, files = pages): string {
  mkdirSync(dir, { recursive: true })
  writeFiles(dir, files)
  writeManifest(dir, identity)
  return dir
}

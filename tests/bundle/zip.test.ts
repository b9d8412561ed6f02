import { execFileSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync, symlinkSync } from 'node:fs'
import { join } from 'node:path'
import { unzipSync } from 'fflate'
import { expect, test } from 'vitest'
import { zipFolder } from '../../src/bundle/zip.ts'
import { identity, pages, workFolder, writeFiles } from './bundles.ts'

const source = (file: string) => JSON.stringify(new URL(`../../src/bundle/${file}`, import.meta.url).href)

/** Builds in a process of its own: a process reads its time zone once. */
function bundleIn(timeZone: string, files: Readonly<Record<string, string>>): Record<string, Buffer> {
  const dir = workFolder()
  writeFiles(join(dir, 'site'), files)
  const script = `
    import { writeManifest } from ${source('manifest.ts')}
    import { zipFolder } from ${source('zip.ts')}
    writeManifest('site', ${JSON.stringify(identity)})
    zipFolder('site', 'site.zip', 'rcw')
    console.log(new Date(0).getHours())`
  const hours = execFileSync(process.execPath, ['--input-type=module', '--eval', script], { cwd: dir, env: { ...process.env, TZ: timeZone } })
  const read = (path: string) => readFileSync(join(dir, path))
  return { hours, manifest: read('site/manifest.json'), sums: read('site/SHA256SUMS'), zip: read('site.zip') }
}

test('two folders, two time zones and two orders of writing give the same bytes', () => {
  const there = bundleIn('Pacific/Auckland', pages)
  const here = bundleIn('America/Los_Angeles', Object.fromEntries(Object.entries(pages).reverse()))
  expect(there.hours).not.toEqual(here.hours)
  expect(there.manifest).toEqual(here.manifest)
  expect(there.sums).toEqual(here.sums)
  expect(there.zip).toEqual(here.zip)
}, 30_000)

test('everything lies below the root name, sorted, and comes out as it went in', () => {
  const dir = workFolder()
  zipFolder(writeFiles(join(dir, 'site'), pages), join(dir, 'site.zip'), 'rcw')
  const entries = Object.entries(unzipSync(readFileSync(join(dir, 'site.zip'))))
  expect(entries.map(([name]) => name)).toEqual(
    Object.keys(pages)
      .map((path) => `rcw/${path}`)
      .sort(),
  )
  for (const [name, content] of entries) expect(new TextDecoder().decode(content)).toBe(pages[name.slice('rcw/'.length)])
})

test('names with umlauts are marked as UTF-8, and no entry has an extra field', () => {
  const dir = workFolder()
  zipFolder(writeFiles(join(dir, 'site'), { 'Wäsche.html': 'x' }), join(dir, 'site.zip'), 'rcw')
  const bytes = readFileSync(join(dir, 'site.zip'))
  const directory = bytes.indexOf('PK\x01\x02')
  const utf8Flag = 1 << 11
  expect(bytes.readUInt16LE(6) & utf8Flag).toBe(utf8Flag)
  expect(bytes.readUInt16LE(directory + 8) & utf8Flag).toBe(utf8Flag)
  expect([bytes.readUInt16LE(28), bytes.readUInt16LE(directory + 30)]).toEqual([0, 0])
  expect(bytes.subarray(30, 30 + bytes.readUInt16LE(26)).toString('utf8')).toBe('rcw/Wäsche.html')
})

test('a zip that cannot be finished leaves the earlier one and no rest', () => {
  const dir = workFolder()
  zipFolder(writeFiles(join(dir, 'site'), pages), join(dir, 'site.zip'), 'rcw')
  const earlier = readFileSync(join(dir, 'site.zip'))
  symlinkSync('start.html', join(dir, 'site/link.html'))
  expect(() => zipFolder(join(dir, 'site'), join(dir, 'site.zip'), 'rcw')).toThrow('link.html is not a plain file')
  expect(readFileSync(join(dir, 'site.zip'))).toEqual(earlier)
  expect(() => zipFolder(join(dir, 'site/tags'), join(dir, 'absent/site.zip'), 'rcw')).toThrow('ENOENT')
  expect(existsSync(join(dir, 'absent'))).toBe(false)
  expect(readdirSync(dir).sort()).toEqual(['site', 'site.zip'])
})

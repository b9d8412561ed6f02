import { existsSync, globSync, readFileSync } from 'node:fs'
import { build } from 'esbuild'
import { expect, test } from 'vitest'
import { fontLicences, fonts } from '../../src/site/fonts.ts'
import { shipped } from '../../src/site/shipped.ts'

/** Whether a licence binds what is made with the work to the same licence. */
const sharesAlike = (licence: string) => /\bCC[ -]?BY(?:[ -]NC)?[ -]SA\b/i.test(licence)

const packageOf = (path: string) => /^(?:@[^/]+\/)?[^/]+/.exec(path)?.[0] ?? path

test.each(shipped)('$package ships under $licence, as its package says', ({ package: name, licence }) => {
  expect((JSON.parse(readFileSync(`node_modules/${name}/package.json`, 'utf8')) as { license: string }).license).toBe(licence)
})

test('nothing ships that binds a manual to its own licence', () => {
  expect(shipped.filter(({ licence }) => sharesAlike(licence))).toEqual([])
})

// Source: a public archive of media, which has M002 under CC BY-SA 3.0 and P035 under CC BY-SA 4.0 among public-domain files.
test('I15: a sign taken from a public archive would be found', () => {
  const taken = { M002: 'CC BY-SA 3.0', P035: 'CC-BY-SA-4.0', W012: 'Public domain', W017: 'CC0 1.0', font: 'OFL-1.1', photo: 'CC BY 4.0' }
  expect(Object.entries(taken).flatMap(([name, licence]) => (sharesAlike(licence) ? [name] : []))).toEqual(['M002', 'P035'])
})

test('every font is of a listed package, and its licence goes with it', () => {
  const packages = new Set(shipped.map(({ package: name }) => name))
  expect(Object.values(fonts).filter((file) => !packages.has(packageOf(file)))).toEqual([])
  expect(new Set(Object.values(fontLicences).map(packageOf))).toEqual(new Set(Object.values(fonts).map(packageOf)))
  for (const file of Object.values(fontLicences)) expect(readFileSync(`node_modules/${file}`, 'utf8')).toContain('SIL OPEN FONT LICENSE')
})

test('signs and all other pictures of the site are drawn in our own sources: no file of a picture lies among them', () => {
  expect(globSync('src/**/*.{svg,png,jpg,jpeg,gif,webp,ico,woff,woff2,ttf}')).toEqual([])
  expect(existsSync('src/site/signs/sign-drawing.ts')).toBe(true)
})

/** Packages whose code is in a script of the site. */
async function packagesIn(...scripts: readonly string[]): Promise<string[]> {
  const entryPoints = scripts.map((script) => `src/site/scripts/${script}.ts`)
  const { metafile } = await build({ entryPoints, bundle: true, write: false, metafile: true, outdir: 'out', logLevel: 'silent' })
  const foreign = Object.keys(metafile.inputs).filter((path) => path.includes('node_modules/'))
  return [...new Set(foreign.map((path) => packageOf(path.replace(/.*node_modules\//, ''))))]
}

test('the scripts of the site hold the hash of the records, which is listed, and no other package', async () => {
  expect(await packagesIn('head', 'site', 'search/main', 'meter/main')).toEqual([])
  expect(await packagesIn('training/main')).toEqual(['@noble/hashes'])
  expect(shipped.map(({ package: name }) => name)).toContain('@noble/hashes')
})

test('the script of a package holds one other package, and its licence goes with it', async () => {
  const entryPoints = ['src/site/scripts/training/report-to/launch.ts']
  const { metafile } = await build({ entryPoints, bundle: true, write: false, metafile: true, outdir: 'out', logLevel: 'silent' })
  const foreign = Object.keys(metafile.inputs).flatMap((path) => /node_modules\/(.*)/.exec(path)?.[1] ?? [])
  expect([...new Set(foreign.map(packageOf))]).toEqual(['@noble/hashes'])
  expect(readFileSync('src/site/pack-sequence.ts', 'utf8')).toContain("'assets/launch-licence.txt'")
})

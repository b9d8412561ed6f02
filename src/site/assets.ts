import { createHash } from 'node:crypto'
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import type { Machine } from '../model/machine.ts'
import { panelOf } from '../model/panel.ts'
import type { KeptFiles } from '../source/kept-files.ts'
import { bundling } from './bundling.ts'
import { flexGaps } from './flex-gap.ts'
import { fontLicences, fonts } from './fonts.ts'
import { messageForm } from './message-form.ts'
import { styles } from './own-styles.ts'
import { panelStyles } from './panel-styles.ts'
import { writePictures } from './pictures.ts'
import { wordStyles } from './word-styles.ts'
import { writeSheets } from './write-sheets.ts'

const here = fileURLToPath(new URL('.', import.meta.url))

/** File in `assets/` -> where its script begins. */
export const scripts = {
  'head.js': 'scripts/head.ts',
  'site.js': 'scripts/site.ts',
  'display.js': 'scripts/display/main.ts',
  'drawing.js': 'scripts/drawing/main.ts',
  'route.js': 'scripts/route/main.ts',
  'search-ui.js': 'scripts/search/main.ts',
  'lookup.js': 'scripts/lookup.ts',
  'meter.js': 'scripts/meter/main.ts',
  'training.js': 'scripts/training/main.ts',
}

/**
 * Writes `assets/`: the style sheets, the fonts with their licences and the classic scripts with that of the hash in them; `sheets/` with the drawings and their texts and
 * `images/` with the pictures. Returns a short hash of the assets, for the links to them,
 * and what is wrong with pictures. `kept`: what earlier builds have made of the same pictures and sheets.
 */
export async function writeAssets(machine: Machine, siteDir: string, kept?: KeptFiles): Promise<{ version: string; broken: string[] }> {
  const assets = join(siteDir, 'assets')
  mkdirSync(join(assets, 'fonts'), { recursive: true })
  const require = createRequire(import.meta.url)
  for (const [name, file] of Object.entries({ ...fonts, ...fontLicences })) copyFileSync(require.resolve(file), join(assets, 'fonts', name))
  // The package exports no licence; it lies beside what it exports.
  copyFileSync(join(dirname(require.resolve('@noble/hashes/sha2.js')), 'LICENSE'), join(assets, 'training-licence.txt'))
  const sheets = new Map<string, string>()
  for (const name of styles) sheets.set(name, await styleSheet(name))
  sheets.set('site.css', sheets.get('site.css') + wordStyles(messageForm(machine.file)) + panelStyles(panelOf(machine.file)))
  sheets.set('older.css', flexGaps([...sheets.values()].join('')))
  for (const [name, css] of sheets) writeFileSync(join(assets, name), css)
  for (const [name, entry] of Object.entries(scripts))
    await build({ ...bundling, format: 'iife', entryPoints: [join(here, entry)], outfile: join(assets, name) })
  await writeSheets(machine, siteDir, kept)
  const broken = await writePictures(machine, siteDir, kept)
  const hash = createHash('sha256')
  for (const name of [...sheets.keys(), ...Object.keys(scripts)]) hash.update(readFileSync(join(assets, name)))
  return { version: hash.digest('hex').slice(0, 10), broken }
}

/** A style sheet of `styles`, lowered for the oldest engine; what it lacks besides is in `older.css`. */
export async function styleSheet(name: string): Promise<string> {
  const { outputFiles } = await build({ ...bundling, entryPoints: [join(here, 'styles', name)], write: false, external: ['*.woff2'] })
  return outputFiles[0]?.text.trim() ?? ''
}

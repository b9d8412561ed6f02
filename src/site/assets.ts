import { createHash } from 'node:crypto'
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import type { Machine, Sheet } from '../model/machine.ts'
import { panelOf } from '../model/panel.ts'
import { bundling } from './bundling.ts'
import { drawingTextsFile, drawingTextsScript } from './drawing-texts.ts'
import { flexGaps } from './flex-gap.ts'
import { fontLicences, fonts } from './fonts.ts'
import { messageForm } from './message-form.ts'
import { styles } from './own-styles.ts'
import { panelStyles } from './panel-styles.ts'
import { sheetFile, smallSheetFile } from './parts/plan.ts'
import type { PdfSheet } from './pdf-sheets.ts'
import { writePictures } from './pictures.ts'
import { wordStyles } from './word-styles.ts'

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
 * and what is wrong with pictures.
 */
export async function writeAssets(machine: Machine, siteDir: string): Promise<{ version: string; broken: string[] }> {
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
  await writeSheets(machine, siteDir)
  const broken = await writePictures(machine, siteDir)
  const hash = createHash('sha256')
  for (const name of [...sheets.keys(), ...Object.keys(scripts)]) hash.update(readFileSync(join(assets, name)))
  return { version: hash.digest('hex').slice(0, 10), broken }
}

/** A style sheet of `styles`, lowered for the oldest engine; what it lacks besides is in `older.css`. */
export async function styleSheet(name: string): Promise<string> {
  const { outputFiles } = await build({ ...bundling, entryPoints: [join(here, 'styles', name)], write: false, external: ['*.woff2'] })
  return outputFiles[0]?.text.trim() ?? ''
}

async function writeSheets({ drawings }: Machine, siteDir: string): Promise<void> {
  mkdirSync(join(siteDir, 'sheets'), { recursive: true })
  for (const drawing of drawings) {
    const { number, sheetList } = drawing
    writeFileSync(join(siteDir, drawingTextsFile(number.value)), drawingTextsScript(drawing))
    const write = (sheet: Sheet, svg: string) => writeFileSync(join(siteDir, sheetFile(number.value, sheet.number)), svg)
    const pages = sheetList.flatMap((sheet): PdfSheet[] => {
      if (!sheet.pdf) return []
      const small = join(siteDir, smallSheetFile(number.value, sheet.number))
      return [
        {
          page: sheet.pdf.page,
          write: (svg, picture) => {
            write(sheet, svg)
            writeFileSync(small, picture)
          },
        },
      ]
    })
    for (const sheet of sheetList) if (sheet.readable && !sheet.pdf) write(sheet, sheet.svg())
    const bytes = sheetList.find(({ pdf }) => pdf)?.pdf?.bytes()
    if (!bytes) continue
    const { drawPdfSheets } = await import('./pdf-sheets.ts')
    await drawPdfSheets(bytes, pages)
  }
}

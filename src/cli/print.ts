import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { safetyPages } from '../print/book-plan.ts'
import { fixDates } from '../print/fixed-dates.ts'
import { hasLettersOf } from '../print/has-letters-of.ts'
import { machineBook, type PrintInput } from '../print/machine-book.ts'
import { pagesWithMissingGlyphs } from '../print/missing-glyphs.ts'
import { printFaults } from '../print/print-faults.ts'
import { settle } from '../print/settle.ts'
import { type Sheet, type SheetKind, sheetsOf } from '../print/sheets.ts'
import { printWords } from '../print/words/print-words.ts'
import { labelsOf } from '../site/words/labels.ts'
import { keptFilesOf } from './kept-files.ts'
import { languageOf } from './language-of.ts'
import { machineToBuild } from './machine-to-build.ts'
import { nothingToPrint } from './nothing-to-print.ts'
import { type Options, UsageError } from './options.ts'
import { type Print, type Printer, startPrinter } from './printer.ts'
import { type Progress, startProgress } from './progress.ts'
import { unspokenLanguages, writePages } from './write-pages.ts'

/** Prints the manual, or sheets of it, as PDF. Nothing is printed of a folder with errors. */
export async function run(options: Options): Promise<number> {
  const [folder = '.'] = options.words
  if (options.has('tag') && options.get('what') !== 'checkout') throw new UsageError('--tag goes with --what checkout alone')
  if (options.has('drawings') && (options.get('what') ?? 'book') !== 'book') throw new UsageError('--drawings goes with the book alone')
  const progress = startProgress()
  const sound = await machineToBuild(folder, options, progress, 'not printed: the pages do not agree with the machine')
  if ('refused' in sound) return 1
  const { machine, counts, accepted } = sound
  const language = languageOf(machine, options)
  const labels = labelsOf(language)
  const words = printWords(language)
  if (!labels || !words)
    return refuse(progress, unspokenLanguages(machine) ?? `paper has no words for ${language}; a language is one file in src/print/words/`)
  const work = mkdtempSync(join(tmpdir(), 'fettle-print-'))
  let printer: Printer | undefined
  try {
    const started = await startPrinter(work)
    if ('refused' in started) return refuse(progress, started.refused)
    printer = started
    const written = await writePages({ machine, counts, accepted, preview: false, kept: keptFilesOf(folder, options), progress }, work)
    if ('refused' in written) return refuse(progress, written.refused)
    const input: PrintInput = {
      machine,
      graph: written.graph,
      language,
      labels,
      words,
      paper: options.get('paper') === 'letter' ? 'letter' : 'a4',
      drawings: options.get('drawings') === 'folded' ? 'folded' : 'turned',
      checkValue: written.checkValue,
      styles: ['book.css', 'sheet.css']
        .map((name) => readFileSync(fileURLToPath(new URL(`../site/styles/${name}`, import.meta.url)), 'utf8'))
        .join('\n'),
      read: (path) => readFileSync(join(work, path), 'utf8'),
    }
    const what = options.get('what') ?? 'book'
    progress.step('print')
    return what === 'book' || what === 'safety'
      ? await printBook(input, what, printer, progress, options)
      : await printSheets(input, what as SheetKind, printer, progress, options)
  } finally {
    await printer?.close()
    rmSync(work, { recursive: true, force: true })
  }
}

function refuse(progress: Progress, reason: string): number {
  progress.done(`not printed: ${reason}`)
  return 2
}

async function printBook(input: PrintInput, what: 'book' | 'safety', { print }: Printer, progress: Progress, options: Options): Promise<number> {
  const { machine, language } = input
  if (what === 'safety' && safetyPages(machine, input.graph).length === 0) return refuse(progress, nothingToPrint.safety)
  const book = machineBook(input, what)
  const printed = await settle({ html: book.html, print })
  if ('moved' in printed) return refuse(progress, `the page numbers do not come to rest; ${printed.moved.length} still move`)
  const faults = await faultsOf(printed, { ids: book.ids, language })
  if (faults.length > 0) return refuse(progress, `the PDF is not whole:\n${faults.join('\n')}`)
  const out = resolve(options.get('out') ?? join('dist', `${machine.file.id}.${what}.${language}.pdf`))
  save(out, printed.pdf, machine.file.date)
  progress.done(`${printed.total} pages, printed ${printed.printings} times until no number moved, in ${out}`)
  return 0
}

async function printSheets(input: PrintInput, kind: SheetKind, { print }: Printer, progress: Progress, options: Options): Promise<number> {
  const { machine, language } = input
  const tag = options.get('tag')
  const sheets = sheetsOf(input, kind, tag)
  if (sheets.length === 0) return refuse(progress, tag === undefined ? nothingToPrint[kind] : noSheetOf(tag, machine))
  const outDir = resolve(options.get('out') ?? join('dist', `${machine.file.id}.${kind}.${language}`))
  for (const { name, most, html } of sheets) {
    const printed = await printSheet(html, most, print)
    const faults = await faultsOf(printed, { ids: [], language })
    if (faults.length > 0) return refuse(progress, `the PDF of ${name} is not whole:\n${faults.join('\n')}`)
    save(join(outDir, `${name}.pdf`), printed.pdf, machine.file.date)
    progress.done(`${printed.total} ${printed.total === 1 ? 'page' : 'pages'}: ${name}.pdf`)
  }
  progress.done(`${sheets.length} ${sheets.length === 1 ? 'file' : 'files'} in ${outDir}`)
  return 0
}

async function faultsOf(printed: Print & { html: string }, expected: Parameters<typeof printFaults>[1]): Promise<string[]> {
  const missingGlyphs = await pagesWithMissingGlyphs(printed.pdf)
  return printFaults({ ...printed, missingGlyphs, isInSize: await hasLettersOf(printed.pdf, printed.largestPt) }, expected)
}

function noSheetOf(tag: string, { devices }: PrintInput['machine']): string {
  return devices.some((device) => device.tag.value === tag) ? `nothing is measured at \`${tag}\`` : `no device has the tag \`${tag}\``
}

/** Prints a sheet, and one of several pages again in less room; in the least only where it has too many. What takes no page less keeps its room. */
async function printSheet(htmlOf: Sheet['html'], most: number, print: Printer['print']): Promise<Print & { html: string }> {
  const usual = htmlOf('usual')
  let shortest = { ...(await print(usual)), html: usual }
  for (const room of ['little', 'least'] as const) {
    if (shortest.total === 1 || (room === 'least' && shortest.total <= most)) break
    const html = htmlOf(room)
    const printed = await print(html)
    if (printed.total < shortest.total) shortest = { ...printed, html }
  }
  return shortest
}

function save(path: string, pdf: Uint8Array, date: string): void {
  mkdirSync(dirname(path), { recursive: true })
  writeFileSync(path, fixDates(pdf, date))
}

import { type Files, textOf } from '../example.ts'
import { seededRandom } from '../random.ts'
import { remarks } from './remarks.ts'
import { areasOf, renamer } from './rename.ts'
import { restamped } from './restamp.ts'
import { appendToSections } from './sections.ts'

/**
 * A machine of about so many pages, the same for the same seed: the example so many times over as stations of one line,
 * in its proportions and in both languages. In station 3 the tag PRS204 is PRS3204 and the alarm A0201 is A30201, in
 * every file that speaks of them; pages have remarks that differ. The shared content is left out: it does not grow.
 */
export function generateMachine(example: Files, pages: number, seed = 1): Map<string, string | Uint8Array> {
  const own = [...example].filter(([path]) => !path.startsWith('content/'))
  const files = new Map(own)
  const random = seededRandom(seed)
  const rename = renamer(example)
  const stations = stationsFor(pages, example)
  const tables = own.map(([path]) => path).filter((path) => /^data\/.*\.csv$/.test(path))
  const lists = ['data/checkout.yaml', 'data/energy.yaml']
  const copies = new Map([...tables, ...lists].map((path) => [path, [] as string[]]))
  for (let station = 2; station <= stations; station++) {
    for (const [path, of] of copies) of.push(rename(path, station)(textOf(example, path)))
    for (const [path, text] of own) {
      if (typeof text !== 'string') continue
      if (path.startsWith('drawings/')) files.set(rename(path, station)(path), rename(path, station)(text))
      if (!/^pages\/.*\.mdx$/.test(path) || path.endsWith('.es.mdx')) continue
      const spanish = path.replace(/\.mdx$/, '.es.mdx')
      const said = remarks(random)
      const source = `${rename(path, station)(text).trimEnd()}\n${said.map(({ en }) => `\n${en}\n`).join('')}`
      const target = path.replace(/([^/.]+)\.mdx$/, `$1-${station}.mdx`)
      const translation = example.get(spanish)
      files.set(target, restamped(target, source))
      if (typeof translation !== 'string') continue
      const other = `${rename(spanish, station)(translation).trimEnd()}\n${said.map(({ es }) => `\n${es}\n`).join('')}`
      files.set(target.replace(/\.mdx$/, '.es.mdx'), restamped(target, source, other))
    }
  }
  for (const path of tables) files.set(path, withRows(textOf(example, path), copies.get(path) ?? []))
  for (const path of lists) files.set(path, appendToSections(textOf(example, path), copies.get(path) ?? [], ['supplies']))
  const areas = [...areasOf(example)].flatMap((id) => Array.from({ length: stations - 1 }, (_, index) => areaOf(id, index + 2)))
  files.set(
    'machine.yaml',
    textOf(example, 'machine.yaml').replace(/^areas:\n(?: .*\n)+/m, (own) => own + areas.join('')),
  )
  return files
}

/** An area of a station; the plan shows the first station alone. */
const areaOf = (id: string, station: number) =>
  `  - id: ${id}-${station}\n    name: { en: ${id} of station ${station}, es: ${id} de la estación ${station} }\n`

/** How many stations have about so many pages, with the pages that all machines share. */
function stationsFor(pages: number, files: Files): number {
  const sources = [...files.keys()].filter((path) => path.endsWith('.mdx') && !path.endsWith('.es.mdx'))
  const shared = sources.filter((path) => path.startsWith('content/')).length
  return Math.max(1, Math.round((pages - shared) / (sources.length - shared)))
}

/** A table with the rows of others below its own. */
function withRows(own: string, others: readonly string[]): string {
  return [own, ...others.map((text) => text.slice(text.indexOf('\n') + 1))].map((text) => text.replace(/\n*$/, '\n')).join('')
}

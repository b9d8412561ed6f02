import { type Files, textOf } from '../example.ts'

/** How many copies of the example's own pages give about so many pages. The shared content stays as it is. */
export function copiesFor(pages: number, files: Files): number {
  const own = [...files.keys()].filter((path) => /^pages\/.*\.mdx$/.test(path) && !/\.[a-z]{2}\.mdx$/.test(path)).length
  return Math.max(1, Math.round(pages / own))
}

/**
 * The example so many times over in one machine: pages, devices, signals, cards, parts, alarms and drawings. In
 * copy 3 the tag PRS204 is PRS30204 and the alarm A0201 is A30201, in every file that speaks of them.
 */
export function grownMachine(files: Files, copies: number): Files {
  const grown = new Map(files)
  const tables = [...files.keys()].filter((path) => path.startsWith('data/') && path.endsWith('.csv') && path !== 'data/formats.csv')
  const rows = new Map(tables.map((path) => [path, [textOf(files, path).replace(/\n*$/, '\n')]]))
  const rename = renamer(files)
  for (let copy = 1; copy < copies; copy++) {
    for (const path of tables) rows.get(path)?.push(rename(withoutHeading(textOf(files, path)), copy))
    for (const [path, text] of files) {
      if (typeof text !== 'string') continue
      if (/^drawings\//.test(path)) grown.set(rename(path, copy), rename(text, copy))
      if (/^pages\/.*\.mdx$/.test(path)) grown.set(path.replace(/([^/.]+)((?:\.[a-z]{2})?\.mdx)$/, `$1-${copy}$2`), rename(text, copy))
    }
  }
  for (const [path, parts] of rows) grown.set(path, parts.join(''))
  return grown
}

const withoutHeading = (text: string) => text.slice(text.indexOf('\n') + 1).replace(/\n*$/, '\n')

/** Puts the number of the copy into every name that must be another in each copy. */
function renamer(files: Files): (text: string, copy: number) => string {
  const pages = [...files.keys()].flatMap((path) => /^pages\/(?!lessons)(\w+\/[^/.]+)\.mdx$/.exec(path)?.[1] ?? [])
  const column = (path: string, at: number, separator: string) =>
    withoutHeading(textOf(files, path))
      .split('\n')
      .flatMap((line) => line.split(separator)[at] || [])
  const names = new Set([
    ...column('data/devices.csv', 0, ','),
    ...column('data/bom.csv', 0, ','),
    ...column('data/drawings.csv', 0, ','),
    ...column('data/alarms.csv', 0, ';'),
    ...column('data/cards.csv', 0, ','),
  ])
  const inWords = /(?<![\p{L}\p{N}-])(?:[A-Z]+\d+|\d{4}-\d{4}|[A-Z]-\d{3})(?![\p{L}\p{N}])/gu
  const alphabetical = new Set(pages)
  return (text, copy) =>
    text
      .replace(inWords, (name) => (names.has(name) ? name.replace(/\d/, (digit) => `${copy}${digit}`) : name))
      .replace(/(?<=[\s"/])(%[A-Z]+)(\d+)/g, (_, kind: string, number: string) => `${kind}${copy * 1000 + Number(number)}`)
      .replace(/^(%[A-Z]+)(\d+)/gm, (_, kind: string, number: string) => `${kind}${copy * 1000 + Number(number)}`)
      .replace(/"(\w+\/[a-z0-9-]+)(?=[#"])/g, (whole, id: string) => (alphabetical.has(id) ? `${whole}-${copy}` : whole))
      .replace(/^number: LO-(\d)/gm, `number: LO-${copy}0$1`)
      .replace(/^lockout: \[(.*)\]$/gm, (_, list: string) => `lockout: [${list.replace(/[\w-]+/g, (id) => `${id}-${copy}`)}]`)
}

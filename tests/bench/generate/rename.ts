import { type Files, textOf } from '../example.ts'

/** Gives the text of a file of the example the names that it has in a station. */
export function renamer(files: Files): (path: string, station: number) => (text: string) => string {
  const names = namesOf(files)
  const variables = new Set(column(files, 'data/io-list.csv', 1, ','))
  const pages = new Set([...files.keys()].flatMap((path) => /^pages\/(\w+\/[^/.]+)\.mdx$/.exec(path)?.[1] ?? []))
  const lockouts = pageNames(pages, 'lockout')
  const lessons = pageNames(pages, 'lessons')
  const sources = new Set([...textOf(files, 'data/energy.yaml').matchAll(/^ {2}- id: ([\w-]+)$/gm)].map(([, id = '']) => id))
  const areas = areasOf(files)
  const inCell = new RegExp(`(?<=[,;])(?:${[...areas].join('|')})(?=[,;])`, 'g')
  const idsOf: Readonly<Record<string, ReadonlySet<string>>> = {
    lockout: lockouts,
    lockouts,
    needs: lessons,
    needsSignedOff: lessons,
    energy: sources,
    areas,
  }
  return (path, station) => {
    const slug = (known: ReadonlySet<string>) => (id: string) => (known.has(id) ? `${id}-${station}` : id)
    const each = (known: ReadonlySet<string>, list: string) => list.replace(/[\w-]+/g, slug(known))
    const address = (_: string, kind: string, number: string) => `${kind}${station * 1000 + Number(number)}`
    return (text) => {
      const renamed = text
        .replace(inWords, (name) => (names.has(name) ? name.replace(/\d/, (digit) => `${station}${digit}`) : name))
        .replace(/[A-Z]+_\w+/g, (name) => (variables.has(name) ? `${name}_${station}` : name))
        .replace(/(%[A-Z]+)(\d+)/g, address)
        .replace(/(?<=["\s])(\w+\/[a-z0-9-]+)(?=["#\s]|$)/gm, slug(pages))
        .replace(/\b(\w+): \[([\w, -]*)\]/g, (whole, key: string, list: string) => (idsOf[key] ? `${key}: [${each(idsOf[key], list)}]` : whole))
        .replace(/\bsource="([^"]*)"/g, (_, list: string) => `source="${each(sources, list)}"`)
        .replace(/^number: LO-(\d)/gm, `number: LO-${station}0$1`)
      if (path === 'data/alarms.csv') return alarmTexts(renamed.replace(inCell, slug(areas)), station)
      if (path === 'data/devices.csv') return renamed.replace(inCell, slug(areas))
      if (path === 'data/energy.yaml')
        return renamed.replace(/^( {2}- id: | {4}from: )([\w-]+)$/gm, (_, key: string, id: string) => key + slug(sources)(id))
      if (path === 'data/formats.csv') return renamed.replace(/^([^,]*,[^,]*),/gm, `$1-${station},`)
      return renamed
    }
  }
}

/** The ids of the areas of machine.yaml. */
export function areasOf(files: Files): ReadonlySet<string> {
  const [, list = ''] = /^areas:\n((?: .*\n)+)/m.exec(textOf(files, 'machine.yaml')) ?? []
  return new Set([...list.matchAll(/^ {2}- id: ([\w-]+)$/gm)].map(([, id = '']) => id))
}

/** Tags, parts, drawings, alarms, cards and points of isolation: names that stand out in any text. */
const inWords = /(?<![\p{L}\p{N}-])(?:[A-Z]+\d+|\d{4}-\d{4}|[A-Z]-\d{3})(?![\p{L}\p{N}])/gu

function namesOf(files: Files): ReadonlySet<string> {
  return new Set([
    ...column(files, 'data/devices.csv', 0, ','),
    ...column(files, 'data/bom.csv', 0, ','),
    ...column(files, 'data/drawings.csv', 0, ','),
    ...column(files, 'data/alarms.csv', 0, ';'),
    ...column(files, 'data/cards.csv', 0, ','),
    ...[...textOf(files, 'data/energy.yaml').matchAll(/^ {2}- point: (\w+)$/gm)].map(([, point = '']) => point),
  ])
}

function column(files: Files, path: string, at: number, separator: string): string[] {
  const [, ...rows] = textOf(files, path).split('\n')
  return rows.flatMap((row) => row.split(separator)[at] || [])
}

const pageNames = (pages: ReadonlySet<string>, collection: string) =>
  new Set([...pages].flatMap((id) => (id.startsWith(`${collection}/`) ? id.slice(collection.length + 1) : [])))

/** Two alarms of one machine never have the same text. */
const alarmTexts = (table: string, station: number) => table.replace(/^(\w+;[^;]*);([^;]*);/gm, `$1, station ${station};$2, estación ${station};`)

import { parseCsv } from '../../../src/load/csv.ts'
import { offsetOf, sourceText } from '../../../src/source/source-text.ts'
import { type Files, textOf } from '../example.ts'
import type { Piece } from './mistake.ts'

export interface TableRow {
  /** The line with its line break. */
  line: Piece
  /** Heading in the file -> cell. */
  cells: ReadonlyMap<string, Piece>
}

export interface Table {
  file: string
  separator: string
  header: readonly Piece[]
  rows: readonly TableRow[]
  /** Heading of the column whose values name the rows. */
  key: string
}

/** A name written on a page or in a YAML file, and what it names. */
export interface NamePiece extends Piece {
  names: string
}

/** The example machine, cut into the pieces in which slips happen. */
export interface Example {
  files: Files
  tables: Readonly<Record<TableFile, Table>>
  /** Paths of the pages of the machine and of the shared content. */
  pages: readonly string[]
  /** Names in elements and frontmatter. */
  named: readonly NamePiece[]
  known: Readonly<Record<'tag' | 'part' | 'drawing' | 'alarm' | 'card', ReadonlySet<string>>>
}

const keys = { devices: 'tag', 'io-list': 'Tag', bom: 'Part no.', drawings: 'number', alarms: 'No.', cards: 'card', formats: 'setting' } as const
export type TableFile = keyof typeof keys
export const tableFiles: readonly TableFile[] = ['devices', 'io-list', 'bom', 'drawings', 'alarms', 'cards', 'formats']

export function readExample(files: Files): Example {
  const table = (name: TableFile): Table => readTable(files, `data/${name}.csv`, keys[name])
  const tables: Example['tables'] = {
    devices: table('devices'),
    'io-list': table('io-list'),
    bom: table('bom'),
    drawings: table('drawings'),
    alarms: table('alarms'),
    cards: table('cards'),
    formats: table('formats'),
  }
  const pages = [...files.keys()].filter((path) => path.endsWith('.mdx'))
  const names = ({ rows, key }: Table) => new Set(rows.flatMap(({ cells }) => cells.get(key)?.value ?? []))
  return {
    files,
    tables,
    pages,
    named: pages.flatMap((path) => namesOn(path, textOf(files, path))),
    known: {
      tag: names(tables.devices),
      part: names(tables.bom),
      drawing: names(tables.drawings),
      alarm: names(tables.alarms),
      card: names(tables.cards),
    },
  }
}

function readTable(files: Files, file: string, key: string): Table {
  const source = sourceText(file, textOf(files, file))
  const piece = ({ value, place }: { value: string; place: { line: number; column: number; endLine: number; endColumn: number } }): Piece => ({
    file,
    value,
    start: offsetOf(source, place.line, place.column),
    end: offsetOf(source, place.endLine, place.endColumn),
  })
  const csv = parseCsv(source, () => {})
  const rows = csv.records.map(({ cells, place }): TableRow => {
    const { start, end } = piece({ value: '', place })
    const value = source.text.slice(start, end + 1)
    return {
      line: { file, start, end: end + 1, value },
      cells: new Map(cells.map((cell, index) => [csv.header[index]?.value ?? '', piece(cell)])),
    }
  })
  return { file, separator: csv.separator, header: csv.header.map(piece), rows, key }
}

/** What the attributes of elements and the keys of frontmatter name. */
const attributeNames: Record<string, string> = {
  'Tag.id': 'tag',
  'Fact.tag': 'tag',
  'Drawing.tag': 'tag',
  'Drawing.number': 'drawing',
  'Drawing.sheet': 'sheet',
  'Part.number': 'part',
  'Alarm.number': 'alarm',
  'Page.id': 'page',
  'Include.caution': 'caution',
  'Term.id': 'term',
  'Fitted.option': 'option',
}
const keyNames: Record<string, string> = {
  tags: 'tag',
  lockout: 'lockout',
  needs: 'lesson',
  roles: 'role',
  energy: 'energy source',
  areas: 'area',
  fits: 'option',
  technology: 'technology',
  alarm: 'alarm',
}

function namesOn(file: string, text: string): NamePiece[] {
  const elements = [...text.matchAll(/<([A-Z]\w*)((?:\s+\w+="[^"]*")*)\s*\/?>/g)].flatMap(({ 1: element = '', 2: written = '', index }) =>
    [...written.matchAll(/(\w+)="([^"]*)"/g)].flatMap((match): NamePiece[] => {
      const [, attribute = '', value = ''] = match
      const names = attributeNames[`${element}.${attribute}`]
      const start = index + 1 + element.length + match.index + attribute.length + 2
      return names && value !== '' ? [{ file, start, end: start + value.length, value, names }] : []
    }),
  )
  const frontmatter = text.slice(0, text.indexOf('\n---', 4))
  const keys = [...frontmatter.matchAll(/^(\w+): \[?([^\]\n]*)\]?$/gm)].flatMap(({ 1: key = '', 2: list = '', index, 0: line }) => {
    const names = keyNames[key]
    return names ? [...list.matchAll(/[^\s,]+/g)].map((item) => pieceOf(file, index + line.indexOf(list) + item.index, item[0], names)) : []
  })
  const callouts = [...frontmatter.matchAll(/part: '([^']+)'/g)].map(({ 1: part = '', index }) => pieceOf(file, index + 7, part, 'part'))
  return [...elements, ...keys, ...callouts]
}

const pieceOf = (file: string, start: number, value: string, names: string): NamePiece => ({ file, start, end: start + value.length, value, names })

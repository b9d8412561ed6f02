import { type Column, tables as columns, type TableName } from '../../../src/model/schema/tables.ts'
import { textOf } from '../example.ts'
import { also, type Kind, mentions, type Piece, replaced } from './mistake.ts'
import { type Example, type Table, type TableFile, type TableRow, tableFiles } from './read-example.ts'

const nouns: Record<TableFile, string> = {
  devices: 'device list',
  'io-list': 'I/O list',
  bom: 'bill of materials',
  drawings: 'drawing register',
  alarms: 'alarm list',
  cards: 'list of cards',
  formats: 'list of formats',
}

const modelNames: Record<TableFile, TableName> = {
  devices: 'devices',
  'io-list': 'signals',
  bom: 'parts',
  drawings: 'drawings',
  alarms: 'alarms',
  cards: 'cards',
  formats: 'formats',
}

const keyOf = ({ cells }: TableRow, { key }: Table) => cells.get(key)?.value ?? ''

function rowDropped(name: TableFile): Kind {
  return {
    name: `row of the ${nouns[name]} left out`,
    count: name === 'cards' || name === 'formats' ? 5 : 10,
    *make({ tables, files }, random) {
      const table = tables[name]
      for (const row of random.sample(table.rows, this.count)) {
        const draft = replaced(files, row.line, '', `row of \`${keyOf(row, table)}\` left out`)
        // The owner of a signal is its device, the owner of a device whatever names it.
        yield { ...draft, at: mentions(draft.files, keyOf(row, table)) }
      }
    },
  }
}

function rowTwice(name: TableFile): Kind {
  return {
    name: `row of the ${nouns[name]} twice`,
    count: 5,
    *make({ tables, files }, random) {
      const table = tables[name]
      for (const row of random.sample(table.rows, this.count))
        yield replaced(files, row.line, row.line.value.replace(/\n?$/, '\n').repeat(2), `row of \`${keyOf(row, table)}\` twice`)
    },
  }
}

/** The column taken out of every line. Owners: the heading line, and the line of machine.yaml that names it. */
function withoutColumn({ files, tables }: Example, name: TableFile, heading: Piece) {
  const table = tables[name]
  const pieces = [heading, ...table.rows.flatMap(({ cells }) => cells.get(heading.value) ?? [])].sort((a, b) => b.start - a.start)
  let text = textOf(files, table.file)
  for (const { start, end } of pieces) {
    const quoted = text[start - 1] === '"' && text[end] === '"'
    const [from, to] = quoted ? [start - 1, end + 1] : [start, end]
    text = text[to] === table.separator ? text.slice(0, from) + text.slice(to + 1) : text.slice(0, Math.max(0, from - 1)) + text.slice(to)
  }
  const after = new Map([...files, [table.file, text]])
  const listed = textOf(files, 'machine.yaml').includes(`: ${heading.value}\n`)
  const column: Column | undefined = Object.entries(columns[modelNames[name]]).find(([own]) => own === heading.value)?.[1]
  const optional = !listed && !column?.required
  return {
    what: `${table.file}:1: column \`${heading.value}\` left out`,
    files: after,
    at: [{ file: table.file, line: 1 }, ...mentions(after, heading.value).filter(({ file }) => file === 'machine.yaml')],
    ...(optional ? { beyond: 'nobody has to write it' as const } : {}),
  }
}

const headings = ({ tables }: Example) => tableFiles.flatMap((name) => tables[name].header.map((heading) => ({ name, heading })))

const columnDropped: Kind = {
  name: 'column left out',
  count: 30,
  *make(example, random) {
    for (const { name, heading } of random.sample(headings(example), this.count)) yield withoutColumn(example, name, heading)
  },
}

const headingRenamed: Kind = {
  name: 'heading of a column renamed',
  count: 30,
  *make({ files, ...example }, random) {
    for (const { heading } of random.sample(headings({ files, ...example }), this.count)) {
      const draft = replaced(files, heading, heading.value.replace(/[A-Za-z](?=[^A-Za-z]*$)/, ''))
      yield also(draft, mentions(draft.files, heading.value))
    }
  },
}

export const rowKinds: readonly Kind[] = [...tableFiles.map(rowDropped), ...tableFiles.map(rowTwice), columnDropped, headingRenamed]

import { textOf } from '../example.ts'
import { type Kind, replaced } from './mistake.ts'
import { tableFiles } from './read-example.ts'

const cellEmptied: Kind = {
  name: 'needed cell emptied',
  count: 14,
  *make({ files, tables }, random) {
    const needed = {
      devices: ['tag', 'kind', 'description'],
      'io-list': ['Tag', 'Type', 'Address'],
      bom: ['Part no.', 'Qty'],
      drawings: ['sheets', 'revision'],
    }
    const cells = Object.entries(needed).flatMap(([name, list]) =>
      tables[name as keyof typeof needed].rows.flatMap(({ cells }) => list.flatMap((heading) => cells.get(heading) ?? [])),
    )
    for (const cell of random.sample(cells, this.count)) yield replaced(files, cell, '')
  },
}

const quoteForgotten: Kind = {
  name: 'text with a separator loses its quotes',
  count: 10,
  *make({ files, tables }, random) {
    const quoted = tableFiles.flatMap((name) =>
      tables[name].rows.flatMap(({ cells }) =>
        [...cells.values()].filter(({ value, file, start }) => value.includes(tables[name].separator) && textOf(files, file)[start - 1] === '"'),
      ),
    )
    for (const cell of random.sample(quoted, this.count)) yield replaced(files, { ...cell, start: cell.start - 1, end: cell.end + 1 }, cell.value)
  },
}

const quoteOpen: Kind = {
  name: 'quote never closed',
  count: 6,
  *make({ files, tables }, random) {
    const cells = [...tables.bom.rows, ...tables.devices.rows].flatMap(({ cells }) => cells.get('description') ?? cells.get('Description') ?? [])
    const closed = cells.filter(({ file, end }) => textOf(files, file)[end] === '"')
    for (const cell of random.sample(closed, this.count)) yield replaced(files, { ...cell, end: cell.end + 1 }, cell.value)
  },
}

const decimalComma: Kind = {
  name: 'number with a decimal comma',
  count: 12,
  *make({ files, tables }, random) {
    const cells = [
      ...tables.bom.rows.flatMap(({ cells }) => cells.get('Qty') ?? []),
      ...tables.devices.rows.flatMap(({ cells }) => cells.get('x') ?? []),
      ...tables.formats.rows.flatMap(({ cells }) => cells.get('value') ?? []),
      ...tables['io-list'].rows.flatMap(({ cells }) => cells.get('To') ?? []),
    ].filter(({ value }) => value !== '')
    for (const cell of random.sample(cells, this.count)) yield replaced(files, cell, `"${cell.value.replace(/\..*/, '')},5"`)
  },
}

export const cellKinds: readonly Kind[] = [cellEmptied, quoteForgotten, quoteOpen, decimalComma]

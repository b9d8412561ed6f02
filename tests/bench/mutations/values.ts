import type { Random } from '../random.ts'
import { also, type Kind, type Mistake, mentions, type Piece, replaced } from './mistake.ts'
import { cells } from './names.ts'
import type { Example, TableFile } from './read-example.ts'

type Draft = Omit<Mistake, 'kind'>

/** A cell of a column that gets another value. Undefined: this cell cannot. */
function changed(
  name: string,
  count: number,
  [table, heading]: [TableFile, string],
  other: (cell: Piece, random: Random, example: Example) => string | undefined,
  known?: (value: string, example: Example) => boolean,
): Kind {
  return {
    name,
    count,
    *make(example, random) {
      let made = 0
      for (const cell of random.sample(cells(example, table, heading), Number.MAX_SAFE_INTEGER)) {
        const value = other(cell, random, example)
        if (value === undefined || value === cell.value) continue
        const draft = replaced(example.files, cell, value)
        yield known?.(value, example) ? { ...draft, beyond: 'another real thing' } : draft
        if (++made === count) return
      }
    },
  }
}

/** The values of one column of two rows change places. Found at either row, or where either is named. */
function swapped(name: string, count: number, table: TableFile, heading: string): Kind {
  return {
    name,
    count,
    *make({ files, tables }, random) {
      const { rows, key } = tables[table]
      for (let made = 0; made < count; made++) {
        const [one, two] = random.sample(rows, 2).sort((a, b) => a.line.start - b.line.start)
        const [first, second] = [one?.cells.get(heading), two?.cells.get(heading)]
        if (!first || !second || first.value === second.value || first.value === '' || second.value === '') continue
        const half = replaced(files, second, first.value.replaceAll(',', ''))
        const whole: Draft = replaced(half.files, first, second.value.replaceAll(',', ''))
        const owners = [one, two].flatMap((row) => mentions(whole.files, row?.cells.get(key)?.value ?? ''))
        yield {
          ...also({ ...whole, at: owners }, half.at),
          what: `${first.file}: \`${heading}\` of \`${one?.cells.get(key)?.value}\` and \`${two?.cells.get(key)?.value}\` swapped`,
        }
      }
    },
  }
}

const step = (by: number) => (cell: Piece) => {
  const value = Number(cell.value) + by
  return value < 1 ? undefined : String(value)
}

const another =
  (table: TableFile, heading: string) =>
  ({ value }: Piece, random: Random, example: Example) =>
    random.pick(cells(example, table, heading).filter((cell) => cell.value !== value))?.value

function nextInUse({ value }: Piece, random: Random, example: Example) {
  const kind = /^%\w+?(?=\d)/.exec(value)?.[0]
  return random.pick(cells(example, 'io-list', 'Address').filter((cell) => cell.value !== value && kind !== undefined && cell.value.startsWith(kind)))
    ?.value
}

export const valueKinds: readonly Kind[] = [
  changed('sheet in the device list: one more', 12, ['devices', 'sheet'], step(1)),
  changed('sheet in the device list: one less', 8, ['devices', 'sheet'], step(-1)),
  changed('number of sheets in the register: one more', 8, ['drawings', 'sheets'], step(1)),
  changed('number of sheets in the register: one less', 4, ['drawings', 'sheets'], step(-1)),
  swapped('numbers of sheets of two drawings swapped', 8, 'drawings', 'sheets'),
  swapped('titles of two drawings swapped', 5, 'drawings', 'title'),
  changed('revision in the register', 8, ['drawings', 'revision'], ({ value }) => String.fromCharCode(value.charCodeAt(0) + 1)),
  changed('address that is in use', 10, ['io-list', 'Address'], nextInUse),
  changed('address beyond its card', 10, ['io-list', 'Address'], ({ value }) => value.replace(/\d+$/, (n) => String(Number(n) + 64))),
  changed('address of another form', 6, ['io-list', 'Address'], ({ value }) => value.replace('%', '')),
  changed('channel that is in use', 8, ['io-list', 'Ch.'], another('io-list', 'Ch.')),
  changed('channel beyond its card', 8, ['io-list', 'Ch.'], ({ value }) => String(Number(value) + 32)),
  changed('terminal that is in use', 6, ['io-list', 'Terminal'], another('io-list', 'Terminal')),
  changed('signal of another type', 10, ['io-list', 'Type'], ({ value }) => ({ DI: 'DO', DO: 'DI', AI: 'DI', RTD: 'AI' })[value]),
  changed('NO and NC exchanged', 15, ['io-list', 'Contact'], ({ value }) => (value === 'NO' ? 'NC' : 'NO')),
  changed('unit of a signal misspelt', 5, ['io-list', 'Unit'], ({ value }) => (value.length > 1 ? value.slice(0, -1) : undefined)),
  changed('card with fewer channels', 5, ['cards', 'channels'], ({ value }) => String(Math.ceil(Number(value) / 4))),
  changed('technology of another kind', 8, ['devices', 'technology'], another('devices', 'technology')),
  swapped('descriptions of two devices swapped', 8, 'devices', 'description'),
  swapped('kinds of two devices swapped', 8, 'devices', 'kind'),
  swapped('parts of two devices swapped', 8, 'devices', 'part'),
  changed('area of another device', 6, ['devices', 'area'], another('devices', 'area')),
  changed('quantity in the bill: one more', 10, ['bom', 'Qty'], step(1)),
  {
    name: 'part superseded while in use',
    count: 10,
    *make(example, random) {
      yield* superseded(example, random, this.count, ({ value }) => random.pick([...example.known.part].filter((part) => part !== value)))
    },
  },
  {
    name: 'part replaced by itself',
    count: 4,
    *make(example, random) {
      yield* superseded(example, random, this.count, ({ value }) => value)
    },
  },
  {
    name: 'part replaced by a part that is not there',
    count: 4,
    *make(example, random) {
      yield* superseded(example, random, this.count, ({ value }) => `${value}9`)
    },
  },
  changed('devices of an alarm left out', 6, ['alarms', 'Devices'], () => ''),
  changed('reaction of an alarm misspelt', 4, ['alarms', 'Reaction'], ({ value }) => `${value}s`),
  changed('text of an alarm in the other language left out', 4, ['alarms', 'Texto'], () => ''),
]

/** Slips that the rows beside show. */
export const siblingKinds: readonly Kind[] = [
  {
    name: 'device on the spot of another',
    count: 8,
    *make({ files, tables }, random) {
      for (const row of random.sample(tables.devices.rows, this.count)) {
        const other = random.pick(tables.devices.rows.filter((it) => it !== row))
        const [x, y, theirX, theirY] = [row, other].flatMap((it) => [it?.cells.get('x'), it?.cells.get('y')])
        if (!x || !y || !theirX || !theirY || theirX.value === '' || x.value === '') continue
        yield replaced(
          replaced(files, y, theirY.value).files,
          x,
          theirX.value,
          `\`${row.cells.get('tag')?.value}\` is placed on \`${other?.cells.get('tag')?.value}\``,
        )
      }
    },
  },
  changed('setting: a digit too many', 6, ['formats', 'value'], ({ value }) => `${value.replace('.', '')}0`),
  changed('setting: another unit', 6, ['formats', 'unit'], ({ value }) => ({ mm: 'cm', s: 'ms', 'm/min': 'm/s' })[value]),
  changed('devices of an alarm: one left out', 8, ['alarms', 'Devices'], ({ value }) =>
    value.includes(' ') ? value.split(' ').slice(1).join(' ') : undefined,
  ),
]

function* superseded({ files, tables, known }: Example, random: Random, count: number, by: (part: Piece) => string | undefined): Generator<Draft> {
  const used = new Set(tables.devices.rows.flatMap(({ cells }) => cells.get('part')?.value ?? []))
  const rows = tables.bom.rows.filter(({ cells }) => used.has(cells.get('Part no.')?.value ?? ''))
  for (const { cells } of random.sample(rows, count)) {
    const [part, cell] = [cells.get('Part no.'), cells.get('Replaced by')]
    const value = part && by(part)
    if (!part || !cell || value === undefined) continue
    const draft = replaced(files, cell, value, `\`${part.value}\` is replaced by \`${value}\``)
    // A part that is replaced is reported where it is still named.
    yield also(draft, known.part.has(value) ? mentions(draft.files, part.value) : [])
  }
}

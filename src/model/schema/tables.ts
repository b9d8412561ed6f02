import type { Located, Place } from '../../source/place.ts'
import type { SheetCell } from '../sheet-reference.ts'
import type { Words } from '../words.ts'
import { technologies } from './common.ts'

/** How the text of a cell is read. Identifiers stay the text that was written. */
export type CellType =
  | 'identifier' // text that names a thing; leading zeros kept
  | 'words' // prose; may have further columns `<name>.<language>`
  | 'number' // decimal point, no thousands separators
  | 'integer' // whole number from 1
  | 'sheet' // the same, or a reference with a column and a row of the sheet: /12.4:C
  | 'list' // identifiers separated by spaces or `|`
  | { oneOf: readonly string[] }

export interface Column {
  type: CellType
  /** The file must have the column and each row a value. */
  required?: true
  /** The row may go without a value where these columns are empty or mark a spare channel. */
  emptyIfSpare?: readonly string[]
  description: string
}

export type TableName = 'devices' | 'signals' | 'cards' | 'parts' | 'drawings' | 'alarms' | 'formats' | 'symbols'

const fits = { type: 'list', description: 'Options for which the row is kept; empty: always' } as const satisfies Column

/** Signal types of the I/O list. Source: common practice of I/O lists. */
export const signalTypes = ['DI', 'DO', 'AI', 'AO', 'RTD', 'TC', 'CNT', 'ENC', 'SDI', 'SDO'] as const

/** Ways to turn an adjuster. */
export const turnings = ['clockwise', 'counter-clockwise'] as const
export type Turning = (typeof turnings)[number]

/** The tables of a machine folder: every column, its type and its meaning. */
export const tables = {
  devices: {
    tag: { type: 'identifier', required: true, description: 'Designation on the device label, the plans and the drawings' },
    kind: { type: 'words', required: true, description: 'Trade noun: inductive proximity switch, solenoid valve, isolator' },
    description: { type: 'words', required: true, description: 'What it does on this machine: Lift at bottom position' },
    technology: { type: { oneOf: technologies }, description: 'Principle; decides which lessons fit' },
    area: { type: 'identifier', description: 'An area of machine.yaml' },
    x: { type: 'number', description: 'Position on the plan, in its units, from the left' },
    y: { type: 'number', description: 'Position on the plan, in its units, from the top' },
    place: { type: 'words', description: 'Where to look, in words: under the lift frame, drive side' },
    part: { type: 'identifier', description: 'Part number in the bill of materials' },
    drawing: { type: 'identifier', description: 'Drawing that shows its wiring or piping' },
    sheet: { type: 'sheet', description: 'Sheet of that drawing: 12, or /12.4:C with the column and the row of its field' },
    fits,
  },
  signals: {
    tag: {
      type: 'identifier',
      required: true,
      emptyIfSpare: ['signal', 'symbol', 'meaning', 'pin'],
      description: 'Device that gives or takes the signal; empty or `Spare` for a channel that is kept free',
    },
    signal: { type: 'identifier', description: 'Which signal of the device, where it has several: open, closed' },
    type: {
      type: { oneOf: signalTypes },
      required: true,
      description: 'DI, DO, AI, AO, RTD, TC, CNT pulse counter, ENC encoder, SDI and SDO safety',
    },
    address: { type: 'identifier', required: true, description: 'Controller address, IEC 61131-3 or the form of the controller' },
    symbol: { type: 'identifier', description: 'Variable name in the controller' },
    card: { type: 'identifier', description: 'I/O card, from the list of cards' },
    channel: { type: 'identifier', description: 'Channel on the card' },
    terminal: { type: 'identifier', description: 'Terminal in the cabinet: X2:14' },
    wire: { type: 'identifier', description: 'Wire number' },
    pin: { type: 'identifier', description: 'Pin of the connector at the device' },
    meaning: { type: 'words', description: 'When the signal is on: on when the lift is down' },
    contact: { type: { oneOf: ['NO', 'NC'] }, description: 'Normally open or normally closed' },
    low: { type: 'number', description: 'Lower end of the range of an analogue signal' },
    high: { type: 'number', description: 'Upper end of the range' },
    unit: { type: 'identifier', description: 'Unit of the range' },
    drawing: { type: 'identifier', description: 'Drawing of this signal, where it differs from that of the device' },
    sheet: { type: 'sheet', description: 'Sheet of that drawing: 12, or /12.4:C with the column and the row of its field' },
    fits,
  },
  cards: {
    card: { type: 'identifier', required: true, description: 'Designation of the I/O card' },
    description: { type: 'words', required: true, description: 'What it is: 16 digital inputs 24 V d.c., Type 3' },
    type: { type: { oneOf: signalTypes }, required: true, description: 'Signals it takes' },
    channels: { type: 'integer', required: true, description: 'Number of channels' },
    slot: { type: 'identifier', description: 'Slot in the rack' },
    part: { type: 'identifier', description: 'Part number' },
    drawing: { type: 'identifier', description: 'Drawing of the card' },
    sheet: { type: 'sheet', description: 'Sheet of that drawing: 12, or /12.4:C with the column and the row of its field' },
    fits,
  },
  parts: {
    number: { type: 'identifier', required: true, description: 'Part number' },
    description: { type: 'words', required: true, description: 'What to order' },
    quantity: { type: 'number', required: true, description: 'How many are fitted' },
    unit: { type: 'identifier', description: 'pcs, m, set, l' },
    maker: { type: 'words', description: 'Manufacturer' },
    makerNumber: { type: 'identifier', description: "Manufacturer's own number" },
    spare: { type: { oneOf: ['wear', 'spare', 'consumable', 'none'] }, description: 'Spare class: wear part, spare to keep, consumable, none' },
    stock: { type: 'number', description: 'How many to keep in stock' },
    supersededBy: { type: 'identifier', description: 'Part number to order instead' },
    alternatives: { type: 'list', description: 'Part numbers that may be used in its place' },
    fits,
  },
  drawings: {
    number: { type: 'identifier', required: true, description: 'Drawing number' },
    title: { type: 'words', required: true, description: 'Title of the drawing' },
    kind: { type: { oneOf: ['schematic', 'layout', 'pneumatic', 'piping', 'assembly'] }, required: true, description: 'What kind of drawing' },
    sheets: { type: 'integer', required: true, description: 'Number of sheets' },
    revision: { type: 'identifier', required: true, description: 'Revision' },
    file: {
      type: 'identifier',
      description:
        'Path from the machine folder, to an SVG or to a PDF with a page for each sheet; without it drawings/<number>.svg, drawings/<number>.<sheet>.svg where there are several sheets, or drawings/<number>.pdf',
    },
    supersededBy: { type: 'identifier', description: 'Drawing that replaces it' },
    fits,
  },
  alarms: {
    number: { type: 'identifier', required: true, description: 'Alarm number as on the screen' },
    text: { type: 'words', required: true, description: 'Alarm text as on the screen' },
    reaction: {
      type: { oneOf: ['stop', 'hold', 'message'] },
      required: true,
      description: 'What the machine does: stops, holds the cycle, or only tells',
    },
    area: { type: 'identifier', description: 'An area of machine.yaml' },
    tags: { type: 'list', description: 'Devices that can raise it' },
    trigger: { type: 'words', description: 'The condition that raises it' },
    fits,
  },
  formats: {
    format: { type: 'identifier', required: true, description: 'Product the machine can be set up for' },
    setting: { type: 'identifier', required: true, description: 'Adjuster or parameter' },
    description: { type: 'words', required: true, description: 'What is set' },
    value: { type: 'number', required: true, description: 'Value for this format' },
    unit: { type: 'identifier', required: true, description: 'Unit of the value' },
    tag: { type: 'identifier', description: 'Device or scale on which it is set' },
    low: { type: 'number', description: 'Lowest value that the adjuster takes, in the unit of the value' },
    high: { type: 'number', description: 'Highest value that the adjuster takes' },
    perTurn: { type: 'number', description: 'Change of the value in one turn of the adjuster: the pitch of its spindle' },
    raises: { type: { oneOf: turnings }, description: 'Which way the adjuster is turned to raise the value, seen from the handwheel' },
    fits,
  },
  symbols: {
    name: { type: 'identifier', required: true, description: 'Variable name in the controller' },
    address: { type: 'identifier', description: 'Where it lies: %IX0.0. Empty: no input or output' },
    type: { type: 'identifier', description: 'Data type of IEC 61131-3: BOOL, INT' },
    comment: { type: 'identifier', description: 'Its comment; may name the device' },
  },
} as const satisfies Record<TableName, Record<string, Column>>

/** The columns that name a row of a table. */
export function nameColumns(table: TableName): readonly string[] {
  return table === 'formats' ? ['format', 'setting'] : Object.keys(tables[table]).slice(0, 1)
}

type ValueOf<T> = T extends 'identifier'
  ? Located<string>
  : T extends 'words'
    ? Words
    : T extends 'number' | 'integer'
      ? Located<number>
      : T extends 'sheet'
        ? SheetCell
        : T extends { oneOf: readonly (infer O)[] }
          ? Located<O>
          : never

type Columns<T extends TableName> = (typeof tables)[T]

type CellOf<C> = C extends { type: 'list' }
  ? readonly Located<string>[]
  : C extends { type: infer T; required: true }
    ? ValueOf<T>
    : C extends { type: infer T }
      ? ValueOf<T> | undefined
      : never

/** A row of a table as it is read: one property a column, each with the place of its cell. */
export type Row<T extends TableName> = { readonly [C in keyof Columns<T>]: CellOf<Columns<T>[C]> } & {
  /** The whole row in its file. */
  readonly place: Place
}

import { stringify } from 'yaml'
import type { Designation } from '../model/designation.ts'
import type { TableName } from '../model/schema/tables.ts'
import type { ColumnGuesses } from './guess-columns.ts'
import type { ValueGuesses } from './guess-values.ts'

export interface StartedTable {
  table: TableName
  /** Path from the machine folder. */
  file: string
  guessed: ColumnGuesses
  read: ValueGuesses
}

export interface StartedMachine {
  /** Kebab case. */
  id: string
  language: string
  /** `2026-09-14` */
  date: string
  designation: Designation
  tables: readonly StartedTable[]
}

/** The text of `machine.yaml` for a machine that is begun from its exports. A table that lacks a needed column is left out, and a comment says so. */
export function machineText({ id, language, date, designation, tables }: StartedMachine): string {
  const head = { id, model: id.toUpperCase(), name: 'to be named', builder: 'to be named', document: `${id.toUpperCase()}-MAN`, revision: 'A', date }
  const complete = tables.filter(({ guessed }) => guessed.missing.length === 0)
  const data = Object.fromEntries(
    complete.map(({ table, file, guessed, read: { decimal, values } }) => [
      table,
      { file, ...(decimal ? { decimal } : {}), ...columnsOf(guessed), ...(values ? { values } : {}) },
    ]),
  )
  const left = tables
    .filter(({ guessed }) => guessed.missing.length > 0)
    .map(
      ({ table, file, guessed }) =>
        `  # ${table}: ${file} has no column for ${guessed.missing.join(', ')}: add it to the export, then name the file here.\n`,
    )
  return [
    '# Begun from exports: what stands here as "to be named" is yours to write.\n',
    stringify({ ...head, designation }),
    '\n',
    stringify({ languages: { source: language }, units: [{ serial: '0001', fitted: [] }] }),
    '\n',
    Object.keys(data).length > 0 ? stringify({ data }) : 'data: {}\n',
    ...left,
  ].join('')
}

function columnsOf({ guesses }: ColumnGuesses): { columns?: Record<string, string> } {
  const renamed = guesses.filter(({ column, heading }) => column !== heading)
  return renamed.length === 0 ? {} : { columns: Object.fromEntries(renamed.map(({ column, heading }) => [column, heading])) }
}

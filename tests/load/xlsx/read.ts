import { readFileSync } from 'node:fs'
import { type CellObject, utils, type WorkSheet, write } from '@e965/xlsx'
import { collect } from '../../../src/load/load-rules.ts'
import type { Cell } from '../../../src/load/rows.ts'
import { loadWorksheet } from '../../../src/load/xlsx/load-worksheet.ts'
import type { Finding } from '../../../src/source/finding.ts'
import { startOfFile } from '../../../src/source/place.ts'

export const libreoffice = (name: string) => readFileSync(`tests/fixtures/load/libreoffice/${name}`)

export interface Choice {
  sheet?: string
  headerRow?: number
}

/** A worksheet as our reader sees it; a finding about machine.yaml stands on the line of its key. */
export function read(bytes: Uint8Array, { sheet, headerRow }: Choice = {}) {
  const findings: Finding[] = []
  const placeOf = (key: string) => startOfFile(`machine.yaml ${key}`)
  const loaded = loadWorksheet(bytes, 'data/list.xlsx', { sheet, headerRow, placeOf }, collect(findings))
  const rows: (readonly Cell[])[] = loaded ? [loaded.rows.header, ...loaded.rows.records.map(({ cells }) => cells)] : []
  return { findings, loaded, rows, values: rows.map((cells) => cells.map(({ value }) => value)) }
}

/** A workbook written by the library that is our oracle. Undefined leaves a cell out. */
export function workbook(rows: readonly (readonly (CellObject | undefined)[])[], properties: WorkSheet = {}, is1904 = false): Uint8Array {
  const sheet: WorkSheet = { ...properties }
  rows.forEach((cells, r) => {
    cells.forEach((cell, c) => {
      if (cell) sheet[utils.encode_cell({ r, c })] = cell
    })
  })
  sheet['!ref'] = utils.encode_range({
    s: { r: 0, c: 0 },
    e: { r: Math.max(0, rows.length - 1), c: Math.max(0, ...rows.map((row) => row.length - 1)) },
  })
  const book = utils.book_new()
  utils.book_append_sheet(book, sheet, 'Parts')
  book.Workbook = { ...book.Workbook, WBProps: { date1904: is1904 } }
  return new Uint8Array(write(book, { type: 'array', bookType: 'xlsx', bookSST: true, compression: true }))
}

export const text = (v: string): CellObject => ({ t: 's', v })
export const number = (v: number, z?: string): CellObject => ({ t: 'n', v, ...(z === undefined ? {} : { z }) })

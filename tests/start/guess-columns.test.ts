import { expect, test } from 'vitest'
import type { TableName } from '../../src/model/schema/tables.ts'
import { guessColumns } from '../../src/start/guess-columns.ts'

function check(table: TableName, header: readonly string[], rows: readonly (readonly string[])[], expected: Readonly<Record<string, string>>): void {
  const { guesses } = guessColumns(table, header, rows, ['cards', 'drawings', 'parts', table])
  expect(Object.fromEntries(guesses.map(({ column, heading }) => [column, heading]))).toEqual(expected)
}

test('by headings in three languages', () => {
  check('signals', ['Tag', 'I/O', 'PLC Address', 'Description'], [], { tag: 'Tag', type: 'I/O', address: 'PLC Address', meaning: 'Description' })
  check('parts', ['Artikel-Nr.', 'Benennung', 'Menge', 'ME'], [], { number: 'Artikel-Nr.', description: 'Benennung', quantity: 'Menge', unit: 'ME' })
  check('parts', ['CÓDIGO', 'Descripción', 'Cant.'], [], { number: 'CÓDIGO', description: 'Descripción', quantity: 'Cant.' })
})

test('by values, where the headings say nothing', () => {
  const rows = [
    ['1', 'LS1', '%IX0.0', 'DI', 'Gate shut'],
    ['2', 'MTR2', '%QX0.1', 'DO', 'Belt runs'],
  ]
  check('signals', ['A', 'B', 'C', 'D', 'E'], rows, { tag: 'B', address: 'C', type: 'D' })
})

test('a heading is used once, and the surer of two wins', () => {
  check('signals', ['Symbol address', 'Address', 'Name'], [], { address: 'Address', symbol: 'Name' })
})

test('what is needed and not there, what is not read, and what names things of no list', () => {
  const { guesses, missing, unread } = guessColumns('signals', ['BMK', 'Karte', 'Bemerkung'], [], ['signals'])
  expect(guesses).toEqual([{ column: 'tag', heading: 'BMK', how: 'its heading' }])
  expect(missing).toEqual(['type', 'address'])
  expect(unread).toEqual(['Karte', 'Bemerkung'])
})

test('a heading that is known for another column is not taken by its values', () => {
  const rows = [
    ['10B01', 'A1', 'E0.0', 'DI'],
    ['10B02', 'A2', 'E0.1', 'DI'],
  ]
  const { missing, unread } = guessColumns('signals', ['Sensor', 'Tarjeta', 'Dirección', 'Tipo'], rows, ['signals'])
  expect(missing).toEqual(['tag'])
  expect(unread).toEqual(['Sensor', 'Tarjeta'])
})

test('the number sign of an alarm list', () =>
  check('alarms', ['N.º', 'Texto', 'Reacción'], [], { number: 'N.º', text: 'Texto', reaction: 'Reacción' }))

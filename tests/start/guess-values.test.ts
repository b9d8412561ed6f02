import { expect, test } from 'vitest'
import type { TableName } from '../../src/model/schema/tables.ts'
import { guessColumns } from '../../src/start/guess-columns.ts'
import { guessValues, type ValueGuesses } from '../../src/start/guess-values.ts'

function check(table: TableName, header: readonly string[], rows: readonly (readonly string[])[], expected: ValueGuesses): void {
  expect(guessValues(table, guessColumns(table, header, rows, [table]), header, rows)).toEqual(expected)
}

const parts = ['Código', 'Descripción', 'Cantidad']

test.each<[string, string[], ValueGuesses]>([
  ['decimal commas', ['2,4', '1', '12'], { decimal: 'comma' }],
  ['decimal points', ['2.4', '1'], {}],
  ['whole numbers', ['2', '1'], {}],
  ['commas that may part thousands', ['2,4', '1,200'], {}],
  ['both signs', ['2,4', '1.5'], {}],
])('the sign of %s', (_, cells, expected) =>
  check(
    'parts',
    parts,
    cells.map((cell) => ['100', 'Hose, 2,5 m', cell]),
    expected,
  ),
)

test('words of the export that are ours in another language', () => {
  const header = ['Etiqueta', 'Dirección', 'Tipo', 'Contacto']
  const rows = [
    ['B1', 'E0.0', 'ED', 'NA'],
    ['B2', 'E0.1', 'ED', 'NC'],
    ['B3', 'E0.2', 'DI', 'doble'],
  ]
  check('signals', header, rows, { values: { type: { ED: 'DI' }, contact: { NA: 'NO' } } })
})

test('words that are ours already', () => check('alarms', ['number', 'text', 'reaction'], [['1', 'Stop', 'stop']], {}))

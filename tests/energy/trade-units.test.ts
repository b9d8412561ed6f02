import { expect, test } from 'vitest'
import { inputTexts, inTradeUnits } from '../../src/energy/trade-units.ts'

test.each([
  [4.7e-4, 'F', '470 µF'],
  [1e-7, 'F', '100 nF'],
  [220e3, 'Ω', '220 kΩ'],
  [50, 'Ω', '50 Ω'],
  [2.2e6, 'Ω', '2.2 MΩ'],
  [6e5, 'Pa', '6 bar'],
  [1.5e9, 'Pa', '1.5 GPa'],
  [0.05, 'm³', '50 l'],
  [20, 'm³', '20 m³'],
  [0.15, 'm', '150 mm'],
  [56.25, 'J', '56.25 J'],
  [22_207, 'J', '22.21 kJ'],
  [96.82e6, 'J', '96.82 MJ'],
  [108.54, 's', '108.5 s'],
  [4705.8, 's', '78.43 min'],
  [36_000, 's', '10 h'],
  [50 * Math.PI, 'rad/s', '1500 1/min'],
  [333.15, 'K', '60 °C'],
  [1.4, '1', '1.4 '],
  [3, 'Nm', '3 Nm'],
  [0, 'J', '0 J'],
])('%d %s is %s', (value, unit, expected) => {
  const said = inTradeUnits({ value, unit })
  expect(`${said.value} ${said.unit}`).toBe(expected)
})

test('inputs in the letters of the formula', () => {
  expect(
    inputTexts({
      inputs: [
        { name: 'capacitanceF', letter: 'C', value: 4.7e-4, unit: 'F' },
        { name: 'adiabaticExponent', letter: 'k', value: 1.4, unit: '1' },
      ],
    }),
  ).toEqual(['C = 470\u202fµF', 'k = 1.4'])
})

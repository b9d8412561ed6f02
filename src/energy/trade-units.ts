import type { Computed } from './law.ts'

interface Quantity {
  value: number
  unit: string
}

type Step = readonly [unit: string, siPerUnit: number, below: number]

/** For an SI unit the units that the trade reads, each for values below a bound in SI. Common practice. */
const steps: Readonly<Record<string, readonly Step[]>> = {
  F: [
    ['nF', 1e-9, 1e-6],
    ['µF', 1e-6, 1],
  ],
  Ω: [
    ['Ω', 1, 1e3],
    ['kΩ', 1e3, 1e6],
    ['MΩ', 1e6, Number.POSITIVE_INFINITY],
  ],
  Pa: [
    ['mbar', 100, 1e4],
    ['bar', 1e5, 1e9],
    ['GPa', 1e9, Number.POSITIVE_INFINITY],
  ],
  'm³': [['l', 1e-3, 1]],
  'm²': [['mm²', 1e-6, 1]],
  'm³/(s·Pa)': [['dm³/(s·bar)', 1e-8, Number.POSITIVE_INFINITY]],
  m: [['mm', 1e-3, 1]],
  J: [
    ['J', 1, 1e3],
    ['kJ', 1e3, 1e6],
    ['MJ', 1e6, Number.POSITIVE_INFINITY],
  ],
  'J/kg': [['kJ/kg', 1e3, Number.POSITIVE_INFINITY]],
  s: [
    ['s', 1, 600],
    ['min', 60, 36_000],
    ['h', 3600, Number.POSITIVE_INFINITY],
  ],
  'rad/s': [['1/min', Math.PI / 30, Number.POSITIVE_INFINITY]],
  'N/m': [
    ['N/m', 1, 1e3],
    ['N/mm', 1e3, Number.POSITIVE_INFINITY],
  ],
}

/** A value in SI units as the trade reads it, with four figures: 4.7e-4 F is 470 µF, 333.15 K is 60 °C. */
export function inTradeUnits({ value, unit }: Quantity): Quantity {
  if (unit === 'K') return { value: fourFigures(value - 273.15), unit: '°C' }
  if (unit === '1') return { value: fourFigures(value), unit: '' }
  const step = steps[unit]?.find(([, , below]) => Math.abs(value) < below)
  return step ? { value: fourFigures(value / step[1]), unit: step[0] } : { value: fourFigures(value), unit }
}

const fourFigures = (value: number) => Number(value.toPrecision(4))

/** `C = 470 µF`, `R = 220 kΩ`: what a value was computed from. */
export function inputTexts({ inputs }: Pick<Computed, 'inputs'>): string[] {
  return inputs.map((input) => {
    const { value, unit } = inTradeUnits(input)
    return `${input.letter} = ${value}${unit === '' ? '' : `\u202f${unit}`}`
  })
}

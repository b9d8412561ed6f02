export type Dimension =
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'pressure'
  | 'temperature'
  | 'length'
  | 'area'
  | 'time'
  | 'frequency'
  | 'rotational speed'
  | 'speed'
  | 'flow'
  | 'volume'
  | 'mass'
  | 'force'
  | 'torque'
  | 'power'
  | 'capacitance'
  | 'angle'
  | 'share'
  | 'count'

/** A value in the unit is `value * factor + offset` in the first unit of its dimension. */
interface Scale {
  factor: number
  offset: number
}
export interface Unit extends Scale {
  symbol: string
  dimension: Dimension
}

const inchM = 0.0254
const poundKg = 0.45359237
const poundForceN = poundKg * 9.80665
const gallonL = 3.785411784

/** Symbol, factor, and the prefixes that the trade writes before it. */
type Entry = readonly [symbol: string, factor: number, prefixes?: string]

/** Sources: SI brochure, 9th edition; NIST SP 811 for inch, pound, gallon, psi and inch of mercury. */
const entries: Readonly<Record<Exclude<Dimension, 'temperature'>, readonly Entry[]>> = {
  voltage: [['V', 1, 'kmµ']],
  current: [['A', 1, 'kmµ']],
  resistance: [['Ω', 1, 'kMGm']],
  pressure: [
    ['Pa', 1, 'hkM'],
    ['bar', 1e5, 'm'],
    ['psi', poundForceN / inchM ** 2],
    ['inHg', 3386.389],
  ],
  length: [
    ['m', 1, 'kcmµ'],
    ['in', inchM],
    ['ft', 12 * inchM],
  ],
  area: [
    ['mm²', 1],
    ['cm²', 100],
  ],
  time: [
    ['s', 1, 'mµ'],
    ['min', 60],
    ['h', 3600],
  ],
  frequency: [['Hz', 1, 'kM']],
  'rotational speed': [
    ['min⁻¹', 1],
    ['rad/s', 30 / Math.PI],
  ],
  speed: [
    ['m/s', 1],
    ['m/min', 1 / 60],
    ['mm/s', 1e-3],
    ['ft/min', (12 * inchM) / 60],
  ],
  flow: [
    ['l/min', 1],
    ['l/s', 60],
    ['l/h', 1 / 60],
    ['m³/h', 1e3 / 60],
    ['gal/min', gallonL],
  ],
  volume: [
    ['l', 1, 'm'],
    ['m³', 1e3],
    ['gal', gallonL],
  ],
  mass: [
    ['g', 1e-3, 'km'],
    ['t', 1e3],
    ['lb', poundKg],
  ],
  force: [
    ['N', 1, 'k'],
    ['lbf', poundForceN],
  ],
  torque: [
    ['Nm', 1, 'k'],
    ['ft·lbf', 12 * inchM * poundForceN],
  ],
  power: [['W', 1, 'kMm']],
  capacitance: [['F', 1, 'mµnp']],
  angle: [
    ['rad', 1, 'm'],
    ['°', Math.PI / 180],
  ],
  share: [['%', 1]],
  count: [['inc', 1]],
}
const temperatures: readonly Unit[] = [
  { symbol: '°C', dimension: 'temperature', factor: 1, offset: 0 },
  { symbol: '°F', dimension: 'temperature', factor: 5 / 9, offset: (-32 * 5) / 9 },
  { symbol: 'K', dimension: 'temperature', factor: 1, offset: -273.15 },
]
const prefixes: Readonly<Record<string, number>> = { G: 1e9, M: 1e6, k: 1e3, h: 100, c: 0.01, m: 1e-3, µ: 1e-6, n: 1e-9, p: 1e-12 }

export const units: readonly Unit[] = [
  ...temperatures,
  ...(Object.entries(entries) as [Dimension, readonly Entry[]][]).flatMap(([dimension, list]) =>
    list.flatMap(([symbol, factor, allowed = '']) =>
      ['', ...allowed].map((prefix) => ({ symbol: prefix + symbol, dimension, factor: factor * (prefixes[prefix] ?? 1), offset: 0 })),
    ),
  ),
]
const bySymbol: ReadonlyMap<string, Unit> = new Map(units.map((unit) => [unit.symbol, unit]))

/** Other ways to write a unit. Common practice. */
const spellings: readonly (readonly [RegExp, string])[] = [
  [/^([kMGm]?)(?:[\u2126Ω]|ohms?|Ohms?)$/u, '$1Ω'],
  [/^[μu](?=[A-Za-zΩ])/u, 'µ'],
  [/^(?:º|° |º |deg ?)([CF])$/u, '°$1'],
  [/^(?:rpm|r\/min|1\/min|min-1|min\^-1|U\/min)$/u, 'min⁻¹'],
  [/^([kM]?)N[·*. ]m$/u, '$1Nm'],
  [/^(?:ft[·*. -]?lbf?|lbf?[·*. -]ft)$/u, 'ft·lbf'],
  [/^gpm$/u, 'gal/min'],
  [/^sec$/u, 's'],
  [/^deg$/u, '°'],
  [/^(?:increments?|counts?|cuentas?)$/u, 'inc'],
]

/** What a voltage, a current or a pressure is measured as: `V DC`, `Vac`, `bar (g)`. */
const qualifier = /(?<=[VA])\s*\(?(?:d\.?c\.?|a\.?c\.?|rms)\)?$|(?<=bar|psi|Pa)\s*\(?g\)?$/i

/** A unit as it is written; undefined for what is none, or differs in case: `ma`. */
export function unitOf(written: string): Unit | undefined {
  const plain = written
    .trim()
    .replace(qualifier, '')
    .replace(/L/g, 'l')
    .replace(/(?<=m)\^?([23])/, (_, power: string) => (power === '2' ? '²' : '³'))
  const spelt = spellings.reduce((text, [pattern, symbol]) => text.replace(pattern, symbol), plain)
  return bySymbol.get(spelt)
}

/** A value in another unit; undefined where the units do not measure the same. */
export function converted(value: number, from: Unit, to: Unit): number | undefined {
  if (from.dimension !== to.dimension) return undefined
  return from.symbol === to.symbol ? value : (value * from.factor + from.offset - to.offset) / to.factor
}

/** What a unit measures, and how a value in it becomes one in the first unit of its quantity: `value * factor + offset`. */
export interface UnitScale {
  quantity: string
  factor: number
  offset: number
}

/** Source: SI brochure, 9th edition; NIST SP 811 for inch, psi and °F. */
const scales: Readonly<Record<string, Readonly<Record<string, number | readonly [factor: number, offset: number]>>>> = {
  pressure: { Pa: 1, hPa: 100, kPa: 1e3, MPa: 1e6, GPa: 1e9, mbar: 100, bar: 1e5, barg: 1e5, psi: 6894.757, psig: 6894.757 },
  length: { m: 1, km: 1e3, dm: 0.1, cm: 0.01, mm: 1e-3, µm: 1e-6, μm: 1e-6, in: 0.0254, ft: 0.3048 },
  temperature: { K: 1, '°C': [1, 273.15], '°F': [5 / 9, 459.67 * (5 / 9)] },
  voltage: { V: 1, kV: 1e3, mV: 1e-3, µV: 1e-6, μV: 1e-6 },
  current: { A: 1, kA: 1e3, mA: 1e-3, µA: 1e-6, μA: 1e-6 },
  capacitance: { F: 1, mF: 1e-3, µF: 1e-6, μF: 1e-6, nF: 1e-9, pF: 1e-12 },
  resistance: { Ω: 1, kΩ: 1e3, MΩ: 1e6, mΩ: 1e-3, ohm: 1, kohm: 1e3, Mohm: 1e6 },
  mass: { kg: 1, g: 1e-3, t: 1e3, mg: 1e-6 },
  force: { N: 1, kN: 1e3, MN: 1e6 },
  torque: { Nm: 1, kNm: 1e3, mNm: 1e-3 },
  power: { W: 1, kW: 1e3, MW: 1e6, mW: 1e-3 },
  volume: { l: 1, L: 1, ml: 1e-3, mL: 1e-3, dl: 0.1, cl: 0.01, hl: 100, 'm³': 1e3, m3: 1e3 },
  'specific enthalpy': { 'J/kg': 1, 'kJ/kg': 1e3 },
  area: { 'm²': 1, m2: 1, 'cm²': 1e-4, cm2: 1e-4, 'mm²': 1e-6, mm2: 1e-6 },
  density: { 'kg/m³': 1, 'kg/m3': 1, 'kg/l': 1e3, 'g/cm³': 1e3 },
  'sonic conductance': { 'm³/(s·Pa)': 1, 'dm³/(s·bar)': 1e-8, 'l/(s·bar)': 1e-8 },
  time: { s: 1, ms: 1e-3, µs: 1e-6, min: 60, h: 3600 },
  'volume flow': { 'l/min': 1, 'l/h': 1 / 60, 'l/s': 60, 'm³/h': 1e3 / 60, 'm3/h': 1e3 / 60, 'm³/min': 1e3, 'm3/min': 1e3 },
  speed: { 'm/s': 1, 'm/min': 1 / 60, 'mm/s': 1e-3, 'mm/min': 1e-3 / 60 },
  frequency: { Hz: 1, kHz: 1e3, MHz: 1e6 },
  'rotational speed': { '1/min': 1, rpm: 1, 'r/min': 1, 'rad/s': 30 / Math.PI },
  'moment of inertia': { 'kg·m²': 1, kg·m2: 1, kgm2: 1, 'kgm²': 1, 'kg m²': 1, 'kg·cm²': 1e-4, 'g·m²': 1e-3 },
  'viscous drag': { 'Nm·s/rad': 1, 'Nms/rad': 1 },
  angle: { rad: 1, mrad: 1e-3, '°': Math.PI / 180 },
  'spring rate': { 'N/m': 1, 'N/mm': 1e3, 'N/cm': 100, 'kN/m': 1e3 },
  'torsion rate': { 'Nm/rad': 1, 'Nm/°': 180 / Math.PI },
  conductivity: { 'S/m': 1, 'mS/cm': 0.1, 'µS/cm': 1e-4, 'μS/cm': 1e-4 },
}

const byUnit: ReadonlyMap<string, UnitScale> = new Map(
  Object.entries(scales).flatMap(([quantity, units]) =>
    Object.entries(units).map(([unit, scale]): [string, UnitScale] => {
      const [factor, offset] = typeof scale === 'number' ? [scale, 0] : scale
      return [unit, { quantity, factor, offset }]
    }),
  ),
)

/** `V d.c.`, `A AC` and `bar (g)` have the scale of the unit before the space. */
const qualifier = /\s+\(?(?:a\.?c\.?|d\.?c\.?|c\.?[ac]\.?|rms|g)\)?$/i

/** The scale of a unit; undefined for one that we do not compare with others: `%`, `pH`, `pcs`. */
export function scaleOf(unit: string): UnitScale | undefined {
  return byUnit.get(unit.replace(qualifier, ''))
}

/** Every unit of the quantity that a unit measures. */
export function unitsOf(unit: string): string[] {
  const quantity = scaleOf(unit)?.quantity
  return [...byUnit].flatMap(([other, scale]) => (scale.quantity === quantity ? [other] : []))
}

/** A value in another unit of the same quantity. Undefined where the two cannot be compared. */
export function converted(value: number, from: string, to: string): number | undefined {
  if (from === to) return value
  const [own, other] = [scaleOf(from), scaleOf(to)]
  if (!own || other?.quantity !== own.quantity) return undefined
  return (value * own.factor + own.offset - other.offset) / other.factor
}

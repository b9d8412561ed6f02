import type { Result, Stated } from '../law/law.ts'
import { converted } from '../model/unit-scale.ts'
import { leadError, platinumResistance } from '../signals/platinum.ts'
import { classRangesC, platinumLimits, platinumTolerance } from '../signals/platinum-class.ts'
import { isRefused, type Refused } from '../signals/refusals.ts'
import { thermistorResistance } from '../signals/thermistor.ts'
import { thermocouples } from '../signals/thermocouple.ts'
import { thermocoupleTolerance } from '../signals/thermocouple-class.ts'
import { pointsOfRange, withTolerance } from './analogue.ts'
import { between, type Expectation, expected, isValue, limitsRestOn, restsOn, stated, together } from './expectation.ts'
import { type Wired, wireOhm } from './wiring.ts'

const noRange = (measured: Expectation['measured'], unit: string, missing: readonly string[]): Expectation => ({
  ...stated({ measured, point: 'device', state: 'range-low', unit }),
  notComputed: missing,
})

/** In °C; undefined for what is no unit of temperature. */
export const temperatureC = (value: number, unit: string): number | undefined => (unit === '°C' ? value : converted(value, unit, '°C'))

/** The range of the I/O list in three points, with what each is in °C; or what of it the list lacks. */
function temperaturesOfRange(wired: Wired) {
  const points = pointsOfRange(wired)
  if (points.length === 0) return { missing: ['low', 'high'] }
  const at = points.flatMap((point) => {
    const celsius = temperatureC(point.value, point.unit)
    return celsius === undefined ? [] : [{ ...point, celsius }]
  })
  return at.length === 0 ? { missing: ['unit'] } : { at }
}

/** How far two leads of one cable differ, as a share. */
const leadMismatch: Stated = { value: 0.01, basis: 'generic', source: 'common practice' }

/** What a platinum element reads at three temperatures, and what its leads add. */
export function platinumExpectations(wired: Wired): Expectation[] {
  const { values } = wired
  const { at, missing } = temperaturesOfRange(wired)
  if (!at) return [noRange('element-resistance', 'Ω', missing)]
  const [iceOhm, name, element] = [values.number('iceResistanceOhm'), values.choice('platinumClass'), values.choice('element')]
  const [from, to] = [values.number('classFromC')?.value, values.number('classToC')?.value]
  const range = from !== undefined && to !== undefined ? ([from, to] as const) : name && element && classRangesC[element][name]
  const elements = at.map(({ state, value, unit, celsius }) => {
    const frame = { measured: 'element-resistance', point: 'device', state, at: { value, unit }, unit: 'Ω' } as const
    const reading = expected(frame, platinumResistance({ temperatureC: celsius, iceResistanceOhm: iceOhm }))
    if (reading.value === undefined || !iceOhm) return reading
    if (!name || !range) return { ...reading, notComputed: name ? ['element'] : ['platinumClass'] }
    const limits = platinumLimits({ temperatureC: celsius, iceResistanceOhm: iceOhm.value }, name, range)
    if (isRefused(limits)) return { ...reading, refused: limits.refused }
    if (!('low' in limits)) return reading
    const { low, high } = between(frame, limits.low, limits.high)
    const tolerance = platinumTolerance({ temperatureC: celsius }, name, range)
    return {
      ...reading,
      restsOn: together(reading.restsOn, limitsRestOn(ofClass(tolerance, 'IEC 60751:2022, tolerance classes'))),
      ...(low === undefined ? {} : { low }),
      ...(high === undefined ? {} : { high }),
      formula: `${reading.formula}, ± ${isValue(tolerance) ? tolerance.formula : ''}`,
    }
  })
  return [...elements, ...leads(wired, at[1]?.celsius)]
}

/** The range of a class is from memory, and with it that the class holds here. */
const ofClass = (tolerance: Result | Refused, source: string): Stated => ({
  value: isValue(tolerance) ? tolerance.value : 0,
  basis: 'standard',
  fromMemory: true,
  source,
})

function leads(wired: Wired, middleC: number | undefined): Expectation[] {
  const [wiring, leadOhm] = [wired.values.choice('wiring'), wireOhm(wired)]
  const pair = { measured: 'lead-pair', point: 'terminal', state: 'always', unit: 'Ω' } as const
  if (!wiring) return [{ ...stated(pair), notComputed: ['wiring'] }]
  if (!leadOhm) return [{ ...stated(pair), notComputed: ['cableLengthM', 'cableAreaMm2'] }]
  const own = stated({ ...pair, value: 2 * leadOhm.value, formula: 'R = 2·R_l' }, leadOhm)
  if (wiring === '4-wire') return [own]
  const iceResistanceOhm = wired.values.number('iceResistanceOhm')
  const error = leadError(wiring, { leadMismatch, leadOhm, temperatureC: middleC, iceResistanceOhm })
  return [own, expected({ measured: 'lead-error', point: 'address', state: 'range-middle', unit: 'K' }, error)]
}

/** Voltage in mV at the terminals of a thermocouple, at three temperatures and that of the terminals. */
export function thermocoupleExpectations(wired: Wired): Expectation[] {
  const { values, ofCard } = wired
  const frame = { measured: 'thermovoltage', point: 'terminal', unit: 'mV' } as const
  const { at, missing } = temperaturesOfRange(wired)
  if (!at) return [noRange('thermovoltage', 'mV', missing)]
  const [type, name, terminalC] = [
    values.choice('thermocouple'),
    values.choice('thermocoupleClass'),
    values.number('terminalC') ?? ofCard.number('terminalC'),
  ]
  if (!type) return [{ ...stated({ ...frame, state: 'range-low' }), notComputed: ['thermocouple'] }]
  return at.map(({ state, value, unit, celsius }): Expectation => {
    const own = { ...frame, state, at: { value, unit } }
    const reading = (temperatureC: number): Result => thermocouples[type].terminalVoltage({ temperatureC, terminalC })
    const middle = expected(own, reading(celsius))
    if (middle.notComputed) return { ...middle, notComputed: ['terminalC'] }
    if (!name) return { ...middle, notComputed: ['thermocoupleClass'] }
    const tolerance = thermocoupleTolerance({ temperatureC: celsius }, type, name)
    if (isRefused(tolerance)) return { ...middle, refused: tolerance.refused }
    if (!isValue(tolerance)) return middle
    const { low, high } = between(own, reading(celsius - tolerance.value), reading(celsius + tolerance.value))
    return {
      ...middle,
      ...(low === undefined ? {} : { low }),
      ...(high === undefined ? {} : { high }),
      restsOn: together(middle.restsOn, restsOn(tolerance.inputs)),
    }
  })
}

/** Resistance of a thermistor by its beta value, at three temperatures. */
export function thermistorExpectations(wired: Wired): Expectation[] {
  const { values } = wired
  const { at, missing } = temperaturesOfRange(wired)
  if (!at) return [noRange('element-resistance', 'Ω', missing)]
  const given = { referenceOhm: values.number('referenceOhm'), betaK: values.number('betaK'), referenceC: values.number('referenceC') }
  return at.map(({ state, value, unit, celsius }) => {
    const frame = { measured: 'element-resistance', point: 'device', state, at: { value, unit }, unit: 'Ω' } as const
    const reading = expected(frame, thermistorResistance({ temperatureC: celsius, ...given }))
    const percent = values.number('tolerancePercent')
    if (reading.value === undefined || !percent) return reading.value === undefined ? reading : { ...reading, notComputed: ['tolerancePercent'] }
    const error = (reading.value * percent.value) / 100
    return withTolerance(reading, {
      value: error,
      unit: 'Ω',
      formula: 'e',
      inputs: [{ name: 'tolerancePercent', letter: 'e', unit: '%', ...percent }],
    })
  })
}

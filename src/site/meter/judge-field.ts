import { numberOf, type Quantity } from '../../law/law.ts'
import { levelBand, meterMarginV } from '../../signals/fault/level.ts'
import type { Point } from '../../signals/fault/row.ts'
import { loopLimits, loopState } from '../../signals/loop-current.ts'
import { platinumResistance } from '../../signals/platinum.ts'
import { platinumLimits } from '../../signals/platinum-class.ts'
import { judge, type Verdict } from '../../signals/verdict.ts'
import { encoderExpectation, flowExpectation, outputExpectation } from './expect-load.ts'
import { thermistorExpectation, thermocoupleExpectation, voltageExpectation } from './expect-measured.ts'
import { fieldsOf, healthyOf } from './fields-of.ts'
import type { BasisWord, Expectation, Field, MeterSheet, PlatinumSheet, SwitchedSheet, Values } from './meter-sheet.ts'
import { motorExpectation } from './motor-value.ts'

/** The sheet with the supply, the speed or the flow that was measured: limits follow it. */
export function withMeasured(sheet: MeterSheet, values: Values): MeterSheet {
  const { speed, flow } = values
  if (sheet.kind === 'switched') {
    const supply = values.supply ?? supplySeen(sheet, values)
    return supply === undefined ? sheet : { ...sheet, circuit: { ...sheet.circuit, supplyV: { value: supply, basis: 'measured' } } }
  }
  if (sheet.kind === 'output' && values.supply !== undefined) return { ...sheet, circuit: { ...sheet.circuit, supplyV: values.supply } }
  if (sheet.kind === 'encoder' && speed !== undefined && speed > 0) return { ...sheet, circuit: { ...sheet.circuit, speedPerMin: speed } }
  if (sheet.kind === 'flow' && flow !== undefined && flow > 0)
    return { ...sheet, circuit: { ...sheet.circuit, flowLPerMin: flow, isFlowMeasured: true } }
  return sheet
}

/** No point stands above its supply: for want of a reading of it the highest one tells it, as far as its source may give that. */
function supplySeen(sheet: SwitchedSheet, values: Values): number | undefined {
  const { supplyV } = sheet.circuit
  const most = sheet.supply?.band.high
  if (supplyV === undefined || most === undefined) return undefined
  const read = fieldsOf(sheet).flatMap(({ id, name, unit }) => (unit === 'V' && name !== 'value' ? (values[id] ?? []) : []))
  const highest = Math.max(...read)
  return highest > numberOf(supplyV) + meterMarginV && highest <= most + meterMarginV ? highest : undefined
}

/** Undefined where nothing can be foretold. `sheet` has the measured supply in it. */
export function expectationOf(field: Field, sheet: MeterSheet, values: Values): Expectation | undefined {
  if (field.name === 'value') {
    const it = sheet.expected[Number(field.id.replace('value', ''))]
    return it && { band: it.band, usual: it.band, unit: it.unit, basis: it.basis }
  }
  switch (sheet.kind) {
    case 'switched':
      return field.name === 'supply' ? supplyExpectation(sheet) : pointExpectation(field, sheet)
    case 'loop': {
      const { measuringFromMa, measuringToMa } = loopLimits
      if (field.name !== 'loop-current' && field.name !== 'acrossCard') return undefined
      // Across the input of the card the same current is a voltage.
      const perMa = field.name === 'acrossCard' ? (sheet.cardOhm ?? 0) / 1000 : 1
      const band = { low: measuringFromMa.value * perMa, high: measuringToMa.value * perMa }
      return { band, usual: { low: 4 * perMa, high: 20 * perMa }, unit: field.unit, basis: ['standard'] }
    }
    case 'platinum':
      return field.name === 'element' ? elementExpectation(sheet, values.reference) : undefined
    case 'voltage':
      return field.name === 'voltage' ? voltageExpectation(sheet, values.referenceValue) : undefined
    case 'thermocouple':
      return thermocoupleExpectation(field, sheet, values)
    case 'thermistor':
      return field.name === 'element' ? thermistorExpectation(sheet, values.reference) : undefined
    case 'output':
      return outputExpectation(field, sheet)
    case 'encoder':
      return encoderExpectation(field, sheet)
    case 'flow':
      return flowExpectation(field, sheet)
    case 'motor':
      return motorExpectation(field, sheet, values)
    case 'plain':
      return undefined
  }
}

/** The verdict over a reading in the unit of its field. */
export function judgeField(field: Field, value: number, sheet: MeterSheet, values: Values): Verdict {
  if (field.name === 'loop-current' && sheet.kind === 'loop' && loopState(value) === 'no state') return 'no verdict'
  const expected = expectationOf(field, sheet, values)
  const own = field.name === 'element' ? value - (values.leads ?? 0) : value
  return expected ? judge(own, expected.band) : 'no verdict'
}

function supplyExpectation({ supply }: SwitchedSheet): Expectation | undefined {
  return supply && { band: supply.band, usual: supply.band, unit: 'V', basis: supply.basis }
}

function pointExpectation({ id, name, state }: Field, sheet: SwitchedSheet): Expectation | undefined {
  const point = name as Point
  const level = state && healthyOf(sheet)?.readings[point]?.[state]
  const found = level && levelBand(level, point, sheet.circuit)
  if (!found || !('band' in found)) return undefined
  const { supplyV, dropV, limits, namur } = sheet.circuit
  const current = [namur?.highImpedanceMa, namur?.lowImpedanceMa]
  const voltage = [supplyV, ...(level === 'driven' || level === 'drop' ? [dropV] : []), limits?.onFromV, limits?.offToV]
  const own = sheet.limits?.[id]
  if (own) return { usual: found.usual, ...own, unit: 'V' }
  return { ...found, unit: point === 'loop-current' ? 'mA' : 'V', basis: basisOf(point === 'loop-current' ? current : voltage) }
}

/** Against the reference where one was read, else against the range of the signal. */
function elementExpectation(sheet: PlatinumSheet, referenceC: number | undefined): Expectation | undefined {
  const { tolerance, iceResistanceOhm } = sheet
  const ice = typeof iceResistanceOhm === 'number' ? iceResistanceOhm : iceResistanceOhm.value
  if (referenceC !== undefined && tolerance) {
    const limits = platinumLimits({ temperatureC: referenceC, iceResistanceOhm: ice }, tolerance.class, tolerance.rangeC)
    if (!('low' in limits) || !('value' in limits.low) || !('value' in limits.high)) return undefined
    const band = { low: limits.low.value, high: limits.high.value }
    return { band, usual: band, unit: 'Ω', basis: ['standard'] }
  }
  const at = (temperatureC: number | undefined) => {
    const found = temperatureC === undefined ? undefined : platinumResistance({ temperatureC, iceResistanceOhm: ice })
    return found && 'value' in found ? found.value : undefined
  }
  const [low, high] = [at(sheet.low), at(sheet.high)]
  if (low === undefined || high === undefined) return undefined
  return { band: { low, high }, usual: { low, high }, unit: 'Ω', basis: ['standard'] }
}

function basisOf(quantities: readonly (Quantity | undefined)[]): BasisWord[] {
  const words = quantities.flatMap((it): BasisWord[] => {
    if (it === undefined) return []
    return [typeof it === 'number' || it.fromMemory ? 'generic' : it.basis]
  })
  return [...new Set(words)]
}

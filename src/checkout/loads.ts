import { numberOf, type Quantity, type Result, type Stated } from '../law/law.ts'
import { copperPerK } from '../signals/cable.ts'
import { coilCurrent, coilRise, coilTolerance, coldCoilResistance, warmCoilResistance } from '../signals/coil.ts'
import { loadVoltage, outputRatings, outputVoltage } from '../signals/digital-output.ts'
import { insulationTestV, leastInsulation } from '../signals/electrical-tests.ts'
import { mostImbalance, slip, synchronousSpeed } from '../signals/motor.ts'
import { loadCurrent, loadResistance } from '../signals/resistive-load.ts'
import { voltageWindow, voltageWindows } from '../signals/voltage-window.ts'
import { type Expectation, expected, generic, isValue, limitsRestOn, stated, together } from './expectation.ts'
import { signalName } from './switched.ts'
import { ohmPerKm, type Wired } from './wiring.ts'

const tenth = (tolerance: Stated) => (value: number) => ({ low: value * (1 - tolerance.value / 100), high: value * (1 + tolerance.value / 100) })

/** Resistance, current and voltage of a coil that the controller switches. */
export function coilExpectations(wired: Wired, kind: 'valve' | 'contactor must close'): Expectation[] {
  const { values } = wired
  const given = { coilV: values.number('coilV'), coilW: values.number('coilW') }
  const electronics = values.choice('coilElectronics')
  const coil = { fedWith: values.choice('coilFeed'), hasElectronics: electronics && electronics === 'built in' }
  const frame = signalName(wired)
  const cold = expected(
    { ...frame, measured: 'coil-resistance', point: 'device', state: 'isolated', unit: 'Ω' },
    coldCoilResistance(coil, given),
    tenth(coilTolerance),
  )
  const current = coil.fedWith === 'a.c.' ? { refused: 'alternating-current-coil' as const } : coilCurrent(given)
  return [
    cold.value === undefined ? cold : { ...cold, restsOn: together(cold.restsOn, limitsRestOn(coilTolerance)) },
    ...warm(cold, values.number('riseK') ?? coilRise),
    ratedAtCard(wired, expected({ ...frame, measured: 'load-current', point: 'card', state: 'on', unit: 'mA' }, current), 1000),
    voltageAtTerminal(wired),
    voltageAtLoad(wired, given.coilV, isValue(current) ? current.value / 1000 : undefined, voltageWindows[kind]),
  ]
}

/** What an ohmmeter reads on a coil that was on: anything from cold to as hot as it gets. Nothing where it has no cold resistance. */
function warm(cold: Expectation, riseK: Stated): Expectation[] {
  if (cold.value === undefined) return []
  const { signal, point, state, unit, value } = cold
  const tolerance = coilTolerance.value / 100
  const frame = { measured: 'warm-coil-resistance', ...(signal === undefined ? {} : { signal }), point, state, unit } as const
  const hot = expected(frame, warmCoilResistance({ coldOhm: value, copperPerK, riseK }), (highest) => ({
    low: value * (1 - tolerance),
    high: highest * (1 + tolerance),
  }))
  return [{ ...hot, restsOn: together(cold.restsOn, hot.restsOn, limitsRestOn(coilTolerance)) }]
}

/** Current and voltage of a lamp. */
export function lampExpectations(wired: Wired): Expectation[] {
  const { values } = wired
  const given = { ratedV: values.number('ratedV'), ratedW: values.number('ratedW') }
  const current = loadCurrent(given)
  const frame = { ...signalName(wired), measured: 'load-current', point: 'card', state: 'on', unit: 'A' } as const
  return [
    ratedAtCard(wired, expected(frame, current), 1),
    voltageAtTerminal(wired),
    voltageAtLoad(wired, given.ratedV, isValue(current) ? current.value : undefined),
  ]
}

/** The output of the card carries its rated current at most. */
function ratedAtCard({ ofCard }: Wired, it: Expectation, perA: number): Expectation {
  const rated = ofCard.number('ratedA')
  if (it.value === undefined) return it
  if (!rated) return { ...it, notComputed: ['ratedA'] }
  return { ...it, high: rated.value * perA, restsOn: together(it.restsOn, limitsRestOn(rated)) }
}

function dropOfOutput({ ofCard }: Wired): Stated | undefined {
  const rating = outputRatings.get(ofCard.number('ratedA')?.value ?? 0)
  return ofCard.number('dropV') ?? (rating && generic(rating.dropV))
}

/** What the output of the card gives, between its drop and the whole supply. */
function voltageAtTerminal(wired: Wired): Expectation {
  const { supplyV } = wired
  const frame = { ...signalName(wired), measured: 'output-voltage', point: 'terminal', state: 'on', unit: 'V' } as const
  return expected(frame, outputVoltage({ supplyV, dropV: dropOfOutput(wired) }), (low) => ({
    low,
    high: supplyV === undefined ? low : numberOf(supplyV),
  }))
}

/** Voltage at a load while its output is on: what supply, card and cable leave, against what the load is made for. */
function voltageAtLoad(
  wired: Wired,
  ratedV: Quantity | undefined,
  loadCurrentA: number | undefined,
  usual?: { low: Stated; high: Stated },
): Expectation {
  const { values, supplyV } = wired
  const dropV = dropOfOutput(wired)
  const result = loadVoltage({ supplyV, dropV, loadCurrentA, lengthM: values.number('cableLengthM'), resistanceOhmPerKm: ohmPerKm(wired) })
  const found = expected({ ...signalName(wired), measured: 'load-voltage', point: 'device', state: 'on', unit: 'V' }, result)
  const [low, high] = [values.number('lowestShare') ?? (usual && generic(usual.low)), values.number('highestShare') ?? (usual && generic(usual.high))]
  if (!low || !high) return { ...found, notComputed: [...new Set([...(found.notComputed ?? []), 'lowestShare', 'highestShare'])] }
  const window = voltageWindow({ low, high }, ratedV)
  if (!isValue(window.low) || !isValue(window.high)) return found
  return { ...found, low: window.low.value, high: window.high.value, restsOn: together(found.restsOn, limitsRestOn(low, high)) }
}

const insulation: Expectation = {
  ...stated(
    { measured: 'insulation', point: 'device', state: 'isolated', unit: 'MΩ', low: leastInsulation.value, at: { value: insulationTestV, unit: 'V' } },
    leastInsulation,
  ),
}

/** One heating element: resistance and current; and the insulation of the heater. */
export function heaterExpectations({ values }: Wired): Expectation[] {
  const given = { ratedV: values.number('ratedV'), ratedW: values.number('ratedW') }
  const tolerance = values.number('tolerancePercent')
  const within = (it: Expectation): Expectation => {
    if (it.value === undefined) return it
    return tolerance
      ? { ...it, ...tenth(tolerance)(it.value), restsOn: together(it.restsOn, limitsRestOn(tolerance)) }
      : { ...it, notComputed: ['tolerancePercent'] }
  }
  return [
    within(expected({ measured: 'element-resistance', point: 'device', state: 'isolated', unit: 'Ω' }, loadResistance(given))),
    within(expected({ measured: 'load-current', point: 'device', state: 'on', unit: 'A' }, loadCurrent(given))),
    insulation,
  ]
}

/** Balance of the windings, insulation, highest current and speed of the field of a motor. */
export function motorExpectations({ values }: Wired): Expectation[] {
  const rated = values.number('ratedA')
  const current = { measured: 'load-current', point: 'device', state: 'on', unit: 'A' } as const
  const field = synchronousSpeed({ frequencyHz: values.number('frequencyHz'), poles: values.number('poles') })
  return [
    stated({ measured: 'winding-balance', point: 'device', state: 'isolated', unit: '%', low: 0, high: mostImbalance.value }, mostImbalance),
    insulation,
    rated ? stated({ ...current, high: rated.value }, rated) : { ...stated(current), notComputed: ['ratedA'] },
    speed(field, values.number('ratedSpeedPerMin')),
  ]
}

/** Between the speed under load and that of the field. */
function speed(field: Result, ratedSpeed: Stated | undefined): Expectation {
  const found = expected({ measured: 'synchronous-speed', point: 'device', state: 'on', unit: 'min⁻¹' }, field)
  if (found.value === undefined) return found
  if (!ratedSpeed) return { ...found, notComputed: ['ratedSpeedPerMin'] }
  const behind = slip({ synchronousPerMin: found.value, speedPerMin: ratedSpeed })
  if (!isValue(behind)) return found
  return { ...found, low: ratedSpeed.value, high: found.value, restsOn: together(found.restsOn, limitsRestOn(ratedSpeed)) }
}

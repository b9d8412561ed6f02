import type { Result } from '../../src/law/law.ts'
import * as cable from '../../src/signals/cable.ts'
import * as cableDrop from '../../src/signals/cable-drop.ts'
import * as coil from '../../src/signals/coil.ts'
import * as output from '../../src/signals/digital-output.ts'
import * as tests from '../../src/signals/electrical-tests.ts'
import * as load from '../../src/signals/input-load.ts'
import { type InputName, inputKinds } from '../../src/signals/inputs.ts'
import * as level from '../../src/signals/level.ts'
import * as loop from '../../src/signals/loop-budget.ts'
import * as motor from '../../src/signals/motor.ts'
import * as namur from '../../src/signals/namur.ts'
import * as light from '../../src/signals/photoelectric.ts'
import * as platinum from '../../src/signals/platinum.ts'
import * as proximity from '../../src/signals/proximity.ts'
import * as pulses from '../../src/signals/pulses.ts'
import * as resistive from '../../src/signals/resistive-load.ts'
import * as scaling from '../../src/signals/scaling.ts'
import * as switching from '../../src/signals/switching.ts'
import { keptFromInput } from '../../src/signals/terminal-voltage.ts'
import * as thermistor from '../../src/signals/thermistor.ts'
import { thermocouples } from '../../src/signals/thermocouple.ts'
import * as tolerance from '../../src/signals/tolerance-stack.ts'

export type Inputs = Record<InputName, number | undefined>
export const inputNames = Object.keys(inputKinds) as InputName[]

/** Functions that are no law of one set of inputs. */
const notLaws = [
  'conductorSizesMm2',
  'conductorOhmPerKm',
  'smallestSize',
  'coldCoilResistance',
  'coilVerdict',
  'insulationVerdict',
  'leakageVerdict',
  'minimumLoadVerdict',
  'resistorRatingW',
  'namurState',
  'photoelectricOutput',
  'excessGain',
  'leadError',
  'factorsOf',
  'proximityLimits',
  'gapVerdict',
  'mountedGapVerdict',
  'targetRefusal',
  'fitSteinhart',
  'worstCase',
  'rootSumSquare',
]
const modules = {
  cable,
  cableDrop,
  coil,
  output,
  tests,
  load,
  level,
  loop,
  motor,
  namur,
  light,
  platinum,
  proximity,
  pulses,
  resistive,
  scaling,
  switching,
}
const all = [...Object.values(modules), thermistor, tolerance, thermocouples.J, thermocouples.K, thermocouples.T, { keptFromInput }].flatMap((it) =>
  Object.entries(it),
)
/** Every law of one set of inputs, by its name. */
export const laws = all.flatMap(([name, it]) =>
  typeof it === 'function' && !notLaws.includes(name) ? [[name, it as (given: Inputs) => Result] as const] : [],
)

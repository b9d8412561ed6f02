import { law } from '../signals/law.ts'
import { encoderFrequency, flowFrequency } from '../signals/pulses.ts'
import { shareOfSpan } from '../signals/tolerance-stack.ts'
import { withTolerance } from './analogue.ts'
import { type Expectation, expected } from './expectation.ts'
import { signalName } from './switched.ts'
import type { Wired } from './wiring.ts'

/** Pulses of a flow meter at the flow in service; the input of the card must count them. */
export function flowExpectations(wired: Wired): Expectation[] {
  const { values } = wired
  const flowLPerMin = values.number('flowLPerMin')
  const frame = { measured: 'frequency', ...signalName(wired), point: 'terminal', state: 'in-service', unit: 'Hz' } as const
  const at = flowLPerMin ? { at: { value: flowLPerMin.value, unit: 'l/min' } } : {}
  const found = expected({ ...frame, ...at }, flowFrequency({ pulsesPerLitre: values.number('pulsesPerLitre'), flowLPerMin }))
  return [
    found.value === undefined
      ? found
      : withTolerance(found, shareOfSpan({ tolerancePercent: values.number('tolerancePercent'), span: found.value || undefined })),
  ]
}

const countsPerTurn = law({ formula: 'N = 4·p', unit: '', inputs: ['pulsesPerTurn'], value: ({ pulsesPerTurn }) => 4 * pulsesPerTurn })

/** Pulses of an encoder at the speed in service, and its counts in one turn of all four edges: these must be exact. */
export function encoderExpectations(wired: Wired): Expectation[] {
  const { values, ofCard } = wired
  const given = { pulsesPerTurn: values.number('pulsesPerTurn'), speedPerMin: values.number('speedPerMin') }
  const at = given.speedPerMin ? { at: { value: given.speedPerMin.value, unit: 'min⁻¹' } } : {}
  const most = ofCard.number('highestHz')
  const frame = { ...signalName(wired), unit: '' } as const
  return [
    expected({ ...frame, measured: 'frequency', point: 'terminal', state: 'in-service', ...at, unit: 'Hz' }, encoderFrequency(given), () =>
      most ? { high: most.value } : {},
    ),
    expected({ ...frame, measured: 'counts-per-turn', point: 'address', state: 'always' }, countsPerTurn(given), (value) => ({
      low: value,
      high: value,
    })),
  ]
}

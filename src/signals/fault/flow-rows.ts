import type { Band } from '../verdict.ts'
import type { FieldRow } from './field-rows.ts'

/**
 * What is read of a flow meter with pulses: the flow on a reference in l/min, the supply in V, the pulses in Hz at its plug and at
 * the card, those with the flow stopped, and the flow that the controller shows in l/min.
 */
export type FlowField = 'flow' | 'supply' | 'atMeter' | 'atCard' | 'stopped' | 'shown'

export interface FlowCircuit {
  pulsesPerLitre: number
  /** As measured, or that of the machine in service. */
  flowLPerMin: number
  isFlowMeasured?: boolean
  lowestSupplyV: number
}

/** Share by which flow and meter may be off. Common practice. */
const [least, most] = [0.9, 1.1]
/** Up to this share of the pulses or the flow nothing moves. Common practice. */
const rest = 0.01

/** Every fault of a flow meter on an input that counts its pulses, the healthy one first. */
export function flowRows({ pulsesPerLitre, flowLPerMin, isFlowMeasured = false, lowestSupplyV }: FlowCircuit): FieldRow<FlowField>[] {
  const hz = (pulsesPerLitre * flowLPerMin) / 60
  const right: Band = { low: least * hz, high: most * hz }
  const still: Band = { low: 0, high: rest * hz }
  const [slower, faster]: [Band, Band] = [{ low: rest * hz, high: least * hz }, { low: most * hz }]
  const shownRight: Band = { low: least * flowLPerMin, high: most * flowLPerMin }
  const shownStill: Band = { low: 0, high: rest * flowLPerMin }
  const [shownLess, shownMore]: [Band, Band] = [{ low: rest * flowLPerMin, high: least * flowLPerMin }, { low: most * flowLPerMin }]
  const flows = { flow: { low: rest * flowLPerMin }, supply: { low: lowestSupplyV } }
  const row = (id: FieldRow<FlowField>['id'], weight: number, reads: FieldRow<FlowField>['reads']): FieldRow<FlowField> => ({
    id,
    weight,
    reads: { ...flows, ...reads },
  })
  const dead = { atMeter: still, atCard: still, stopped: still, shown: shownStill }
  const counted = { atMeter: right, atCard: right, stopped: still }
  const off = (pulses: Band, shown: Band) => ({ atMeter: pulses, atCard: pulses, stopped: still, shown })
  const otherwise = [row('flow-otherwise', 3, off(slower, shownLess)), row('flow-otherwise', 3, off(faster, shownMore))]
  return [
    row('healthy', 10, { ...counted, shown: shownRight }),
    row('flow-none', 4, { ...dead, flow: { low: 0, high: rest * flowLPerMin } }),
    row('flow-without-supply', 4, { ...dead, supply: { high: lowestSupplyV } }),
    row('flow-sensor-dead', 3, dead),
    row('flow-wire-open', 3, { ...dead, atMeter: right }),
    row('flow-not-counted', 2, { ...counted, shown: shownStill }),
    row('flow-factor-wrong', 3, { ...counted, shown: shownLess }),
    row('flow-factor-wrong', 3, { ...counted, shown: shownMore }),
    row('flow-pulses-lost', 2, { ...counted, shown: shownLess }),
    row('flow-pulses-added', 2, { atMeter: right, atCard: faster, stopped: { low: rest * hz }, shown: shownMore }),
    row('flow-does-not-stop', 2, { atMeter: right, atCard: right, stopped: { low: rest * hz, high: most * hz }, shown: shownRight }),
    // What was measured is no other flow.
    ...(isFlowMeasured ? [] : otherwise),
    row('flow-of-other-meter', 1, off(slower, shownLess)),
    row('flow-of-other-meter', 1, off(faster, shownMore)),
  ]
}

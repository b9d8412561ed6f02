import type { Band } from '../verdict.ts'
import type { FieldRow } from './field-rows.ts'

/** What is read of an encoder: its supply in V, the pulses of both channels in Hz at a steady speed, and the counts of one turn forward. */
export type EncoderField = 'supply' | 'channelA' | 'channelB' | 'counts'

export interface EncoderCircuit {
  pulsesPerTurn: number
  /** As measured, or that of the machine in service. */
  speedPerMin: number
  lowestSupplyV: number
}

/** Share by which speed and meter may be off. Common practice. */
const [least, most] = [0.9, 1.1]

/** Every fault of an encoder on an input that counts all four edges, the healthy one first. */
export function encoderRows({ pulsesPerTurn, speedPerMin, lowestSupplyV }: EncoderCircuit): FieldRow<EncoderField>[] {
  const [hz, counts] = [(pulsesPerTurn * speedPerMin) / 60, 4 * pulsesPerTurn]
  const right: Band = { low: least * hz, high: most * hz }
  const still: Band = { low: 0, high: 0.01 * hz }
  // One edge more or less, for the marks at which the turn begins and ends.
  const exactly = (n: number): Band => ({ low: n - 1, high: n + 1 })
  const none: Band = { low: -4, high: 4 }
  const fed = { supply: { low: lowestSupplyV } }
  const bothOff = (band: Band) => ({ channelA: band, channelB: band })
  const row = (id: FieldRow<EncoderField>['id'], weight: number, reads: FieldRow<EncoderField>['reads']): FieldRow<EncoderField> => ({
    id,
    weight,
    reads: { ...fed, ...reads },
  })
  const both = bothOff(right)
  const [slower, faster]: [Band, Band] = [{ low: 0.01 * hz, high: least * hz }, { low: most * hz }]
  return [
    row('healthy', 10, { ...both, counts: exactly(counts) }),
    row('encoder-without-supply', 4, { supply: { high: lowestSupplyV }, ...bothOff(still), counts: none }),
    row('encoder-stands', 4, { ...bothOff(still), counts: none }),
    row('channel-a-open', 3, { channelA: still, channelB: right, counts: none }),
    row('channel-b-open', 3, { channelA: right, channelB: still, counts: none }),
    row('channels-swapped', 3, { ...both, counts: exactly(-counts) }),
    row('edges-set-wrong', 3, { ...both, counts: exactly(pulsesPerTurn) }),
    row('edges-set-wrong', 3, { ...both, counts: exactly(2 * pulsesPerTurn) }),
    row('pulses-lost', 2, { ...both, counts: { low: 5, high: counts - 1 } }),
    row('pulses-added', 2, { channelA: { low: least * hz }, channelB: { low: least * hz }, counts: { low: counts + 1 } }),
    row('turns-at-other-speed', 2, { ...bothOff(slower), counts: exactly(counts) }),
    row('turns-at-other-speed', 2, { ...bothOff(faster), counts: exactly(counts) }),
    row('encoder-of-other-resolution', 1, { ...bothOff(slower), counts: { low: 5, high: least * counts } }),
    row('encoder-of-other-resolution', 1, { ...bothOff(faster), counts: { low: most * counts } }),
  ]
}

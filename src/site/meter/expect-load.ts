import { type EncoderField, encoderRows } from '../../signals/fault/encoder-rows.ts'
import { type FlowField, flowRows } from '../../signals/fault/flow-rows.ts'
import { type OutputField, outputRows } from '../../signals/fault/output-rows.ts'
import type { Band } from '../../signals/verdict.ts'
import type { EncoderSheet, Expectation, Field, FlowSheet, OutputSheet } from './meter-sheet.ts'

/** What a good load reads, and the limits of card, cable and load where they are given. */
export function outputExpectation({ id, unit }: Field, { circuit, limits, supply, basis }: OutputSheet): Expectation | undefined {
  if (id === 'supply') return supply && { band: supply.band, usual: supply.band, unit, basis: supply.basis }
  const usual = outputRows(circuit)[0]?.reads[id as OutputField]
  if (!usual) return undefined
  const own = limits[id]
  const band = own ? both(usual, own.band) : usual
  return { band, usual: band, unit, basis: own?.basis ?? basis }
}

/** What lies in two bands. */
function both(one: Band, other: Band): Band {
  const [lows, highs] = [[one.low, other.low].filter((it) => it !== undefined), [one.high, other.high].filter((it) => it !== undefined)]
  return { ...(lows.length > 0 ? { low: Math.max(...lows) } : {}), ...(highs.length > 0 ? { high: Math.min(...highs) } : {}) }
}

/** What a good encoder reads at the speed that was measured, or that of the machine in service. */
export function encoderExpectation({ id, unit }: Field, { circuit, basis }: EncoderSheet): Expectation | undefined {
  const band = encoderRows(circuit)[0]?.reads[id as EncoderField]
  return band && { band, usual: band, unit, basis }
}

/** What a good flow meter reads at the flow that was measured, or that of the machine in service. */
export function flowExpectation({ id, unit }: Field, { circuit, basis }: FlowSheet): Expectation | undefined {
  const band = id === 'flow' ? undefined : flowRows(circuit)[0]?.reads[id as FlowField]
  return band && { band, usual: band, unit, basis }
}

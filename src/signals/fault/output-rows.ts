import type { Band } from '../verdict.ts'
import type { FieldRow } from './field-rows.ts'

/** What is read of a load on a digital output that switches L+. Lights and bits read 1 or 0; `on` and `off`: what the program commands. */
export type OutputField = 'supply' | 'tag.on' | 'led.on' | 'led.off' | 'terminal.on' | 'terminal.off' | 'load.on' | 'load.off' | 'current' | 'cold'

export interface OutputCircuit {
  /** As measured, or the nominal one. */
  supplyV: number
  /** Most that the output drops. */
  dropV: number
  /** Most that it carries. */
  ratedA: number
  /** Cable there and back. */
  cableOhm: number
  /** Load on its rated voltage. */
  ratedV: number
  loadA: number
  /** An economiser, an LED, a suppressor: no resistance that means anything, and less current once it has pulled in. */
  hasElectronics: boolean
}

/** A meter between two parts of the circuit reads on within this, in V. Common practice. */
const slackV = 0.3
/** Shares of the cold resistance: below it shorted, up to it turns are shorted, from it another coil, above it open. Common practice. */
export const [shortedShare, lowShare, highShare, openShare] = [0.2, 0.85, 1.15, 20]
/** Share of the rated voltage below which 24 V loads do not work surely, and above which a supply is too high. Common practice. */
const [leastShare, mostShare] = [0.85, 1.2]

const [yes, no]: [Band, Band] = [
  { low: 1, high: 1 },
  { low: 0, high: 0 },
]

/** Every fault of such a circuit with what it reads, the healthy one first. */
export function outputRows(circuit: OutputCircuit): FieldRow<OutputField>[] {
  const { supplyV, dropV, ratedA, cableOhm, ratedV, loadA, hasElectronics } = circuit
  const [loadOhm, currentMa] = [ratedV / loadA, (1000 * loadA * supplyV) / ratedV]
  const cableV = (currentMa / 1000) * cableOhm
  const high = supplyV + slackV
  const driven: Band = { low: supplyV - dropV - slackV, high }
  const fed: Band = { low: supplyV - dropV - 1.2 * cableV - slackV, high }
  const nothing: Band = { low: -0.5, high: 0.5 }
  const weak: Band = { low: 0.5, high: supplyV - dropV - slackV }
  // A coil that is hot draws up to a third less; one with an economiser a tenth.
  const drawn: Band = { low: (hasElectronics ? 0.05 : 0.6) * currentMa, high: 1.25 * currentMa }
  const noCurrent: Band = { low: -1, high: Math.max(1, 0.02 * currentMa) }
  const cold = (from: number | undefined, to: number | undefined): { cold?: Band } =>
    hasElectronics ? {} : { cold: { ...(from === undefined ? {} : { low: from * loadOhm }), ...(to === undefined ? {} : { high: to * loadOhm }) } }
  const good = cold(lowShare, highShare)
  const goodSupply: Band = { low: leastShare * ratedV, high: mostShare * ratedV }
  const off = { 'terminal.off': nothing, 'load.off': nothing, 'led.off': no }
  const dead = { 'terminal.on': nothing, 'load.on': nothing, current: noCurrent, ...good, ...off }
  const commanded = { 'tag.on': yes, supply: goodSupply }
  const row = (id: FieldRow<OutputField>['id'], weight: number, reads: FieldRow<OutputField>['reads']): FieldRow<OutputField> => ({
    id,
    weight,
    reads: { ...commanded, ...reads },
  })
  return [
    row('healthy', 10, { 'led.on': yes, 'terminal.on': driven, 'load.on': fed, current: drawn, ...good, ...off }),
    row('command-missing', 4, { 'tag.on': no, 'led.on': no, ...dead }),
    row('load-wire-open', 4, {
      'led.off': no,
      'led.on': yes,
      'terminal.on': driven,
      'load.on': nothing,
      'load.off': nothing,
      current: noCurrent,
      ...good,
    }),
    row('load-open', 4, {
      'led.off': no,
      'led.on': yes,
      'terminal.on': driven,
      'load.on': { low: fed.low ?? 0, high },
      current: noCurrent,
      ...cold(openShare, undefined),
    }),
    row('load-shorted', 3, { 'terminal.on': { low: -0.5, high: 3 }, 'load.on': { low: -0.5, high: 0.4 }, ...cold(undefined, shortedShare), ...off }),
    row('card-without-load-supply', 3, { ...dead }),
    row('output-dark', 3, { 'led.on': no, ...dead }),
    row('turns-shorted', 2, {
      'led.on': yes,
      'terminal.on': driven,
      'load.on': { low: 0.5, high },
      current: { low: 1.25 * currentMa },
      ...cold(shortedShare, lowShare),
      ...off,
    }),
    row('output-overloaded', 2, { 'terminal.on': { low: 2.5, high }, 'load.on': { low: 2.5, high }, current: { low: 1000 * ratedA }, ...off }),
    row('line-drops', 2, {
      'led.on': yes,
      'terminal.on': driven,
      'load.on': { low: 0.5, high: fed.low ?? 0 },
      current: { low: -1, high: currentMa },
      ...good,
      ...off,
    }),
    row('output-supply-low', 2, {
      supply: { high: leastShare * ratedV },
      'terminal.on': { low: 0.5, high: leastShare * ratedV },
      'load.on': { low: 0.5, high: leastShare * ratedV },
      ...good,
      ...off,
    }),
    row('suppressor-conducts', 1, { 'terminal.on': { low: 0.4, high: 3 }, 'load.on': { low: 0.4, high: 2.5 }, ...off }),
    row('load-of-higher-resistance', 1, {
      'led.on': yes,
      'terminal.on': driven,
      'load.on': fed,
      current: { low: 0, high: 0.85 * currentMa },
      ...cold(highShare, openShare),
      ...off,
    }),
    row('output-stays-on', 2, { 'terminal.on': driven, 'load.on': fed, 'terminal.off': driven, 'load.off': fed, ...good }),
    row('output-sinks', 0.5, { 'led.on': yes, ...dead }),
    row('output-dark', 0.5, { 'led.on': yes, 'terminal.on': weak, ...good, ...off }),
  ]
}

import type { Stretch } from './row.ts'

/** What may be wrong with each signal that is no switched input, and the stretch of the path that is suspected. */
const suspectedBy = {
  'loop-open': 'signal-wire',
  'transmitter-reports-low': 'device',
  'loop-starved': 'supply',
  'transmitter-reports-high': 'device',
  'transmitter-shorted': 'signal-wire',
  'loop-fed-twice': 'terminal',
  'voltage-open': 'signal-wire',
  'voltage-reversed': 'terminal',
  'voltage-touches-supply': 'signal-wire',
  'voltage-common-open': 'terminal',
  'voltage-loaded': 'card',
  'voltage-offset': 'terminal',
  'element-open': 'signal-wire',
  'element-shorted': 'signal-wire',
  'thermocouple-open': 'signal-wire',
  'thermocouple-shorted': 'signal-wire',
  'thermocouple-reversed': 'terminal',
  'thermocouple-type-wrong': 'card',
  'thermocouple-of-other-type': 'device',
  'thermocouple-cable-wrong': 'signal-wire',
  'command-missing': 'address',
  'output-dark': 'card',
  'card-without-load-supply': 'card',
  'output-sinks': 'card',
  'output-stays-on': 'card',
  'output-overloaded': 'device',
  'load-shorted': 'device',
  'suppressor-conducts': 'device',
  'load-wire-open': 'signal-wire',
  'line-drops': 'signal-wire',
  'load-open': 'device',
  'turns-shorted': 'device',
  'load-of-higher-resistance': 'device',
  'output-supply-low': 'supply',
  'winding-open': 'device',
  'windings-differ': 'device',
  'phase-missing': 'supply',
  'phases-differ': 'supply',
  'motor-overloaded': 'target',
  'encoder-without-supply': 'supply',
  'encoder-stands': 'target',
  'channel-a-open': 'signal-wire',
  'channel-b-open': 'signal-wire',
  'channels-swapped': 'terminal',
  'edges-set-wrong': 'card',
  'pulses-lost': 'card',
  'pulses-added': 'signal-wire',
  'encoder-of-other-resolution': 'device',
  'turns-at-other-speed': 'target',
  'flow-none': 'target',
  'flow-without-supply': 'supply',
  'flow-sensor-dead': 'device',
  'flow-wire-open': 'signal-wire',
  'flow-not-counted': 'address',
  'flow-factor-wrong': 'address',
  'flow-pulses-lost': 'card',
  'flow-pulses-added': 'signal-wire',
  'flow-does-not-stop': 'target',
  'flow-otherwise': 'target',
  'flow-of-other-meter': 'device',
} as const satisfies Record<string, Stretch>

export type CauseId = keyof typeof suspectedBy

/** What may be wrong with a signal; its words stand in `words/`. */
export interface Cause {
  id: CauseId
  suspected: Stretch
}

export const named = (...ids: CauseId[]): Cause[] => ids.map((id) => ({ id, suspected: suspectedBy[id] }))

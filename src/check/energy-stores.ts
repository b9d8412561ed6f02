import type { Computed, Result } from '../energy/law.ts'
import { energyOfStore, waitOfStore } from '../energy/store.ts'
import { inputTexts } from '../energy/trade-units.ts'
import type { EnergyStore } from '../model/energy-store.ts'
import type { EnergySource, Machine } from '../model/machine.ts'

export interface StoreResult {
  store: EnergyStore
  /** In joule; undefined for a kind without a law. */
  energy: Result | undefined
  /** In seconds; undefined where only an act makes it harmless. */
  wait: Result | undefined
}

/** What each store of a source comes to. None for a source that is said to store nothing: that is reported. */
export function storeResults({ stored, stores }: EnergySource): StoreResult[] {
  return stored ? stores.map((store) => ({ store, energy: energyOfStore(store), wait: waitOfStore(store) })) : []
}

/** The sources that have something to compute with. */
export const storing = ({ energy }: Machine) =>
  energy.map((source) => ({ source, results: storeResults(source) })).filter(({ results }) => results.length > 0)

/** `t = R·C·ln(V₀/V), with C = 470 µF, R = 220 kΩ`. */
export function derivation(computed: Computed): string {
  return `${computed.formula}, with ${inputTexts(computed).join(', ').replaceAll('\u202f', ' ')}`
}

/** Seconds for a message, never below the exact value: `252.3 s`. */
export const secondsText = (exactS: number) => `${Math.ceil(exactS * 10) / 10} s`

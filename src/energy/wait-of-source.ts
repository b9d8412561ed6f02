import { type Computed, type Input, isComputed, type NotComputed } from './law.ts'
import { roundedUpS } from './round-up.ts'
import { type Store, waitOfStore } from './store.ts'

/** What this needs of an energy source. */
export interface StoringSource {
  stored: boolean
  /** Several drives on a bus, several hot bodies: the slowest counts. */
  stores: readonly Store[]
  /** The author's own waiting time in seconds. */
  waitS: number | undefined
}

export interface Wait {
  /** A computed time is rounded up by `roundedUpS`; a stated one is as its author wrote it. */
  seconds: number
  /** `computed` from the store, or `stated` by the author (`waitBasis` says from what). The longer one counts. */
  basis: 'computed' | 'stated'
  /** Of the computed time; absent, and no inputs, where only a stated one is there. */
  formula: string | undefined
  inputs: readonly Input[]
}

/**
 * How long a source must be left before it is harmless. `notComputed` names what is missing: `store` where nothing is
 * known of what it stores. Undefined where there is nothing to wait for: it stores nothing, or only an act makes it
 * harmless (a raised load, a spring, a receiver that is vented).
 */
export function waitOfSource({ stored, stores, waitS }: StoringSource): Wait | NotComputed | undefined {
  if (!stored) return undefined
  const slowest = slowestOf(stores)
  const stated: Wait | undefined = waitS === undefined ? undefined : { seconds: waitS, basis: 'stated', formula: undefined, inputs: [] }
  if (slowest && isComputed(slowest)) {
    const { value, formula, inputs } = slowest
    return stated && stated.seconds >= value ? { ...stated, formula, inputs } : { seconds: roundedUpS(value), basis: 'computed', formula, inputs }
  }
  if (!stated) return slowest ?? (stores.length === 0 ? { notComputed: ['store'] } : undefined)
  const longest = longestOf(stores)
  return longest && longest.value > stated.seconds
    ? { seconds: roundedUpS(longest.value), basis: 'computed', formula: longest.formula, inputs: longest.inputs }
    : stated
}

/** The longest time of all stores; what is missing or impossible in any of them hides which that is. */
export function slowestOf(stores: readonly Store[]): Computed | NotComputed | undefined {
  const waits = stores.map(waitOfStore)
  const missing = waits.flatMap((wait) => (wait === undefined || isComputed(wait) ? [] : 'notComputed' in wait ? wait.notComputed : wait.of))
  return missing.length > 0 ? { notComputed: [...new Set(missing)] } : longestOf(stores)
}

function longestOf(stores: readonly Store[]): Computed | undefined {
  const computed = stores.map(waitOfStore).flatMap((wait) => (wait && isComputed(wait) ? [wait] : []))
  return computed.reduce<Computed | undefined>((longest, it) => (longest && longest.value >= it.value ? longest : it), undefined)
}

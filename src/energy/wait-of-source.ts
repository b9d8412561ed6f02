import { isComputed, type NotComputed } from '../law/law.ts'
import type { Computed, Input, Result } from './law.ts'
import { roundedUpS } from './round-up.ts'
import { type Store, type StoreKind, waitOfStore } from './store.ts'

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
  /** What takes so long: a hot body cools by itself, and may be drained before. Absent where only a stated time is there. */
  of: StoreKind | undefined
  /** Of the computed time; absent, and no inputs, where only a stated one is there. */
  formula: string | undefined
  inputs: readonly Input[]
}

/**
 * How long a source must be left before it is harmless. `notComputed` names what is missing: `store` where nothing is
 * known of what it stores. Undefined where there is nothing to wait for: it stores nothing, or only an act makes it
 * harmless (a raised load, a spring).
 */
export function waitOfSource({ stored, stores, waitS }: StoringSource): Wait | NotComputed | undefined {
  if (!stored) return undefined
  const results = stores.map((store) => ({ of: store.kind, wait: waitOfStore(store) }))
  const missing = results.flatMap(({ wait }) => (wait === undefined || isComputed(wait) ? [] : 'notComputed' in wait ? wait.notComputed : wait.of))
  if (waitS === undefined) {
    // What is missing of any of them hides which is the slowest.
    if (missing.length > 0) return { notComputed: [...new Set(missing)] }
    if (stores.length === 0) return { notComputed: ['store'] }
  }
  const slowest = slowestOf(results)
  if (!slowest) return waitS === undefined ? undefined : { seconds: waitS, basis: 'stated', of: undefined, formula: undefined, inputs: [] }
  const { value, formula, inputs } = slowest.wait
  const isStated = waitS !== undefined && waitS >= value
  return { seconds: isStated ? waitS : roundedUpS(value), basis: isStated ? 'stated' : 'computed', of: slowest.of, formula, inputs }
}

/** What takes longest, of all that could be computed; the first of equals. */
export function slowestOf<T extends { wait: Result | undefined }>(results: readonly T[]): (T & { wait: Computed }) | undefined {
  const computed = results.flatMap((it) => (it.wait && isComputed(it.wait) ? [{ ...it, wait: it.wait }] : []))
  return computed.toSorted((a, b) => b.wait.value - a.wait.value)[0]
}

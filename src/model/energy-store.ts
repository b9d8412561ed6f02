import type { Located, Place } from '../source/place.ts'
import type { StoreInput, StoreKind, StoreValue } from './schema/store.ts'

/** One thing of a source that holds energy. */
export interface EnergyStore {
  kind: StoreKind
  /** Where its kind stands. */
  place: Place
  /** The device that holds it. */
  of: Located<string> | undefined
  /** What its author gave, in SI units. Pressures are gauge pressures. */
  given: Readonly<Partial<Record<StoreValue, number>>>
  /** The same as written: `{ capacitance: { value: 940, unit: µF } }`. */
  quantities: Readonly<Record<string, { value: number; unit: Located<string> }>>
  surface: Extract<StoreInput, { kind: 'hot-body' }>['surface']
  contactS: number | undefined
  liquid: Extract<StoreInput, { kind: 'hot-body' }>['liquid']
  type: Extract<StoreInput, { kind: 'accumulator' }>['type']
  makersRatio: number | undefined
}

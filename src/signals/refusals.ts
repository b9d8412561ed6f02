/** What must not be computed, because every number that came out would be a guess. */
export type RefusalId =
  | 'material-without-factor'
  | 'target-smaller-than-standard'
  | 'no-assured-distance'
  | 'retro-reflective-gain'
  | 'diffuse-gain'
  | 'alternating-current-coil'
  | 'coil-with-electronics'
  | 'outside-class-range'
  | 'safety-approval'
  | 'pnp-on-sourcing-input'
  | 'npn-on-sinking-input'
  | 'not-this-pairing'

/** A number that is asked for and not given; `words/` holds the reason. */
export interface Refused {
  refused: RefusalId
}

export const isRefused = (result: object): result is Refused => 'refused' in result

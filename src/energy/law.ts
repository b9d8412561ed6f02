import { type Computed as AnyComputed, type Input as AnyInput, type Result as AnyResult, computed, type Law } from '../law/law.ts'
import { type InputName, inputKinds } from './inputs.ts'

/** What a law of energy asks for and gives. */
export type Input = AnyInput<InputName>
export type Computed = AnyComputed<InputName>
export type Result = AnyResult<InputName>

/** Every quantity is named, and may be missing: none is left out by oversight. */
export type Given<K extends InputName> = { readonly [P in K]: number | undefined }

/** A law of energy as a function. */
export function law<K extends InputName>(own: Law<K, InputName>) {
  return (given: Given<K>): Result => computed(inputKinds, own, given)
}

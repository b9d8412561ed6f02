import { type Computed, computed, type Law, type Quantity, type Result } from '../law/law.ts'
import { type InputName, inputKinds } from './inputs.ts'

export type Given<K extends InputName> = { readonly [P in K]?: Quantity | undefined }

/** A law of signals as a function; its inputs may say what they rest on. */
export function law<K extends InputName>(own: Law<K, InputName>) {
  return (given: Given<K>): Result => computed(inputKinds, own, given)
}

/** What a page says of a computed value: whether a generic limit, or one that nobody has looked up, is in it. */
export function restsOn({ inputs }: Computed): { generic: boolean; fromMemory: boolean } {
  return { generic: inputs.some(({ basis }) => basis === 'generic'), fromMemory: inputs.some(({ fromMemory }) => fromMemory === true) }
}

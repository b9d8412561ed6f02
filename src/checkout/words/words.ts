import type { LoopState } from '../../signals/loop-current.ts'
import type { Verdict } from '../../signals/verdict.ts'
import type { ExpectationPoint, ExpectationState, Measured } from '../expectation.ts'
import { en } from './en.ts'
import { es } from './es.ts'

/** Everything that `checkout/` says to a reader, in one language. */
export interface CheckoutWords {
  measured: Readonly<Record<Measured, string>>
  points: Readonly<Record<ExpectationPoint, string>>
  states: Readonly<Record<ExpectationState, string>>
  verdicts: Readonly<Record<Verdict, string>>
  loop: Readonly<Record<LoopState, string>>
  to: string
  atMost: string
  atLeast: string
  usually: string
  generic: string
  fromMemory: string
  notComputed: string
  readings: string
  meaning: string
  coldJunction: string
  noPlace: string
  faults: string
  notAll: string
  next: string
}

const tables: Readonly<Record<string, CheckoutWords>> = { en, es }

/** The words of a language; undefined for one without a table. */
export const checkoutWords = (language: string): CheckoutWords | undefined => (Object.hasOwn(tables, language) ? tables[language] : undefined)

import { canBe, type InputName, inputKinds, type QuantityName } from './inputs.ts'

/** What a number rests on. `generic`: a usual value of the trade, for want of a data sheet. */
export type Basis = 'standard' | 'data sheet' | 'measured' | 'generic'

/** A number with what it rests on. A plain number says nothing of it. */
export interface Stated {
  value: number
  basis: Basis
  /** Nobody has held the number against its source. */
  fromMemory?: true
  /** Document and clause, or where else it comes from. */
  source?: string
}

export type Quantity = number | Stated
export type Given<K extends InputName> = { readonly [P in K]?: Quantity | undefined }

export interface Input extends Partial<Omit<Stated, 'value'>> {
  name: InputName
  letter: string
  value: number
  unit: string
}

/** A value with all that a reader needs to follow it. */
export interface Computed {
  value: number
  unit: string
  /** In the letters of `inputs`. */
  formula: string
  inputs: readonly Input[]
}

/** What is missing, by the name of the quantity. Nothing is ever put in its place. */
export interface NotComputed {
  notComputed: readonly QuantityName[]
}

/** Why these inputs cannot be, and which they are. */
export interface Impossible {
  impossible: string
  of: readonly QuantityName[]
}

export type Result = Computed | NotComputed | Impossible

type Values<K extends InputName> = { readonly [P in K]: number }

interface Law<K extends InputName> {
  formula: string
  /** Empty where the unit is the caller's. */
  unit: string
  inputs: readonly K[]
  /** Why inputs that can be each alone cannot be together. */
  conflict?(values: Values<K>): string | undefined
  value(values: Values<K>): number
}

export const isComputed = (result: Result): result is Computed => 'value' in result

export const numberOf = (quantity: Quantity): number => (typeof quantity === 'number' ? quantity : quantity.value)

/**
 * A law as a function. It gives a finite value, or says what is missing or impossible; it never throws. As in
 * `energy/`, with what each input rests on besides.
 */
export function law<K extends InputName>({ formula, unit, inputs, conflict, value }: Law<K>) {
  return (given: Given<K>): Result => {
    const missing = inputs.filter((name) => given[name] === undefined)
    if (missing.length > 0) return { notComputed: missing.map((name) => inputKinds[name].quantity) }
    const used = inputs.map((name) => inputOf(name, given[name] ?? Number.NaN))
    const wrong = used.find((input) => !canBe(input.name, input.value))
    if (wrong) return notThat(wrong.name)
    const values = Object.fromEntries(used.map((input) => [input.name, input.value])) as Values<K>
    const of = inputs.map((name) => inputKinds[name].quantity)
    const reason = conflict?.(values)
    if (reason !== undefined) return { impossible: reason, of }
    const result = value(values)
    if (!Number.isFinite(result)) return { impossible: 'the values are too large or too small to compute with', of }
    return { value: result, unit, formula, inputs: used }
  }
}

function notThat(name: InputName): Impossible {
  const { quantity, takes } = inputKinds[name]
  return { impossible: `\`${quantity}\` must be ${takes}`, of: [quantity] }
}

function inputOf(name: InputName, quantity: Quantity): Input {
  const { letter, unit } = inputKinds[name]
  return typeof quantity === 'number' ? { name, letter, value: quantity, unit } : { name, letter, unit, ...quantity }
}

/** What a page says of a computed value: whether a generic limit, or one that nobody has looked up, is in it. */
export function restsOn({ inputs }: Computed): { generic: boolean; fromMemory: boolean } {
  return { generic: inputs.some(({ basis }) => basis === 'generic'), fromMemory: inputs.some(({ fromMemory }) => fromMemory === true) }
}

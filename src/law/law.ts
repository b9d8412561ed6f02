import { canBe, type InputKind } from './input-kind.ts'

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

export interface Input<Known extends string = string> extends Partial<Omit<Stated, 'value'>> {
  name: Known
  letter: string
  value: number
  unit: string
}

/** A value with all that a reader needs to follow it. */
export interface Computed<Known extends string = string> {
  value: number
  unit: string
  /** In the letters of `inputs`. */
  formula: string
  inputs: readonly Input<Known>[]
}

/** What is missing, by the name of the quantity. Nothing is ever put in its place. */
export interface NotComputed {
  notComputed: readonly string[]
}

/** Why these inputs cannot be, and which they are. */
export interface Impossible {
  impossible: string
  of: readonly string[]
}

export type Result<Known extends string = string> = Computed<Known> | NotComputed | Impossible

type Values<K extends string> = { readonly [P in K]: number }

/** A formula over the quantities `K`, of those that `Known` names. */
export interface Law<K extends Known, Known extends string> {
  formula: string
  /** Empty where the unit is the caller's. */
  unit: string
  inputs: readonly K[]
  /** Constants of nature and of standards that the formula holds: shown behind the inputs. */
  constants?: Readonly<Partial<Record<Known, number>>>
  /** Why inputs that can be each alone cannot be together. */
  conflict?(values: Values<K>): string | undefined
  value(values: Values<K>): number
}

export const isComputed = <Known extends string>(result: Result<Known>): result is Computed<Known> => 'value' in result

export const numberOf = (quantity: Quantity): number => (typeof quantity === 'number' ? quantity : quantity.value)

/** What a law makes of what is given: a finite value, or what is missing or impossible. It never throws. */
export function computed<K extends Known, Known extends string>(
  kinds: Readonly<Record<Known, InputKind>>,
  { formula, unit, inputs, constants, conflict, value }: Law<K, Known>,
  given: { readonly [P in K]?: Quantity | undefined },
): Result<Known> {
  const quantities = inputs.map((name) => kinds[name].quantity)
  const missing = inputs.filter((name) => given[name] === undefined)
  if (missing.length > 0) return { notComputed: missing.map((name) => kinds[name].quantity) }
  const used = inputs.map((name) => inputOf(name, kinds[name], given[name] ?? Number.NaN))
  const wrong = inputs.find((name, index) => !canBe(kinds[name], used[index]?.value ?? Number.NaN))
  if (wrong !== undefined) return { impossible: `\`${kinds[wrong].quantity}\` must be ${kinds[wrong].takes}`, of: [kinds[wrong].quantity] }
  const values = Object.fromEntries(used.map((input) => [input.name, input.value])) as Values<K>
  const reason = conflict?.(values)
  if (reason !== undefined) return { impossible: reason, of: quantities }
  const result = value(values)
  if (!Number.isFinite(result)) return { impossible: 'the values are too large or too small to compute with', of: quantities }
  const fixed = (Object.entries(constants ?? {}) as [Known, number][]).map(([name, number]) => inputOf(name, kinds[name], number))
  return { value: result, unit, formula, inputs: [...used, ...fixed] }
}

function inputOf<Known extends string>(name: Known, { letter, unit }: InputKind, quantity: Quantity): Input<Known> {
  return typeof quantity === 'number' ? { name, letter, value: quantity, unit } : { name, letter, unit, ...quantity }
}

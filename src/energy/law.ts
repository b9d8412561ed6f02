import { canBe, type InputName, inputKinds } from './inputs.ts'

export interface Input {
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
  notComputed: readonly string[]
}

/** Why these inputs cannot be, and which they are. */
export interface Impossible {
  impossible: string
  of: readonly string[]
}

export type Result = Computed | NotComputed | Impossible

export type Given<K extends InputName> = { readonly [P in K]: number | undefined }
type Values<K extends InputName> = { readonly [P in K]: number }

interface Law<K extends InputName> {
  formula: string
  unit: string
  inputs: readonly K[]
  /** Constants of nature and of standards that the formula holds: shown beside the inputs. */
  constants?: Readonly<Partial<Record<InputName, number>>>
  /** Why inputs that can be each alone cannot be together. */
  conflict?(values: Values<K>): string | undefined
  value(values: Values<K>): number
}

export const isComputed = (result: Result): result is Computed => 'value' in result

/** A law as a function. It gives a finite value, or says what is missing or impossible; it never throws. */
export function law<K extends InputName>({ formula, unit, inputs, constants = {}, conflict, value }: Law<K>) {
  return (given: Given<K>): Result => {
    const missing = inputs.filter((name) => given[name] === undefined)
    if (missing.length > 0) return { notComputed: missing.map((name) => inputKinds[name].quantity) }
    const values = given as Values<K>
    const wrong = inputs.find((name) => !canBe(name, values[name]))
    if (wrong !== undefined)
      return { impossible: `\`${inputKinds[wrong].quantity}\` must be ${inputKinds[wrong].takes}`, of: [inputKinds[wrong].quantity] }
    const of = inputs.map((name) => inputKinds[name].quantity)
    const reason = conflict?.(values)
    if (reason !== undefined) return { impossible: reason, of }
    const result = value(values)
    if (!Number.isFinite(result)) return { impossible: 'the values are too large or too small to compute with', of }
    const used = [...inputs.map((name) => [name, values[name]] as const), ...(Object.entries(constants) as [InputName, number][])]
    return { value: result, unit, formula, inputs: used.map(([name, number]) => inputOf(name, number)) }
  }
}

function inputOf(name: InputName, value: number): Input {
  const { letter, unit } = inputKinds[name]
  return { name, letter, value, unit }
}

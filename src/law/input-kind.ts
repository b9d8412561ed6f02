/** What a value may be for a law, by the words that a message says it in. */
const ranges = {
  'any number': () => true,
  'more than zero': (value: number) => value > 0,
  'zero or more': (value: number) => value >= 0,
  'more than one': (value: number) => value > 1,
  'one or more': (value: number) => value >= 1,
  'more than zero and at most one': (value: number) => value > 0 && value <= 1,
  'above −273.15': (value: number) => value > -273.15,
} as const

/** A quantity that a law asks for. */
export interface InputKind {
  /** Its name without the unit, as data and messages call it. */
  quantity: string
  /** The letter that stands for it in the formulas. */
  letter: string
  /** The unit of the value. `1` for a plain number; empty where the caller's range says it. */
  unit: string
  takes: keyof typeof ranges
}

export const aboveZero = (quantity: string, letter: string, unit: string): InputKind => ({ quantity, letter, unit, takes: 'more than zero' })
export const fromZero = (quantity: string, letter: string, unit: string): InputKind => ({ quantity, letter, unit, takes: 'zero or more' })

/** Whether a law can take the value. */
export const canBe = ({ takes }: InputKind, value: number): boolean => Number.isFinite(value) && ranges[takes](value)

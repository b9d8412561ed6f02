/**
 * The identification letters of ANSI/ISA-5.1-2009, by where they stand. The letters that the standard leaves to the
 * builder are in no table: C D G M N O in first place, B and N after it. Deviation (`D` after an alarm or a switch),
 * totalise (`Q` at the end) and high-high-high are from memory.
 */
export const variables = {
  A: 'analysis',
  B: 'burner',
  E: 'voltage',
  F: 'flow',
  H: 'hand',
  I: 'current',
  J: 'power',
  K: 'time',
  L: 'level',
  P: 'pressure',
  Q: 'quantity',
  R: 'radiation',
  S: 'speed',
  T: 'temperature',
  U: 'multivariable',
  V: 'vibration',
  W: 'weight',
  X: 'unclassified',
  Y: 'event',
  Z: 'position',
} as const

/** What a letter right after the first one makes of the variable. */
export const modifiers = {
  D: 'differential',
  F: 'ratio',
  K: 'rate-of-change',
  Q: 'totalised',
  S: 'safety',
  X: 'axis-x',
  Y: 'axis-y',
  Z: 'axis-z',
} as const

/** What a device does: readout, then output. */
export const functions = {
  A: 'alarm',
  C: 'control',
  E: 'primary-element',
  G: 'gauge',
  I: 'indicate',
  J: 'scan',
  K: 'control-station',
  L: 'light',
  O: 'orifice',
  P: 'test-point',
  Q: 'totalise',
  R: 'record',
  S: 'switch',
  T: 'transmit',
  U: 'multifunction',
  V: 'valve',
  W: 'well',
  X: 'unclassified-function',
  Y: 'compute',
  Z: 'driver',
} as const

/** At which end of the variable a device acts. */
export const ends = {
  H: 'high',
  HH: 'high-high',
  HHH: 'high-high-high',
  M: 'middle',
  L: 'low',
  LL: 'low-low',
  LLL: 'low-low-low',
  O: 'open',
  C: 'closed',
  D: 'deviation',
} as const

type ValueOf<T> = T[keyof T]

export type IsaMeaning =
  | ValueOf<typeof variables>
  | ValueOf<typeof modifiers>
  | ValueOf<typeof functions>
  | ValueOf<typeof ends>
  | 'safety-instrumented'

/** Letters that the standard leaves to the builder, and those that a drawing's legend explains. */
export const ownFirst = ['C', 'D', 'G', 'M', 'N', 'O', 'X'] as const
export const ownSucceeding = ['B', 'N', 'X'] as const

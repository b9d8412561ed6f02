import type { Stated } from '../law/law.ts'

export type CoreColour = 'BN' | 'WH' | 'BU' | 'BK' | 'GY'
export type SensorWiring = '3-wire NO' | '3-wire NC' | '4-wire'

export interface Pin {
  pin: 1 | 2 | 3 | 4 | 5
  core: CoreColour
  carries: 'L+' | 'L−' | 'NO output' | 'NC output'
  basis: Stated['basis']
  fromMemory?: true
}

const standard = { basis: 'standard' } as const
const memory = { basis: 'standard', fromMemory: true } as const

/**
 * Pins of d.c. proximity switches on M12, coding A. A 2-wire switch uses 1-4 or 3-4: its data sheet says which.
 * Sources: IEC 60947-5-2, connections; IEC 61076-2-101, coding A.
 */
export const connectorPins: Readonly<Record<SensorWiring, readonly Pin[]>> = {
  '3-wire NO': [
    { pin: 1, core: 'BN', carries: 'L+', ...standard },
    { pin: 3, core: 'BU', carries: 'L−', ...standard },
    { pin: 4, core: 'BK', carries: 'NO output', ...standard },
  ],
  '3-wire NC': [
    { pin: 1, core: 'BN', carries: 'L+', ...standard },
    { pin: 3, core: 'BU', carries: 'L−', ...standard },
    { pin: 2, core: 'BK', carries: 'NC output', ...memory },
  ],
  '4-wire': [
    { pin: 1, core: 'BN', carries: 'L+', ...standard },
    { pin: 2, core: 'WH', carries: 'NC output', ...memory },
    { pin: 3, core: 'BU', carries: 'L−', ...standard },
    { pin: 4, core: 'BK', carries: 'NO output', ...memory },
  ],
}

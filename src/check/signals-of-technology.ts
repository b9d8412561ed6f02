import type { Signal } from '../model/machine.ts'
import type { Technology } from '../model/schema/common.ts'

type SignalType = Signal['type']['value']

const switching: readonly SignalType[] = ['DI', 'SDI', 'CNT', 'ENC', 'AI']
const contact: readonly SignalType[] = ['DI', 'SDI']
const acting: readonly SignalType[] = ['DO', 'SDO', 'AO']

/**
 * The types of which a device of a technology has at least one. Common practice. What may be wired around the
 * controller in any way (drives, contactors, isolators, motors) is not listed.
 */
export const signalsOfTechnology: Readonly<Partial<Record<Technology, readonly SignalType[]>>> = {
  inductive: switching,
  capacitive: switching,
  namur: switching,
  'photoelectric-through-beam': switching,
  'photoelectric-retro-reflective': switching,
  'photoelectric-diffuse': switching,
  'magnetic-cylinder-switch': switching,
  'limit-switch': switching,
  'pressure-switch': switching,
  'float-switch': switching,
  'flow-switch': switching,
  'temperature-switch': switching,
  'current-loop': ['AI', 'AO'],
  'voltage-signal': ['AI', 'AO'],
  pt100: ['RTD', 'AI'],
  thermocouple: ['TC', 'AI'],
  thermistor: ['RTD', 'AI', 'DI', 'SDI'],
  'pulse-flow': ['CNT', 'DI', 'AI', 'ENC'],
  encoder: ['ENC', 'CNT', 'DI', 'SDI', 'AI'],
  'safety-interlock': contact,
  'emergency-stop': contact,
  'light-curtain': contact,
  'push-button': contact,
  'selector-switch': [...contact, 'AI'],
  'solenoid-valve': acting,
  lamp: acting,
}

/** Devices that the controller reads or moves itself. Safety devices, buttons and lamps may be wired to relays, an encoder to its drive. */
export const wiredToController: ReadonlySet<Technology> = new Set<Technology>([
  'inductive',
  'capacitive',
  'namur',
  'photoelectric-through-beam',
  'photoelectric-retro-reflective',
  'photoelectric-diffuse',
  'magnetic-cylinder-switch',
  'limit-switch',
  'pressure-switch',
  'float-switch',
  'flow-switch',
  'current-loop',
  'voltage-signal',
  'pt100',
  'thermocouple',
  'pulse-flow',
  'solenoid-valve',
])

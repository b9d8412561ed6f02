import { faultTable } from '../../signals/fault/fault-table.ts'
import { type Indicator, type Point, targetStates } from '../../signals/fault/row.ts'
import { isRefused } from '../../signals/refusals.ts'
import { unitOf } from '../../signals/unit.ts'
import { type Field, type MeterSheet, placeOfPoint } from './meter-sheet.ts'

/** In the order in which the signal takes them. */
const points: readonly Point[] = [
  'supply-at-sensor',
  'feed-at-sensor',
  'output-at-sensor',
  'across-sensor',
  'brown-to-common',
  'loop-current',
  'input-at-card',
  'input-to-cabinet',
]
const indicators: readonly Indicator[] = ['output-led', 'card-led', 'other-led', 'fault-led', 'tag']

/** What is read of another instrument, and is held against nothing. */
const given: ReadonlySet<Field['name']> = new Set(['reference', 'referenceValue', 'coldJunction', 'shaftSpeed', 'flowReference', 'leads'])
export const isGiven = ({ name }: Field): boolean => given.has(name)

/** Every reading that a device asks for. */
export function fieldsOf(sheet: MeterSheet): Field[] {
  const others = sheet.expected.map(
    ({ at, name, state, unit }, index): Field => ({ id: `value${index}`, name: 'value', at, unit, said: { name, state } }),
  )
  return [...ofKind(sheet), ...others]
}

function ofKind(sheet: MeterSheet): Field[] {
  switch (sheet.kind) {
    case 'switched': {
      const supply: Field = { id: 'supply', name: 'supply', at: 'supply', unit: 'V' }
      const read = points.filter((point) => healthyOf(sheet)?.readings[point])
      const fields = read.flatMap((name) =>
        targetStates.map((state) => ({ id: `${name}.${state}`, name, at: placeOfPoint[name], unit: name === 'loop-current' ? 'mA' : 'V', state })),
      )
      return fields.length === 0 || sheet.circuit.output === 'namur' ? fields : [supply, ...fields]
    }
    case 'loop':
      return [
        { id: 'loop-current', name: 'loop-current', at: 'terminal', unit: 'mA' },
        ...(sheet.cardOhm === undefined ? [] : [{ id: 'acrossCard', name: 'acrossCard', at: 'card', unit: 'V' } as const]),
      ]
    case 'platinum':
      return [
        { id: 'element', name: 'element', at: 'terminal', unit: 'Ω' },
        { id: 'leads', name: 'leads', at: 'terminal', unit: 'Ω' },
        { id: 'reference', name: 'reference', at: 'device', unit: '°C' },
      ]
    case 'voltage':
      return [
        { id: 'voltage', name: 'voltage', at: 'terminal', unit: 'V' },
        ...(unitOf(sheet.unit) ? [{ id: 'referenceValue', name: 'referenceValue', at: 'device', unit: sheet.unit } as const] : []),
      ]
    case 'thermocouple':
      return [
        { id: 'thermovoltage', name: 'thermovoltage', at: 'terminal', unit: 'mV' },
        { id: 'coldJunction', name: 'coldJunction', at: 'terminal', unit: '°C' },
        { id: 'couple', name: 'couple', at: 'terminal', unit: 'Ω' },
        { id: 'shown', name: 'shown', at: 'address', unit: '°C' },
        { id: 'reference', name: 'reference', at: 'device', unit: '°C' },
      ]
    case 'thermistor':
      return [
        { id: 'element', name: 'element', at: 'terminal', unit: 'Ω' },
        { id: 'reference', name: 'reference', at: 'device', unit: '°C' },
      ]
    case 'output':
      return sheet.circuit.hasElectronics ? outputFields.filter(({ id }) => id !== 'cold') : [...outputFields]
    case 'encoder':
      return [...encoderFields]
    case 'flow':
      return [...flowFields]
    case 'motor':
      return [...motorFields]
    case 'plain':
      return []
  }
}

/** Ids are those of the fault rows of an output. */
const outputFields: readonly Field[] = [
  { id: 'supply', name: 'supply', at: 'supply', unit: 'V' },
  { id: 'terminal.on', name: 'outputTerminal', at: 'terminal', unit: 'V', state: 'target' },
  { id: 'terminal.off', name: 'outputTerminal', at: 'terminal', unit: 'V', state: 'none' },
  { id: 'load.on', name: 'atLoad', at: 'pin', unit: 'V', state: 'target' },
  { id: 'load.off', name: 'atLoad', at: 'pin', unit: 'V', state: 'none' },
  { id: 'current', name: 'loadCurrent', at: 'terminal', unit: 'mA' },
  { id: 'cold', name: 'coldLoad', at: 'device', unit: 'Ω' },
]
/** Ids are those of the fault rows of an encoder; the speed is what they are computed for. */
const encoderFields: readonly Field[] = [
  { id: 'speed', name: 'shaftSpeed', at: 'device', unit: 'min⁻¹' },
  { id: 'supply', name: 'encoderSupply', at: 'pin', unit: 'V' },
  { id: 'channelA', name: 'channelA', at: 'terminal', unit: 'Hz' },
  { id: 'channelB', name: 'channelB', at: 'terminal', unit: 'Hz' },
  { id: 'counts', name: 'counts', at: 'address', unit: 'inc' },
]

/** Ids are those of the fault rows of a flow meter; the flow on a reference is what they are computed for. */
const flowFields: readonly Field[] = [
  { id: 'flow', name: 'flowReference', at: 'device', unit: 'l/min' },
  { id: 'supply', name: 'flowSupply', at: 'pin', unit: 'V' },
  { id: 'atMeter', name: 'pulsesAtMeter', at: 'pin', unit: 'Hz' },
  { id: 'atCard', name: 'pulsesAtCard', at: 'terminal', unit: 'Hz' },
  { id: 'stopped', name: 'pulsesStopped', at: 'terminal', unit: 'Hz' },
  { id: 'shown', name: 'flowShown', at: 'address', unit: 'l/min' },
]

const motorFields: readonly Field[] = [
  ...(['windingUv', 'windingVw', 'windingWu'] as const).map((name): Field => ({ id: name, name, at: 'device', unit: 'Ω' })),
  ...(['currentU', 'currentV', 'currentW'] as const).map((name): Field => ({ id: name, name, at: 'device', unit: 'A' })),
]

/** Every light that can be tapped. */
export function indicatorsOf(sheet: MeterSheet): Indicator[] {
  if (sheet.kind === 'output') return ['card-led', 'tag']
  if (sheet.kind !== 'switched') return []
  const table = faultTable(sheet.circuit)
  return isRefused(table) ? [] : indicators.filter((indicator) => table.some(({ lights }) => lights[indicator]))
}

/** The row of the fault table that a good circuit is in; undefined where there is no table. */
export function healthyOf(sheet: MeterSheet) {
  if (sheet.kind !== 'switched') return undefined
  const table = faultTable(sheet.circuit)
  return isRefused(table) ? undefined : table.find(({ id }) => id === 'healthy')
}

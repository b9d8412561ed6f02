import type { Stated } from '../law/law.ts'
import type { CheckoutTechnology } from '../model/schema/checkout-values.ts'
import { inputLimits } from '../signals/digital-input.ts'
import type { ContactSense, SwitchedCircuit } from '../signals/fault/circuit.ts'
import { type NamurLimits, namurLimits } from '../signals/namur.ts'
import { photoelectricOutput } from '../signals/photoelectric.ts'
import type { RefusalId } from '../signals/refusals.ts'
import { outputLimits, pairingRefusal, type SensorOutput } from '../signals/sensor-output.ts'
import { generic } from './expectation.ts'
import type { Values } from './values-of.ts'
import type { Wired } from './wiring.ts'

/** A signal as the fault table takes it, or why there is none. */
export interface CircuitOf {
  circuit?: SwitchedCircuit
  /** What checkout.yaml or the I/O list does not give, by its name there. */
  notComputed?: readonly string[]
  refused?: RefusalId
}

/** Technologies whose signal is a contact, or that has one beside what it does. */
const byNature: Readonly<Partial<Record<string, SensorOutput>>> = {
  'limit-switch': 'dry contact',
  'emergency-stop': 'dry contact',
  'push-button': 'dry contact',
  'selector-switch': 'dry contact',
  isolator: 'dry contact',
  drive: 'dry contact',
  contactor: 'dry contact',
  namur: 'namur',
} satisfies Partial<Record<CheckoutTechnology, SensorOutput>>

const switchedTypes: ReadonlySet<string> = new Set(['DI', 'SDI', 'CNT'])

/** Undefined where the signal is no switched input. */
export function circuitOf(wired: Wired): CircuitOf | undefined {
  const { device, signal, values, ofCard, supply, supplyV } = wired
  if (!signal || !switchedTypes.has(signal.type.value)) return undefined
  const output = outputOf(wired)
  const contact = contactOf(wired)
  const sense = output === 'namur' ? ('namur amplifier' as const) : ofCard.choice('sense')
  if (output === undefined || contact === undefined || sense === undefined) {
    const missing = { output, contact, sense }
    return { notComputed: (Object.keys(missing) as (keyof typeof missing)[]).filter((name) => missing[name] === undefined) }
  }
  const refused = pairingRefusal(output, sense)
  if (refused) return { refused: refused.refused }
  const type = ofCard.choice('inputType')
  const lowest = values.number('lowestSupplyV')?.value ?? supply?.lowestV?.value
  return {
    circuit: {
      output,
      contact,
      card: sense,
      supplyV,
      lowestSupplyV: lowest,
      dropV: output === 'namur' ? undefined : dropOf(values, output),
      limits: type && inputLimits[type],
      ...(device.technology?.value === 'namur' ? { namur: namurOf(values) } : {}),
    },
  }
}

export function outputOf({ device, values }: Wired): SensorOutput | undefined {
  return values.choice('output') ?? byNature[device.technology?.value ?? '']
}

/** The I/O list says it; else the light operation of a photoelectric sensor; else the data sheet. */
function contactOf({ device, signal, values }: Wired): ContactSense | undefined {
  if (signal?.contact) return signal.contact.value
  const kind = /^photoelectric-(through-beam|retro-reflective|diffuse)$/.exec(device.technology?.value ?? '')?.[1]
  const operate = values.choice('operate')
  if (kind !== undefined && operate !== undefined) {
    return photoelectricOutput(kind as Parameters<typeof photoelectricOutput>[0], operate, true) === 'on' ? 'NO' : 'NC'
  }
  return values.choice('contact')
}

export const dropOf = (values: Values, output: Exclude<SensorOutput, 'namur'>): Stated =>
  values.number('dropV') ?? asGeneric(outputLimits[output].dropV, output)
export const leakageOf = (values: Values, output: Exclude<SensorOutput, 'namur'>): Stated =>
  values.number('leakageMa') ?? asGeneric(outputLimits[output].leakageMa, output)

/** That a contact neither drops nor leaks is its nature, and no limit in place of a data sheet. */
const asGeneric = (limit: Stated, output: SensorOutput) => (output === 'dry contact' ? limit : generic(limit))

function namurOf(values: Values): NamurLimits {
  const of = (name: keyof NamurLimits) => values.number(name) ?? namurLimits[name]
  return {
    certainBreakMa: of('certainBreakMa'),
    possibleBreakMa: of('possibleBreakMa'),
    highImpedanceMa: of('highImpedanceMa'),
    lowImpedanceMa: of('lowImpedanceMa'),
    possibleShortMa: of('possibleShortMa'),
    certainShortMa: of('certainShortMa'),
  }
}

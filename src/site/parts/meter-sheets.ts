import type { Checkout } from '../../checkout/checkout-of.ts'
import type { Expectation } from '../../checkout/expectation.ts'
import { temperatureC } from '../../checkout/temperature.ts'
import { type Values, valuesOfCard, valuesOfDevice } from '../../checkout/values-of.ts'
import type { Device, Signal } from '../../model/machine.ts'
import type { OutputCircuit } from '../../signals/fault/output-rows.ts'
import { classRangesC } from '../../signals/platinum-class.ts'
import { analogueSignals } from '../../signals/scaling.ts'
import type { Context } from '../context.ts'
import type {
  EncoderSheet,
  FlowSheet,
  LoopSheet,
  MeterSheet,
  MotorSheet,
  OutputSheet,
  PlatinumSheet,
  ThermistorSheet,
  ThermocoupleSheet,
  VoltageSheet,
} from '../meter/meter-sheet.ts'
import { basisOfRest } from './expectation-rows.ts'
import { expectedOf } from './expected-of.ts'

/** Low and high end of the range of a signal, where the I/O list gives them. */
type Ends = { low?: number; high?: number }
/** A sheet before what else is read is put to it. */
type Bare<S extends MeterSheet> = Omit<S, 'expected'>

/** What a sheet asks for by itself, at the reference that is measured and not at points of the range. */
const asked: Readonly<Partial<Record<MeterSheet['kind'], readonly Expectation['measured'][]>>> = {
  thermocouple: ['thermovoltage'],
  thermistor: ['element-resistance'],
  encoder: ['frequency', 'counts-per-turn'],
  flow: ['frequency'],
  motor: ['winding-balance', 'load-current'],
  output: ['coil-resistance', 'load-current', 'output-voltage', 'load-voltage'],
}

/** The sheet of a device that is no switched input and no load. */
export function analogueSheet(context: Context, checkout: Checkout, device: Device, signal: Signal | undefined): MeterSheet {
  const values = valuesOfDevice(device, context.machine)
  const card = signal?.card && context.machine.cards.find((it) => it.card.value === signal.card?.value)
  const ofCard = valuesOfCard(card, context.machine)
  const [low, high] = [signal?.low?.value, signal?.high?.value]
  const unit = signal?.unit?.value ?? ''
  const isSignal = checkout.technology === 'current-loop' || checkout.technology === 'voltage-signal'
  const end = (value: number | undefined) => (value === undefined || isSignal ? value : temperatureC(value, unit))
  const [from, to] = [end(low), end(high)]
  const ends: Ends = { ...(from === undefined ? {} : { low: from }), ...(to === undefined ? {} : { high: to }) }
  const sheet = bareSheet(checkout, values, ofCard, ends, unit) ?? { kind: 'plain' }
  return { ...sheet, expected: expectedOf(context, remaining(sheet.kind, checkout.expectations)) }
}

const remaining = (kind: MeterSheet['kind'], all: readonly Expectation[]) => all.filter(({ measured }) => !asked[kind]?.includes(measured))

function bareSheet({ technology, expectations }: Checkout, values: Values, ofCard: Values, ends: Ends, unit: string) {
  switch (technology) {
    case 'current-loop':
    case 'voltage-signal':
      return signalSheet(values, ofCard, expectations, ends, unit)
    case 'pt100':
      return platinumSheet(values, ends)
    case 'thermocouple':
      return thermocoupleSheet(values, ofCard, ends)
    case 'thermistor':
      return thermistorSheet(values, ends)
    case 'encoder':
      return encoderSheet(values)
    case 'pulse-flow':
      return flowSheet(values)
    case 'motor':
      return motorSheet(values)
    default:
      return undefined
  }
}

function signalSheet(values: Values, ofCard: Values, expectations: readonly Expectation[], { low, high }: Ends, unit: string) {
  const kind = values.choice('signal') ?? ofCard.choice('signal')
  if (!kind || low === undefined || high === undefined || !expectations.some((it) => it.measured === 'analogue-signal' && it.value !== undefined))
    return undefined
  const { ends, unit: ofSignal } = analogueSignals[kind]
  const range = { low, high, unit }
  const card = ofCard.number('cardOhm')
  if (kind === '4-20 mA') return { kind: 'loop', ...range, ...(card ? { cardOhm: card.value } : {}) } satisfies Bare<LoopSheet>
  if (ofSignal !== 'V') return undefined
  const percent = values.number('tolerancePercent')?.value
  const toleranceV = percent === undefined ? {} : { toleranceV: (percent * (ends.signalHigh - ends.signalLow)) / 100 }
  return { kind: 'voltage', ...ends, ...range, ...toleranceV } satisfies Bare<VoltageSheet>
}

function platinumSheet(values: Values, ends: Ends): Bare<PlatinumSheet> | undefined {
  const iceResistanceOhm = values.number('iceResistanceOhm')
  if (!iceResistanceOhm) return undefined
  const [name, element] = [values.choice('platinumClass'), values.choice('element')]
  const [from, to] = [values.number('classFromC')?.value, values.number('classToC')?.value]
  const rangeC = from !== undefined && to !== undefined ? ([from, to] as const) : name && element && classRangesC[element][name]
  return { kind: 'platinum', iceResistanceOhm, ...ends, ...(name && rangeC ? { tolerance: { class: name, rangeC } } : {}) }
}

function thermocoupleSheet(values: Values, ofCard: Values, ends: Ends): Bare<ThermocoupleSheet> | undefined {
  const type = values.choice('thermocouple')
  const name = values.choice('thermocoupleClass')
  const terminalC = (values.number('terminalC') ?? ofCard.number('terminalC'))?.value
  return type && { kind: 'thermocouple', type, ...ends, ...(name ? { class: name } : {}), ...(terminalC === undefined ? {} : { terminalC }) }
}

function thermistorSheet(values: Values, ends: Ends): Bare<ThermistorSheet> | undefined {
  const [reference, referenceC, beta] = [values.number('referenceOhm'), values.number('referenceC'), values.number('betaK')]
  const tolerance = values.number('tolerancePercent')
  if (!reference || !referenceC || !beta) return undefined
  const curve = { referenceOhm: reference.value, referenceC: referenceC.value, betaK: beta.value }
  return { kind: 'thermistor', ...curve, ...ends, ...(tolerance ? { tolerancePercent: tolerance.value } : {}) }
}

function encoderSheet(values: Values): Bare<EncoderSheet> | undefined {
  const [pulses, speed, lowest] = [values.number('pulsesPerTurn'), values.number('speedPerMin'), values.number('lowestSupplyV')]
  if (!pulses || !speed || !lowest) return undefined
  const circuit = { pulsesPerTurn: pulses.value, speedPerMin: speed.value, lowestSupplyV: lowest.value }
  return { kind: 'encoder', circuit, basis: [...new Set([pulses.basis, speed.basis, lowest.basis])].flatMap((it) => (it === 'generic' ? [] : [it])) }
}

function flowSheet(values: Values): Bare<FlowSheet> | undefined {
  const [pulses, flow, lowest] = [values.number('pulsesPerLitre'), values.number('flowLPerMin'), values.number('lowestSupplyV')]
  if (!pulses || !flow || !lowest) return undefined
  const circuit = { pulsesPerLitre: pulses.value, flowLPerMin: flow.value, lowestSupplyV: lowest.value }
  return { kind: 'flow', circuit, basis: [...new Set([pulses.basis, flow.basis, lowest.basis])].flatMap((it) => (it === 'generic' ? [] : [it])) }
}

function motorSheet(values: Values): Bare<MotorSheet> {
  const rated = values.number('ratedA')
  return { kind: 'motor', ...(rated ? { ratedA: rated.value } : {}) }
}

/** The sheet of a load, with the limits of its card, its cable and itself. */
export function outputSheet(context: Context, circuit: OutputCircuit, { supply }: Checkout, expectations: readonly Expectation[]): OutputSheet {
  const [lowest, highest] = [supply?.lowestV, supply?.highestV]
  const band = { ...(lowest ? { low: lowest.value } : {}), ...(highest ? { high: highest.value } : {}) }
  const fields = { 'coil-resistance': 'cold', 'load-current': 'current', 'load-voltage': 'load.on' } as const
  const limits = expectations.flatMap((it) => {
    const { measured, low, high, unit } = it
    if (!Object.hasOwn(fields, measured) || (low === undefined && high === undefined)) return []
    const perA = unit === 'A' ? 1000 : 1
    const own = { ...(low === undefined ? {} : { low: low * perA }), ...(high === undefined ? {} : { high: high * perA }) }
    return [[fields[measured as keyof typeof fields], { band: own, basis: basisOfRest(it) }] as const]
  })
  return {
    kind: 'output',
    circuit,
    ...(lowest || highest ? { supply: { band, basis: [...new Set([lowest, highest].flatMap((it) => it?.from ?? []))] } } : {}),
    limits: Object.fromEntries(limits),
    basis: ['data sheet', 'generic'],
    expected: expectedOf(context, remaining('output', expectations)),
  }
}

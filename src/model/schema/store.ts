import { z } from 'zod'
import { scaleOf, unitsOf } from '../unit-scale.ts'
import { identifier, quantity } from './common.ts'

/** For each kind of store its quantities: the name of the value in SI units, that unit, and what it is. */
export const storeQuantities = {
  capacitor: {
    capacitance: ['capacitanceF', 'F', 'All capacitors that one resistor discharges'],
    voltage: ['startVoltageV', 'V', 'Highest voltage: √2 times the line voltage, with the tolerance of the supply'],
    lineVoltage: ['lineVoltageV', 'V', 'In place of the voltage: highest line voltage of the supply, with its tolerance'],
    resistance: ['resistanceOhm', 'Ω', 'Discharge resistor'],
    harmlessAt: ['limitVoltageV', 'V', 'Where less than 60 V is asked for'],
  },
  receiver: {
    pressure: ['gaugePressurePa', 'Pa', 'Highest gauge pressure'],
    volume: ['volumeM3', 'm³', 'Volume of the gas'],
    sonicConductance: ['sonicConductanceM3PerSPa', 'm³/(s·Pa)', 'Of the open vent by ISO 6358, from its data sheet'],
    effectiveArea: ['effectiveAreaM2', 'm²', 'In place of it: effective area of the open vent'],
    harmlessAt: ['harmlessPressurePa', 'Pa', 'Gauge pressure at which it is harmless, for the time to vent'],
  },
  accumulator: {
    volume: ['volumeM3', 'm³', 'Volume of the gas at precharge'],
    precharge: ['prechargePa', 'Pa', 'Gauge pressure of the gas without oil'],
    lowestPressure: ['lowestPressurePa', 'Pa', 'Lowest working gauge pressure'],
    highestPressure: ['highestPressurePa', 'Pa', 'Highest working gauge pressure'],
    orificeArea: ['orificeAreaM2', 'm²', 'Narrowest opening on the way to the tank, for the time to empty'],
    density: ['densityKgPerM3', 'kg/m³', 'Of the oil'],
  },
  'compressed-liquid': {
    pressure: ['gaugePressurePa', 'Pa', 'Highest gauge pressure'],
    volume: ['volumeM3', 'm³', 'Volume of the liquid'],
    bulkModulus: ['bulkModulusPa', 'Pa', 'Of the liquid, from its data sheet'],
  },
  'raised-load': {
    mass: ['massKg', 'kg', 'All that falls together'],
    height: ['heightM', 'm', 'Largest height that it can fall'],
  },
  spring: {
    springRate: ['springRateNPerM', 'N/m', 'Force for each length'],
    deflection: ['deflectionM', 'm', 'From the relaxed spring'],
  },
  'torsion-spring': {
    torsionRate: ['torsionRateNmPerRad', 'Nm/rad', 'Torque for each angle'],
    angle: ['angleRad', 'rad', 'From the relaxed spring'],
  },
  rotor: {
    momentOfInertia: ['momentOfInertiaKgM2', 'kg·m²', 'All that turns together'],
    speed: ['speedRadPerS', 'rad/s', 'Highest speed'],
    brakingTorque: ['brakingTorqueNm', 'Nm', 'Least torque that stays the same to standstill: brake, dry friction'],
    viscousDrag: ['viscousDragNmsPerRad', 'Nm·s/rad', 'In place of the torque: least drag that grows with the speed'],
    harmlessAt: ['harmlessSpeedRadPerS', 'rad/s', 'With a drag: the speed at which it is harmless, as nothing stands still by drag alone'],
  },
  'hot-body': {
    temperature: ['temperatureK', 'K', 'Highest temperature'],
    ambient: ['ambientK', 'K', 'Highest temperature around it'],
    timeConstant: ['timeConstantS', 's', 'Measured: time in which the difference to ambient falls to 37 %'],
    harmlessAt: ['harmlessK', 'K', 'Limit of the author: for liquids, and for surfaces of which ISO 13732-1 confirms none'],
    liquidEnthalpy: ['liquidEnthalpyJPerKg', 'J/kg', 'Of water above 100 °C under pressure, from a steam table: the share that turns to steam'],
    contact: ['contactS', 's', 'Longest credible contact with the surface: 1 min, 10 min, 8 h'],
  },
  vacuum: {
    volume: ['volumeM3', 'm³', 'Volume that is empty'],
  },
  chemical: {},
} as const satisfies Record<string, Record<string, readonly [name: string, unit: string, description: string]>>

export type StoreKind = keyof typeof storeQuantities
type Of<K extends StoreKind> = (typeof storeQuantities)[K]
type NameIn<Q> = Q extends readonly [infer N extends string, string, string] ? N : never
/** Values that have no unit. */
export type UnitlessValue = 'adiabaticExponent' | 'polytropicExponent' | 'criticalRatio' | 'dischargeCoefficient'
/** A value of a store in the SI unit that its name ends with. */
export type StoreValue = { [K in StoreKind]: NameIn<Of<K>[keyof Of<K>]> }[StoreKind] | UnitlessValue

/** What else a kind takes. */
const further = {
  capacitor: {},
  receiver: {
    gas: z.enum(['air', 'nitrogen']).optional().describe('Both have the exponent 1.4'),
    adiabaticExponent: z.number().gt(1).optional().describe('Of another gas'),
    criticalRatio: z.number().gt(0).lt(1).optional().describe('Critical pressure ratio b of the vent by ISO 6358'),
  },
  accumulator: {
    type: z.enum(['bladder', 'piston', 'diaphragm']).optional().describe('A bladder has limits for its precharge'),
    exponent: z.number().min(1).optional().describe('1 for changes slower than about 3 min, 1.4 for fast ones'),
    dischargeCoefficient: z.number().gt(0).max(1).optional().describe('Of the orifice, from its data sheet'),
    makersRatio: z.number().positive().optional().describe('Highest pressure over precharge by its data sheet, where more than 4'),
  },
  'compressed-liquid': {},
  'raised-load': {},
  spring: {},
  'torsion-spring': {},
  rotor: {},
  'hot-body': {
    surface: z.enum(['bare-metal', 'coated-metal', 'ceramic', 'plastic', 'wood']).optional(),
    liquid: z.enum(['water']).optional().describe('It is a liquid like water: the time in which it scalds is shown'),
  },
  vacuum: {},
  chemical: {},
} as const

/** A quantity in any unit that `unit-scale.ts` converts to this one. */
function measured(unit: string, description: string) {
  const dimension = scaleOf(unit)?.quantity
  return quantity
    .refine((it) => scaleOf(it.unit)?.quantity === dimension, {
      path: ['unit'],
      params: { wants: `is no unit of ${dimension}`, help: `write one of ${unitsOf(unit).join(', ')}` },
    })
    .optional()
    .describe(description)
}

function kind<K extends StoreKind>(name: K) {
  const quantities = Object.entries<readonly [string, string, string]>(storeQuantities[name])
  return z.strictObject({
    kind: z.literal(name),
    of: identifier.optional().describe('Tag of the device that holds it'),
    ...(Object.fromEntries(quantities.map(([key, [, unit, text]]) => [key, measured(unit, text)])) as Record<
      keyof Of<K>,
      ReturnType<typeof measured>
    >),
    ...further[name],
  })
}

/** One thing of a source that holds energy. What the author does not know stays out: it is then not computed. */
export const store = z.discriminatedUnion('kind', [
  kind('capacitor').refine(({ voltage, lineVoltage }) => !voltage || !lineVoltage, {
    path: ['lineVoltage'],
    params: { wants: 'stands beside `voltage`', help: 'keep one of them' },
  }),
  kind('receiver')
    .refine(({ gas, adiabaticExponent }) => !gas || adiabaticExponent === undefined, {
      path: ['adiabaticExponent'],
      params: { wants: 'stands beside `gas`', help: 'keep one of them' },
    })
    .refine(({ sonicConductance, effectiveArea }) => !sonicConductance || !effectiveArea, {
      path: ['effectiveArea'],
      params: { wants: 'stands beside `sonicConductance`', help: 'keep one of them' },
    }),
  kind('accumulator'),
  kind('compressed-liquid'),
  kind('raised-load'),
  kind('spring'),
  kind('torsion-spring'),
  kind('rotor').refine(({ brakingTorque, viscousDrag }) => !brakingTorque || !viscousDrag, {
    path: ['viscousDrag'],
    params: { wants: 'stands beside `brakingTorque`', help: 'keep the one that slows it down' },
  }),
  kind('hot-body'),
  kind('vacuum'),
  kind('chemical'),
])
export type StoreInput = z.infer<typeof store>

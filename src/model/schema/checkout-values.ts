import type { Technology } from './common.ts'

/** What a number can be. `share`: more than zero and at most one. `degrees`: °C above absolute zero. */
type Takes = 'above' | 'from' | 'any' | 'share' | 'degrees'

/**
 * Numbers that a data sheet, a drawing or a measurement gives, by names that carry their unit. Where a law of
 * `signals/` asks for one, the name is that of its input.
 */
export const checkoutNumbers = {
  dropV: ['from', 'Most that the output drops while it conducts'],
  leakageMa: ['from', 'Most that the output leaks while it does not conduct'],
  minimumLoadMa: ['from', 'Least load current that the output needs'],
  noLoadCurrentMa: ['from', 'Own current of the device without a load'],
  ratedCurrentMa: ['above', 'Most that the output may carry'],
  lowestSupplyV: ['above', 'Least supply of the device'],
  highestSupplyV: ['above', 'Highest supply of the device'],

  ratedDistanceMm: ['above', 'Rated operating distance Sn'],
  materialFactor: ['above', 'Correction factor of the target material'],
  faceDiameterMm: ['above', 'Diameter of the sensing face'],
  ratedHz: ['above', 'Highest switching frequency'],
  gapMm: ['from', 'Gap between face and target, as mounted'],
  targetSideMm: ['above', 'Smaller side of the target'],
  vibrationMm: ['from', 'How far the target moves to the face and back'],
  eventsHz: ['from', 'How often the target passes'],
  targets: ['above', 'Teeth or other targets on a turning part, in place of `eventsHz` with its speed'],

  certainBreakMa: ['above', 'NAMUR: below it the line is broken'],
  possibleBreakMa: ['above', 'NAMUR: below it the amplifier may report a break'],
  highImpedanceMa: ['above', 'NAMUR: up to it high impedance'],
  lowImpedanceMa: ['above', 'NAMUR: from it low impedance'],
  possibleShortMa: ['above', 'NAMUR: above it the amplifier may report a short circuit'],
  certainShortMa: ['above', 'NAMUR: above it the line is shorted'],

  ratedRangeM: ['above', 'Rated range of a photoelectric sensor'],
  rangeM: ['above', 'Distance to receiver, reflector or object, as mounted'],
  objectSpeedMPerS: ['from', 'Speed of the objects that pass'],
  objectLengthMm: ['above', 'Length of the shortest object or gap that must be seen'],
  responseMs: ['from', 'Response time of the sensor'],
  beamWidthMm: ['from', 'How far an object must reach into the beam; 0 where a part of the beam already switches'],

  setBar: ['above', 'Set point on rising pressure'],
  deadBandBar: ['from', 'How far the pressure falls from there until the switch resets'],
  fullScaleBar: ['above', 'End of its range'],
  tolerancePercent: ['from', 'Accuracy in % of the span'],
  switchLevelMm: ['any', 'Level at which it switches'],
  setLPerMin: ['above', 'Set flow on the rise'],
  deadBandLPerMin: ['from', 'How far the flow falls from there until it resets'],
  toleranceLPerMin: ['from', 'Accuracy of the set flow'],
  setC: ['degrees', 'Set temperature on the rise'],
  deadBandK: ['from', 'How far the temperature falls from there until it resets'],
  toleranceK: ['from', 'Accuracy of the set temperature'],

  densityKgPerM3: ['above', 'Density of the liquid, for a level by the pressure at the bottom'],
  transmitterV: ['from', 'Least voltage across the transmitter'],
  highestCurrentMa: ['above', 'Highest current, in failure'],
  failureLowToMa: ['from', 'Current up to which the transmitter reports a failure'],
  failureHighFromMa: ['from', 'Current from which the transmitter reports a failure'],
  rangeLow: ['any', 'Value at the low end of the signal, as set in the device'],
  rangeHigh: ['any', 'Value at the high end'],

  iceResistanceOhm: ['above', 'Resistance at 0 °C: 100 for a Pt100, 1000 for a Pt1000'],
  classFromC: ['degrees', 'Least temperature of its tolerance class'],
  classToC: ['degrees', 'Highest temperature of its tolerance class'],
  terminalC: ['degrees', 'Temperature of the terminals, for a thermocouple'],
  referenceOhm: ['above', 'Thermistor: resistance at the reference temperature'],
  referenceC: ['degrees', 'Thermistor: reference temperature'],
  betaK: ['above', 'Thermistor: beta value'],
  steinhartA: ['any', 'Thermistor: coefficient a of Steinhart and Hart'],
  steinhartB: ['any', 'Thermistor: coefficient b'],
  steinhartC: ['any', 'Thermistor: coefficient c'],

  pulsesPerLitre: ['above', 'Pulses for each litre'],
  flowLPerMin: ['from', 'Flow of the machine in service'],
  pulsesPerTurn: ['above', 'Pulses for each turn, of one channel'],
  speedPerMin: ['from', 'Speed of the machine in service'],
  discrepancyMs: ['above', 'Time within which both channels change, as set'],

  coilV: ['above', 'Rated voltage of the coil'],
  coilW: ['above', 'Rated power of the coil'],
  riseK: ['above', 'How much hotter than 20 °C the coil gets in service'],
  lowestShare: ['share', 'Least voltage as a share of the rated one'],
  highestShare: ['from', 'Highest voltage as a share of the rated one'],
  ratedV: ['above', 'Rated voltage of a lamp, a motor, or one heating element'],
  ratedW: ['above', 'Rated power of a lamp, or of one heating element'],
  ratedA: ['above', 'Rated current of a motor, or of an output of a card'],
  ratedSpeedPerMin: ['above', 'Speed of a motor under its rated load'],
  frequencyHz: ['above', 'Frequency of its supply'],
  poles: ['above', 'Number of poles of a motor, not pairs'],

  cableLengthM: ['from', 'Length of the cable, one way'],
  cableAreaMm2: ['above', 'Cross-section of a conductor'],
  fuseA: ['above', 'Fuse of the branch that feeds it'],

  filterMs: ['from', 'Input filter of a card'],
  scanMs: ['from', 'Cycle of the program that reads the card'],
  inputResistanceOhm: ['above', 'Resistance of a digital input'],
  inputCurrentMa: ['from', 'Current of a digital input while it is on'],
  cardOhm: ['from', 'Resistance of an analogue input'],
  countsLow: ['any', 'Raw counts at the low end of the signal'],
  countsHigh: ['any', 'Raw counts at the high end'],
  highestHz: ['above', 'Highest frequency that the input counts'],
} as const satisfies Record<string, readonly [Takes, string]>

export type CheckoutNumberName = keyof typeof checkoutNumbers

/** Values that are one of a few words. */
export const checkoutChoices = {
  output: [['pnp', 'npn', '2-wire', 'dry contact', 'namur'], 'What switches the signal'],
  contact: [['NO', 'NC'], 'On with the target, or without; for want of it the contact of the I/O list'],
  operate: [['light', 'dark'], 'On with light on the receiver, or without'],
  mounting: [['flush', 'non-flush'], 'What the switch is made for'],
  mount: [['flush', 'non-flush'], 'How it is mounted'],
  air: [['clean air', 'slightly dirty', 'moderately dirty', 'very dirty'], 'Air on the way of the light'],
  signal: [['4-20 mA', '0-20 mA', '0-10 V', '2-10 V', '1-5 V'], 'Analogue signal'],
  wiring: [['2-wire', '3-wire', '4-wire'], 'Number of wires'],
  platinumClass: [['AA', 'A', 'B', 'C'], 'Tolerance class by IEC 60751'],
  element: [['wire-wound', 'film'], 'Kind of platinum element'],
  thermocouple: [['J', 'K', 'T'], 'Type of thermocouple'],
  thermocoupleClass: [['class 1', 'class 2', 'class 3'], 'Tolerance class by IEC 60584-1'],
  coilFeed: [['d.c.', 'a.c.'], 'What the coil is fed with'],
  coilElectronics: [['none', 'built in'], 'An economiser, an LED or a suppressor in the coil: its resistance means nothing then'],
  conductor: [['class 2', 'class 5'], 'Conductors of the cable by IEC 60228: stranded, or flexible'],
  inputType: [['Type 1', 'Type 2', 'Type 3'], 'Input type by IEC 61131-2'],
  sense: [['sinking', 'sourcing'], 'Whether the current flows into the card, or out of it'],
} as const satisfies Record<string, readonly [readonly [string, ...string[]], string]>

export type CheckoutChoiceName = keyof typeof checkoutChoices
export type CheckoutChoice<K extends CheckoutChoiceName> = (typeof checkoutChoices)[K][0][number]

/** Values that are free text. */
export const checkoutTexts = {
  targetMaterial: 'mild steel, stainless steel, aluminium; for a capacitive switch water, wood, glass',
  rangeUnit: 'Unit of the range that is set in the device',
  supply: 'A supply of this file',
  amplifier: 'Tag of the isolating amplifier that reads a NAMUR switch for the card',
} as const
export type CheckoutTextName = keyof typeof checkoutTexts

export type CheckoutName = CheckoutNumberName | CheckoutChoiceName | CheckoutTextName

const supplied = ['lowestSupplyV', 'highestSupplyV', 'supply'] as const
const cabled = ['cableLengthM', 'cableAreaMm2', 'conductor', 'fuseA'] as const
const switching = ['output', 'contact', 'dropV', 'leakageMa', 'minimumLoadMa', 'noLoadCurrentMa', 'ratedCurrentMa', ...supplied, ...cabled] as const
const contacts = ['output', 'contact', 'dropV', 'leakageMa', 'minimumLoadMa', 'supply', ...cabled] as const
const target = ['ratedDistanceMm', 'materialFactor', 'faceDiameterMm', 'targetMaterial', 'gapMm', 'targetSideMm', 'vibrationMm'] as const
const proximity = [...switching, ...target, 'ratedHz', 'eventsHz', 'targets', 'speedPerMin', 'mounting', 'mount'] as const
const passing = ['objectSpeedMPerS', 'objectLengthMm', 'responseMs', 'beamWidthMm'] as const
const photoelectric = [...switching, 'operate', 'ratedRangeM', 'rangeM', 'air', ...passing] as const
const analogue = ['signal', 'tolerancePercent', 'rangeLow', 'rangeHigh', 'rangeUnit', 'wiring', 'noLoadCurrentMa', ...supplied, ...cabled] as const
const resistance = ['toleranceK', 'wiring', ...cabled] as const
const coil = ['coilV', 'coilW', 'coilFeed', 'coilElectronics', 'riseK', 'lowestShare', 'highestShare', 'supply', ...cabled] as const
const guarding = [...switching, 'discrepancyMs'] as const
const namur = ['certainBreakMa', 'possibleBreakMa', 'highImpedanceMa', 'lowImpedanceMa', 'possibleShortMa', 'certainShortMa'] as const

/** What is asked of a device, by its technology. A technology that is not named here has nothing to measure. */
export const checkoutOfTechnology = {
  inductive: proximity,
  capacitive: proximity,
  namur: [...target, ...namur, 'amplifier', 'output', 'contact', 'mounting', 'mount', 'supply', ...cabled],
  'photoelectric-through-beam': photoelectric,
  'photoelectric-retro-reflective': photoelectric,
  'photoelectric-diffuse': photoelectric,
  'magnetic-cylinder-switch': switching,
  'limit-switch': contacts,
  'pressure-switch': [...switching, 'setBar', 'deadBandBar', 'fullScaleBar', 'tolerancePercent'],
  'float-switch': [...switching, 'switchLevelMm'],
  'flow-switch': [...switching, 'setLPerMin', 'deadBandLPerMin', 'toleranceLPerMin'],
  'temperature-switch': [...switching, 'setC', 'deadBandK', 'toleranceK'],
  'current-loop': [...analogue, 'transmitterV', 'highestCurrentMa', 'failureLowToMa', 'failureHighFromMa', 'densityKgPerM3'],
  'voltage-signal': [...analogue, 'densityKgPerM3'],
  pt100: [...resistance, 'iceResistanceOhm', 'platinumClass', 'element', 'classFromC', 'classToC'],
  thermocouple: ['thermocouple', 'thermocoupleClass', 'terminalC', 'toleranceK', ...cabled],
  thermistor: [...resistance, 'referenceOhm', 'referenceC', 'betaK', 'steinhartA', 'steinhartB', 'steinhartC', 'tolerancePercent'],
  'pulse-flow': [...switching, 'pulsesPerLitre', 'flowLPerMin', 'tolerancePercent'],
  encoder: ['pulsesPerTurn', 'speedPerMin', 'noLoadCurrentMa', ...supplied, ...cabled],
  'safety-interlock': [...guarding, 'coilV', 'coilW', 'coilFeed', 'coilElectronics', 'riseK', 'lowestShare', 'highestShare'],
  'emergency-stop': [...contacts, 'discrepancyMs'],
  'light-curtain': guarding,
  'push-button': [...contacts, 'ratedV', 'ratedW'],
  'selector-switch': contacts,
  isolator: contacts,
  drive: contacts,
  'solenoid-valve': coil,
  contactor: [...coil, 'output', 'contact'],
  motor: ['ratedV', 'ratedA', 'ratedSpeedPerMin', 'frequencyHz', 'poles', ...cabled],
  heater: ['ratedV', 'ratedW', 'tolerancePercent', ...cabled],
  'power-supply': ['supply'],
  lamp: ['ratedV', 'ratedW', 'lowestShare', 'highestShare', 'supply', ...cabled],
} as const satisfies Partial<Record<Technology, readonly CheckoutName[]>>

export type CheckoutTechnology = keyof typeof checkoutOfTechnology

/** What is asked of a card. */
export const checkoutOfCard = [
  'inputType',
  'sense',
  'filterMs',
  'scanMs',
  'inputResistanceOhm',
  'inputCurrentMa',
  'signal',
  'cardOhm',
  'countsLow',
  'countsHigh',
  'tolerancePercent',
  'wiring',
  'highestHz',
  'terminalC',
  'ratedA',
  'dropV',
  'leakageMa',
  'supply',
] as const satisfies readonly CheckoutName[]

/** What of a device differs from one of its kind to the next, and is given by its tag. */
export const checkoutOfDevice = [...new Set<CheckoutName>(Object.values(checkoutOfTechnology).flat())]

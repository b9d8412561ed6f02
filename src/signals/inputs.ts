type Takes = 'more than zero' | 'zero or more' | 'any number' | 'more than zero and at most one' | 'above −273.15'

interface InputKind {
  /** Its name without the unit, as data and messages call it. */
  quantity: string
  /** The letter that stands for it in the formulas. */
  letter: string
  /** The unit of the value. `1` for a plain number; empty where the caller's range says it. */
  unit: string
  takes: Takes
}

const above = (quantity: string, letter: string, unit: string): InputKind => ({ quantity, letter, unit, takes: 'more than zero' })
const from = (quantity: string, letter: string, unit: string): InputKind => ({ quantity, letter, unit, takes: 'zero or more' })
const any = (quantity: string, letter: string, unit: string): InputKind => ({ quantity, letter, unit, takes: 'any number' })
const share = (quantity: string, letter: string): InputKind => ({ quantity, letter, unit: '1', takes: 'more than zero and at most one' })
const degrees = (quantity: string, letter: string): InputKind => ({ quantity, letter, unit: '°C', takes: 'above −273.15' })

/** Everything that a law asks for. Letters are those of the standards where they have one, else common practice. */
export const inputKinds = {
  ratedDistanceMm: above('ratedDistance', 'Sₙ', 'mm'),
  effectiveDistanceMm: above('effectiveDistance', 'Sᵣ', 'mm'),
  materialFactor: above('materialFactor', 'k', '1'),
  distanceFactor: above('distanceFactor', 'a', '1'),
  clearanceFactor: from('clearanceFactor', 'a', '1'),
  onDistanceMm: above('onDistance', 's₁', 'mm'),
  offDistanceMm: above('offDistance', 's₂', 'mm'),
  travelFraction: share('differentialTravel', 'h'),
  faceDiameterMm: above('faceDiameter', 'd', 'mm'),
  targets: above('targets', 'z', '1'),
  targetLengthMm: above('targetLength', 'L', 'mm'),
  movingMPerS: above('targetSpeed', 'v', 'm/s'),
  speedPerMin: from('speed', 'n', 'min⁻¹'),
  synchronousPerMin: above('synchronousSpeed', 'nₛ', 'min⁻¹'),

  openVoltageV: above('openVoltage', 'U₀', 'V'),
  sourceResistanceOhm: above('sourceResistance', 'Rₛ', 'Ω'),
  circuitResistanceOhm: from('circuitResistance', 'R', 'Ω'),
  seriesResistanceOhm: from('seriesResistance', 'R₁', 'Ω'),
  parallelResistanceOhm: above('parallelResistance', 'R₂', 'Ω'),

  supplyV: from('supply', 'Uₛ', 'V'),
  dropV: from('drop', 'U_d', 'V'),
  inputCurrentMa: from('inputCurrent', 'I_in', 'mA'),
  noLoadCurrentMa: from('noLoadCurrent', 'I₀', 'mA'),
  supplyWireOhm: from('supplyWire', 'R_s', 'Ω'),
  signalWireOhm: from('signalWire', 'R_w', 'Ω'),
  leakageMa: from('leakage', 'Iᵣ', 'mA'),
  inputResistanceOhm: above('inputResistance', 'R_in', 'Ω'),
  bleederOhm: above('bleeder', 'R_b', 'Ω'),
  inputCurrentAtOffMa: from('inputCurrentAtOff', 'I_off', 'mA'),
  offLimitV: above('offLimit', 'U_off', 'V'),
  minimumLoadMa: from('minimumLoad', 'I_m', 'mA'),
  loadCurrentA: from('loadCurrent', 'I', 'A'),

  lengthM: from('length', 'L', 'm'),
  resistanceOhmPerKm: above('resistancePerLength', 'r', 'Ω/km'),
  areaMm2: above('area', 'A', 'mm²'),
  gauge: { quantity: 'gauge', letter: 'g', unit: '1', takes: 'zero or more' },
  conductorC: degrees('conductorTemperature', 't'),
  copperPerK: above('temperatureCoefficient', 'α', '1/K'),
  resistivityOhmMm2PerM: above('resistivity', 'ρ', 'Ω·mm²/m'),

  ratedRangeM: above('ratedRange', 'd₁', 'm'),
  rangeM: above('range', 'd', 'm'),
  excessGain: above('excessGain', 'g', '1'),
  firstTransmission: share('firstTransmission', 'T₁'),
  secondTransmission: share('secondTransmission', 'T₂'),
  reflectance: share('reflectance', 'ρ'),
  referenceReflectance: share('referenceReflectance', 'ρ₀'),
  objectSpeedMPerS: from('objectSpeed', 'v', 'm/s'),
  responseMs: from('response', 'tₛ', 'ms'),
  filterMs: from('filter', 't_f', 'ms'),
  scanMs: from('scan', 't_c', 'ms'),
  beamWidthMm: from('beamWidth', 'w', 'mm'),
  onMs: above('onTime', 't₁', 'ms'),
  offMs: above('offTime', 't₂', 'ms'),

  signal: any('signal', 's', ''),
  signalLow: any('signalLow', 's₀', ''),
  signalHigh: any('signalHigh', 's₁', ''),
  value: any('value', 'x', ''),
  rangeLow: any('rangeLow', 'x₀', ''),
  rangeHigh: any('rangeHigh', 'x₁', ''),
  counts: any('counts', 'N', '1'),
  countsLow: any('countsLow', 'N₀', '1'),
  countsHigh: any('countsHigh', 'N₁', '1'),
  currentMa: from('current', 'I', 'mA'),
  highestCurrentMa: above('highestCurrent', 'I', 'mA'),
  loadOhm: above('load', 'R', 'Ω'),
  cardOhm: from('cardResistance', 'R_c', 'Ω'),
  transmitterV: from('transmitterVoltage', 'U_t', 'V'),
  tolerancePercent: from('tolerance', 'e', '%'),
  span: above('span', 's', ''),

  temperatureC: degrees('temperature', 't'),
  terminalC: degrees('terminalTemperature', 't₀'),
  fixedK: above('fixedTolerance', 'c', 'K'),
  shareOfT: above('toleranceShare', 'f', '1'),
  elementOhm: from('resistance', 'R', 'Ω'),
  iceResistanceOhm: above('iceResistance', 'R₀', 'Ω'),
  acrossOhm: from('across', 'R_across', 'Ω'),
  pairOhm: from('pair', 'R_pair', 'Ω'),
  leadOhm: from('lead', 'R_l', 'Ω'),
  leadMismatch: { quantity: 'leadMismatch', letter: 'm', unit: '1', takes: 'zero or more' },
  terminalMv: any('thermovoltage', 'E', 'mV'),
  thermistorOhm: above('resistance', 'R', 'Ω'),
  referenceOhm: above('referenceResistance', 'R₂₅', 'Ω'),
  referenceC: degrees('referenceTemperature', 't₂₅'),
  betaK: above('beta', 'B', 'K'),
  steinhartA: any('steinhartA', 'a', '1/K'),
  steinhartB: any('steinhartB', 'b', '1/K'),
  steinhartC: any('steinhartC', 'c', '1/K'),

  setBar: above('setPoint', 's', 'bar'),
  deadBandBar: from('deadBand', 'b', 'bar'),
  fullScaleBar: above('fullScale', 'F', 'bar'),
  liquidM: from('liquidHeight', 'h', 'm'),
  densityKgPerM3: above('density', 'ρ', 'kg/m³'),
  gravityMPerS2: above('gravity', 'g', 'm/s²'),
  pressureKpa: from('pressure', 'p', 'kPa'),
  echoMs: from('echo', 't', 'ms'),
  airC: degrees('airTemperature', 'θ'),
  pulsesPerLitre: above('pulsesPerLitre', 'K', '1/l'),
  flowLPerMin: from('flow', 'Q', 'l/min'),
  pulses: from('pulses', 'N', '1'),
  pulsesPerTurn: above('pulsesPerTurn', 'p', '1'),
  frequencyHz: from('frequency', 'f', 'Hz'),
  phaseA: above('phaseA', 'a', ''),
  phaseB: above('phaseB', 'b', ''),
  phaseC: above('phaseC', 'c', ''),
  poles: above('poles', 'p', '1'),
  boreMm: above('bore', 'D', 'mm'),
  pressureBar: from('pressure', 'p', 'bar'),

  voltageShare: from('voltageShare', 'f', '1'),
  ratedV: above('ratedVoltage', 'Uₙ', 'V'),
  ratedW: above('ratedPower', 'P', 'W'),
  coilV: above('coilVoltage', 'U', 'V'),
  coilW: above('coilPower', 'P', 'W'),
  coldOhm: above('coldResistance', 'R₂₀', 'Ω'),
  riseK: from('temperatureRise', 'ΔT', 'K'),
  injectedA: above('injectedCurrent', 'I', 'A'),
  measuredV: from('voltage', 'U', 'V'),
} as const satisfies Record<string, InputKind>

export type InputName = keyof typeof inputKinds
/** A quantity that can be missing: `ratedDistance`, `supply`. */
export type QuantityName = (typeof inputKinds)[InputName]['quantity'] | 'coilFeed' | 'coilElectronics'

/** Whether a law can take the value. */
export function canBe(name: InputName, value: number): boolean {
  if (!Number.isFinite(value)) return false
  return {
    'any number': true,
    'more than zero': value > 0,
    'zero or more': value >= 0,
    'more than zero and at most one': value > 0 && value <= 1,
    'above −273.15': value > -273.15,
  }[inputKinds[name].takes]
}

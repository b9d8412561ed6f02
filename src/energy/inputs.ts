interface InputKind {
  /** Its name without the unit, as data and messages call it. */
  quantity: string
  /** The letter that stands for it in the formulas. */
  letter: string
  /** The SI unit of the value. */
  unit: string
  takes: 'more than zero' | 'zero or more' | 'more than one' | 'one or more' | 'more than zero and at most one'
}

const above = (quantity: string, letter: string, unit: string): InputKind => ({ quantity, letter, unit, takes: 'more than zero' })
const from = (quantity: string, letter: string, unit: string): InputKind => ({ quantity, letter, unit, takes: 'zero or more' })

/** Everything that a law asks for. Letters are common practice of the trade. */
export const inputKinds = {
  capacitanceF: above('capacitance', 'C', 'F'),
  resistanceOhm: above('resistance', 'R', 'Ω'),
  startVoltageV: from('voltage', 'V₀', 'V'),
  limitVoltageV: above('harmlessAt', 'V', 'V'),
  lineVoltageV: from('lineVoltage', 'V', 'V'),
  elapsedS: from('time', 't', 's'),
  allowedS: above('time', 't', 's'),
  timeConstantS: above('timeConstant', 'τ', 's'),
  remainingFraction: { quantity: 'fraction', letter: 'x', unit: '1', takes: 'more than zero and at most one' },
  gaugePressurePa: from('pressure', 'p', 'Pa'),
  atmospherePa: above('atmosphere', 'pₐ', 'Pa'),
  volumeM3: above('volume', 'V', 'm³'),
  sonicConductanceM3PerSPa: above('sonicConductance', 'C', 'm³/(s·Pa)'),
  effectiveAreaM2: above('effectiveArea', 'Aₑ', 'm²'),
  criticalRatio: { quantity: 'criticalRatio', letter: 'b', unit: '1', takes: 'more than zero and at most one' },
  harmlessPressurePa: from('harmlessAt', 'p₁', 'Pa'),
  referencePressurePa: above('referencePressure', 'pₙ', 'Pa'),
  orificeAreaM2: above('orificeArea', 'A', 'm²'),
  dischargeCoefficient: { quantity: 'dischargeCoefficient', letter: 'μ', unit: '1', takes: 'more than zero and at most one' },
  densityKgPerM3: above('density', 'ρ', 'kg/m³'),
  adiabaticExponent: { quantity: 'gas', letter: 'k', unit: '1', takes: 'more than one' },
  energyJ: from('energy', 'E', 'J'),
  scaledDistance: above('scaledDistance', 'Rₛ', 'm/kg^(1/3)'),
  prechargePa: above('precharge', 'p₀', 'Pa'),
  lowestPressurePa: above('lowestPressure', 'p₁', 'Pa'),
  highestPressurePa: above('highestPressure', 'p₂', 'Pa'),
  polytropicExponent: { quantity: 'exponent', letter: 'n', unit: '1', takes: 'one or more' },
  bulkModulusPa: above('bulkModulus', 'K', 'Pa'),
  massKg: above('mass', 'm', 'kg'),
  heightM: from('height', 'h', 'm'),
  gravityMPerS2: above('gravity', 'g', 'm/s²'),
  springRateNPerM: above('springRate', 'k', 'N/m'),
  deflectionM: from('deflection', 'x', 'm'),
  torsionRateNmPerRad: above('torsionRate', 'κ', 'Nm/rad'),
  angleRad: from('angle', 'θ', 'rad'),
  momentOfInertiaKgM2: above('momentOfInertia', 'I', 'kg·m²'),
  speedRadPerS: from('speed', 'ω', 'rad/s'),
  harmlessSpeedRadPerS: above('harmlessAt', 'ω₁', 'rad/s'),
  brakingTorqueNm: above('brakingTorque', 'M', 'Nm'),
  viscousDragNmsPerRad: above('viscousDrag', 'b', 'Nm·s/rad'),
  stoppingTimeS: above('stoppingTime', 't', 's'),
  radiusM: above('radius', 'r', 'm'),
  diameterM: above('diameter', 'd', 'm'),
  temperatureK: above('temperature', 'T₀', 'K'),
  ambientK: above('ambient', 'Tₐ', 'K'),
  harmlessK: above('harmlessAt', 'T', 'K'),
  contactS: above('contact', 't', 's'),
  pressureDifferencePa: from('pressureDifference', 'Δp', 'Pa'),
  liquidEnthalpyJPerKg: above('liquidEnthalpy', 'h₁', 'J/kg'),
  saturationEnthalpyJPerKg: above('saturationEnthalpy', 'h₂', 'J/kg'),
  evaporationHeatJPerKg: above('evaporationHeat', 'r', 'J/kg'),
} as const satisfies Record<string, InputKind>

export type InputName = keyof typeof inputKinds
/** A quantity that can be missing: `resistance`, `harmlessAt`. */
export type QuantityName = (typeof inputKinds)[InputName]['quantity']

/** Whether a law can take the value. */
export function canBe(name: InputName, value: number): boolean {
  if (!Number.isFinite(value)) return false
  return {
    'more than zero': value > 0,
    'zero or more': value >= 0,
    'more than one': value > 1,
    'one or more': value >= 1,
    'more than zero and at most one': value > 0 && value <= 1,
  }[inputKinds[name].takes]
}

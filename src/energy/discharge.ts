import { law } from './law.ts'

/** Time in seconds until a capacitor has discharged over a resistor to a voltage; 0 where it is not above it. */
export const dischargeTime = law({
  formula: 't = R·C·ln(V₀/V)',
  unit: 's',
  inputs: ['capacitanceF', 'resistanceOhm', 'startVoltageV', 'limitVoltageV'],
  value: ({ capacitanceF, resistanceOhm, startVoltageV, limitVoltageV }) =>
    startVoltageV <= limitVoltageV ? 0 : resistanceOhm * capacitanceF * Math.log(startVoltageV / limitVoltageV),
})

/** Voltage in volt that is left after a time. */
export const voltageAfter = law({
  formula: 'V = V₀·e^(−t/(R·C))',
  unit: 'V',
  inputs: ['capacitanceF', 'resistanceOhm', 'startVoltageV', 'elapsedS'],
  value: ({ capacitanceF, resistanceOhm, startVoltageV, elapsedS }) => startVoltageV * Math.exp(-(elapsedS / resistanceOhm) / capacitanceF),
})

/** The largest resistor in ohm that discharges a capacitor to a voltage in a time. */
export const largestDischargeResistor = law({
  formula: 'R = t/(C·ln(V₀/V))',
  unit: 'Ω',
  inputs: ['capacitanceF', 'startVoltageV', 'limitVoltageV', 'allowedS'],
  conflict: ({ startVoltageV, limitVoltageV }) =>
    startVoltageV <= limitVoltageV ? 'the voltage is not above the limit: no resistor is needed' : undefined,
  value: ({ capacitanceF, startVoltageV, limitVoltageV, allowedS }) => allowedS / (capacitanceF * Math.log(startVoltageV / limitVoltageV)),
})

/** Power in watt at which a discharge resistor starts. */
export const dischargePower = law({
  formula: 'P = V₀²/R',
  unit: 'W',
  inputs: ['startVoltageV', 'resistanceOhm'],
  value: ({ startVoltageV, resistanceOhm }) => startVoltageV ** 2 / resistanceOhm,
})

/** Time in seconds until a fraction of the voltage is left. */
export const timeToFraction = law({
  formula: 't = −τ·ln(x)',
  unit: 's',
  inputs: ['timeConstantS', 'remainingFraction'],
  value: ({ timeConstantS, remainingFraction }) => Math.max(0, -timeConstantS * Math.log(remainingFraction)),
})

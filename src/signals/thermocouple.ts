import { invert } from './invert.ts'
import { law } from './law.ts'
import { exponentialK, segments, type ThermocoupleType } from './thermocouple-coefficients.ts'
import { within } from './verdict.ts'

/** Temperatures in °C over which a type is defined. */
export function thermocoupleRangeC(type: ThermocoupleType): { low: number; high: number } {
  const all = segments[type]
  return { low: Math.min(...all.map(({ fromC }) => fromC)), high: Math.max(...all.map(({ toC }) => toC)) }
}

/** Thermovoltage in mV against a junction at 0 °C, inside the range of the type. */
function voltageAt(type: ThermocoupleType, t: number): number {
  const all = segments[type]
  const segment = all.find(({ toC }) => t <= toC) ?? all[all.length - 1]
  const sum = (segment?.coefficients ?? []).reduceRight((higher, coefficient) => higher * t + coefficient, 0)
  const { a0, a1, a2 } = exponentialK
  return type === 'K' && t > 0 ? sum + a0 * Math.exp(a1 * (t - a2) ** 2) : sum
}

/** Reference functions of ITS-90; the way back is found by halving, and not by the approximate inverse functions. */
function functionsOf(type: ThermocoupleType) {
  const range = thermocoupleRangeC(type)
  const [lowest, highest] = [voltageAt(type, range.low), voltageAt(type, range.high)]
  const outside = (t: number) => (within(t, range) ? undefined : `type ${type} is defined from ${range.low} to ${range.high} °C`)
  return {
    /** Voltage in mV with the other junction at 0 °C. */
    voltage: law({
      formula: 'E = E(t)',
      unit: 'mV',
      inputs: ['temperatureC'],
      conflict: ({ temperatureC }) => outside(temperatureC),
      value: ({ temperatureC }) => voltageAt(type, temperatureC),
    }),
    /** Voltage in mV that a meter reads at terminals that are not at 0 °C. */
    terminalVoltage: law({
      formula: 'E = E(t) − E(t₀)',
      unit: 'mV',
      inputs: ['temperatureC', 'terminalC'],
      conflict: ({ temperatureC, terminalC }) => outside(temperatureC) ?? outside(terminalC),
      value: ({ temperatureC, terminalC }) => voltageAt(type, temperatureC) - voltageAt(type, terminalC),
    }),
    /** Temperature in °C of the junction, from the voltage at the terminals and their temperature. */
    temperature: law({
      formula: 'E(t) = E + E(t₀)',
      unit: '°C',
      inputs: ['terminalMv', 'terminalC'],
      conflict: ({ terminalMv, terminalC }) =>
        outside(terminalC) ??
        (within(terminalMv + voltageAt(type, terminalC), { low: lowest, high: highest })
          ? undefined
          : `no temperature of type ${type} gives this \`thermovoltage\``),
      value: ({ terminalMv, terminalC }) => invert((t) => voltageAt(type, t), terminalMv + voltageAt(type, terminalC), range.low, range.high),
    }),
  }
}

export const thermocouples = { J: functionsOf('J'), K: functionsOf('K'), T: functionsOf('T') } as const

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { standardAtmospherePa } from '../../src/energy/constants.ts'
import type { Result } from '../../src/energy/law.ts'
import { oilDischargeTime } from '../../src/energy/oil-discharge-time.ts'
import { ventTime, ventTimeByArea } from '../../src/energy/vent-time.ts'
import { isComputed } from '../../src/law/law.ts'
import { expectValue } from './expect-value.ts'

const bar = 1e5
const number = (result: Result) => (isComputed(result) ? result.value : Number.NaN)

/** Steps the receiver down in time: V·dp/dt = −C·pₙ·p·ψ(pₐ/p), by the rule of Runge and Kutta. */
function steppedDownS(volumeM3: number, startPa: number, conductance: number, b: number, endPa: number): number {
  const slope = (p: number) => {
    const r = standardAtmospherePa / p
    const psi = r <= b ? 1 : Math.sqrt(Math.max(0, 1 - ((r - b) / (1 - b)) ** 2))
    return -(conductance * bar * p * psi) / volumeM3
  }
  const step = volumeM3 / (conductance * bar) / 20_000
  let [p, t] = [startPa, 0]
  while (p > endPa) {
    const k1 = slope(p)
    const k2 = slope(p + (step * k1) / 2)
    const k3 = slope(p + (step * k2) / 2)
    const k4 = slope(p + step * k3)
    p += (step * (k1 + 2 * k2 + 2 * k3 + k4)) / 6
    t += step
  }
  return t
}

const receiver = { volumeM3: 0.05, gaugePressurePa: 6 * bar, sonicConductanceM3PerSPa: 1.6e-8, criticalRatio: 0.35, harmlessPressurePa: 0.1 * bar }

describe('a receiver through a vent', () => {
  test.each([0.15, 0.2, 0.35, 0.48, 0.5, 0.528])('critical ratio %d: as stepped down in time', (criticalRatio) => {
    const stepped = steppedDownS(0.05, 6 * bar + standardAtmospherePa, 1.6e-8, criticalRatio, 0.1 * bar + standardAtmospherePa)
    expectValue(ventTime({ ...receiver, criticalRatio }), stepped, stepped / 1000)
  })

  test('as long as the flow is choked, a time constant for each factor e', () => {
    const from = { ...receiver, gaugePressurePa: 20 * bar, harmlessPressurePa: 5 * bar }
    expectValue(ventTime(from), (0.05 / (1.6e-8 * bar)) * Math.log((20 * bar + standardAtmospherePa) / (5 * bar + standardAtmospherePa)), 1e-6)
  })

  // From memory, in handbooks of pneumatics: the time constant is 5.22·V/S·√(273/T), in s, l and mm².
  test('1 l through an effective area of 1 mm²: the time constant of the handbooks', () => {
    const choked = { volumeM3: 1e-3, gaugePressurePa: 20 * bar, effectiveAreaM2: 1e-6, harmlessPressurePa: 5 * bar }
    const factor = Math.log((20 * bar + standardAtmospherePa) / (5 * bar + standardAtmospherePa))
    expectValue(ventTimeByArea(choked), 5.22 * Math.sqrt(273.15 / 293.15) * factor, 0.01 * 5 * factor)
  })

  test('to the pressure of the air it takes an end; from below the limit none', () => {
    expect(number(ventTime({ ...receiver, harmlessPressurePa: 0 }))).toBeLessThan(90)
    expectValue(ventTime({ ...receiver, gaugePressurePa: 0.1 * bar }), 0, 0)
    expectValue(ventTime({ ...receiver, gaugePressurePa: 0, harmlessPressurePa: 0 }), 0, 0)
  })

  test('says what is missing', () => {
    expect(ventTime({ ...receiver, criticalRatio: undefined })).toEqual({ notComputed: ['criticalRatio'] })
  })

  const more = fc.record({
    volumeM3: fc.double({ min: 1e-4, max: 10, noNaN: true }),
    gaugePressurePa: fc.double({ min: 0, max: 400 * bar, noNaN: true }),
    sonicConductanceM3PerSPa: fc.double({ min: 1e-10, max: 1e-5, noNaN: true }),
    criticalRatio: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
    harmlessPressurePa: fc.double({ min: 0, max: bar, noNaN: true }),
  })
  test('more gas, more pressure or a smaller vent never vents sooner', () => {
    fc.assert(
      fc.property(more, fc.double({ min: 1, max: 10, noNaN: true }), (given, factor) => {
        const time = number(ventTime(given)) * (1 - 1e-9)
        expect(time).toBeGreaterThanOrEqual(0)
        expect(number(ventTime({ ...given, volumeM3: given.volumeM3 * factor }))).toBeGreaterThanOrEqual(time)
        expect(number(ventTime({ ...given, gaugePressurePa: given.gaugePressurePa * factor }))).toBeGreaterThanOrEqual(time)
        expect(number(ventTime({ ...given, sonicConductanceM3PerSPa: given.sonicConductanceM3PerSPa / factor }))).toBeGreaterThanOrEqual(time)
      }),
    )
  })
})

describe('an accumulator through an orifice', () => {
  const accumulator = {
    volumeM3: 0.01,
    prechargePa: 100 * bar,
    highestPressurePa: 200 * bar,
    polytropicExponent: 1,
    orificeAreaM2: 3e-6,
    dischargeCoefficient: 0.6,
    densityKgPerM3: 870,
  }

  // For n = 1 and a tank at 0 bar absolute the integral is 2/3·V₀/(μ·A·√(2·p₀/ρ))·(1 − (p₀/p₂)^(3/2)); the air around changes it by less than 1 %.
  test('slow gas: within a hundredth of the closed form', () => {
    const closed = ((2 / 3) * 0.01 * (1 - 0.5 ** 1.5)) / (0.6 * 3e-6 * Math.sqrt((2 * 100 * bar) / 870))
    expectValue(oilDischargeTime(accumulator), closed, closed / 100)
  })

  test('fast gas: as stepped down in time', () => {
    const n = 1.4
    let [volume, t] = [0.01 * 0.5 ** (1 / n), 0]
    const step = 1e-3
    while (volume < 0.01) {
      const p = 100 * bar * (0.01 / volume) ** n
      volume += step * 0.6 * 3e-6 * Math.sqrt((2 * (p - standardAtmospherePa)) / 870)
      t += step
    }
    expectValue(oilDischargeTime({ ...accumulator, polytropicExponent: n }), t, t / 500)
  })

  test('what is missing, and what cannot be', () => {
    expect(oilDischargeTime({ ...accumulator, orificeAreaM2: undefined, densityKgPerM3: undefined })).toEqual({
      notComputed: ['orificeArea', 'density'],
    })
    expect(oilDischargeTime({ ...accumulator, highestPressurePa: 90 * bar })).toHaveProperty('impossible')
    expect(oilDischargeTime({ ...accumulator, prechargePa: bar })).toHaveProperty('impossible')
  })
})

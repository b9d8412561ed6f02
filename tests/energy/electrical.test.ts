import { describe, expect, test } from 'vitest'
import { capacitorCharge, capacitorEnergy } from '../../src/energy/capacitor.ts'
import { dcBusPeak } from '../../src/energy/dc-bus-peak.ts'
import { dischargePower, dischargeTime, largestDischargeResistor, timeToFraction, voltageAfter } from '../../src/energy/discharge.ts'
import { capacitorBankLimitS, mustBeGuarded } from '../../src/energy/live-voltage.ts'
import { residualVoltage } from '../../src/energy/residual-voltage.ts'
import { roundedUpS } from '../../src/energy/round-up.ts'
import { isComputed } from '../../src/law/law.ts'
import { expectValue } from './expect-value.ts'

// Source: design tool of a resistor maker.
test('E01: 195 µF over 50 Ω from 1500 V to 320 V', () => {
  const given = { capacitanceF: 195e-6, resistanceOhm: 50, startVoltageV: 1500, limitVoltageV: 320 }
  expectValue(dischargeTime(given), 0.015063, 1e-5)
  expectValue(capacitorEnergy(given), 219.375, 0.01)
  expectValue(dischargePower(given), 45_000, 1)
})

// Source: project manual of a drive maker.
test('E02: 300 µF over 150 kΩ from 600 V to 50 V', () => {
  const given = { capacitanceF: 300e-6, resistanceOhm: 150e3, startVoltageV: 600, limitVoltageV: 50 }
  expectValue(dischargeTime(given), 111.82, 0.05)
  expectValue(voltageAfter({ ...given, elapsedS: 300 }), 0.76, 0.01)
})

// Source: college physics textbook, chapter 21; it prints 120 s and 125 s.
test('E03, E04: time to a fraction', () => {
  expectValue(timeToFraction({ timeConstantS: 20, remainingFraction: 0.0025 }), 119.8, 0.5)
  expectValue(timeToFraction({ timeConstantS: 85e-6 * 260e3, remainingFraction: 0.0035 }), 124.98, 0.05)
})

describe('IEC 60204-1, 6.2.4: 60 V after 5 s, after 1 s at a plug', () => {
  const verdict = (capacitanceF: number, resistanceOhm: number | undefined, startVoltageV: number, where?: 'plug') => {
    const result = residualVoltage({ capacitanceF, resistanceOhm, startVoltageV }, where)
    if (!('verdict' in result)) throw new Error(JSON.stringify(result))
    return result
  }

  test('E05: a bus that needs 108.54 s gets a notice of 2 min', () => {
    const { verdict: said, time } = verdict(2200e-6, 22e3, 565)
    expect(said).toBe('too-slow')
    expectValue(time ?? { notComputed: [] }, 108.54, 0.05)
    expect(roundedUpS(time?.value ?? Number.NaN)).toBe(120)
  })

  test.each([
    ['E06', 470e-6, 4700, 565, 4.95],
    ['E07', 1000e-6, 2200, 400, 4.17],
  ])('%s: in time', (_, c, r, v, seconds) => {
    const { verdict: said, time } = verdict(c, r, v)
    expect(said).toBe('in-time')
    expectValue(time ?? { notComputed: [] }, seconds, 0.01)
  })

  test('E08: a plug with 1 µF and 1 MΩ is too slow, and needs 592 kΩ', () => {
    const { verdict: said, time, limitS } = verdict(1e-6, 1e6, 325, 'plug')
    expect([said, limitS]).toEqual(['too-slow', 1])
    expectValue(time ?? { notComputed: [] }, 1.69, 0.01)
    expectValue(largestDischargeResistor({ capacitanceF: 1e-6, startVoltageV: 325, limitVoltageV: 60, allowedS: 1 }), 592e3, 1000)
    expect(verdict(1e-6, 590e3, 325, 'plug').verdict).toBe('in-time')
  })

  test('E09, E10: a charge up to 60 µC is exempt, and needs no resistor', () => {
    expectValue(capacitorCharge({ capacitanceF: 0.1e-6, startVoltageV: 565 }), 56.5e-6, 0.1e-6)
    expectValue(capacitorCharge({ capacitanceF: 0.11e-6, startVoltageV: 565 }), 62.2e-6, 0.1e-6)
    expect(verdict(0.1e-6, 1e9, 565).verdict).toBe('charge-exempt')
    expect(verdict(0.1e-6, undefined, 565)).not.toHaveProperty('time')
    expect(verdict(0.11e-6, 1e9, 565).verdict).toBe('too-slow')
    expect(residualVoltage({ capacitanceF: 0.11e-6, resistanceOhm: undefined, startVoltageV: 565 })).toEqual({ notComputed: ['resistance'] })
  })

  test('E11: 24 V is below the limit from the start', () => {
    expectValue(dischargeTime({ capacitanceF: 1e-3, resistanceOhm: 1e3, startVoltageV: 24, limitVoltageV: 60 }), 0, 0)
  })

  test('E12: the largest resistor for 5 s, and its power', () => {
    const resistor = largestDischargeResistor({ capacitanceF: 2200e-6, startVoltageV: 565, limitVoltageV: 60, allowedS: 5 })
    expectValue(resistor, 1013, 1)
    expectValue(dischargePower({ startVoltageV: 565, resistanceOhm: isComputed(resistor) ? resistor.value : undefined }), 315, 1)
    expect(largestDischargeResistor({ capacitanceF: 1e-3, startVoltageV: 24, limitVoltageV: 60, allowedS: 5 })).toHaveProperty('impossible')
  })
})

// √2 times the line voltage: computed.
test('E13: 400 V charge an unloaded bus to 565.7 V', () => expectValue(dcBusPeak({ lineVoltageV: 400 }), 565.7, 0.1))

// Source: 29 CFR 1910.303(g)(2)(i).
test('E14: live parts from 50 V are guarded', () => expect([48, 49.9, 50, 400].map(mustBeGuarded)).toEqual([false, false, true, true]))

// Source: NEC 460.6 and 460.28.
test('E15: capacitor banks fall to 50 V in 60 s, above 1000 V in 5 min', () => {
  expect([480, 1000, 1001, 4160].map(capacitorBankLimitS)).toEqual([60, 60, 300, 300])
})

import { expect, test } from 'vitest'
import { burns, burnThresholdC } from '../../src/energy/burn-threshold.ts'
import { coolDownTime } from '../../src/energy/cool-down.ts'
import { flashFraction } from '../../src/energy/flash-steam.ts'
import { impactSpeed, raisedLoadEnergy } from '../../src/energy/raised-load.ts'
import { discInertia, rotorEnergy } from '../../src/energy/rotor.ts'
import { roundedUpS } from '../../src/energy/round-up.ts'
import { runDownTime, stoppingAngle, stoppingTorque, viscousRunDownTime } from '../../src/energy/run-down.ts'
import { scaldWithinS } from '../../src/energy/scald.ts'
import { springEnergy, torsionSpringEnergy } from '../../src/energy/spring.ts'
import { coverForce, vacuumEnergy } from '../../src/energy/vacuum.ts'
import { isComputed } from '../../src/law/law.ts'
import { expectValue } from './expect-value.ts'

// G01, G02 and the rest of the springs and loads: computed from the formulas.
test('G01: spring of 5000 N/m, 0.15 m', () => {
  expectValue(springEnergy({ springRateNPerM: 5000, deflectionM: 0.15 }), 56.25, 0.01)
  expectValue(torsionSpringEnergy({ torsionRateNmPerRad: 5000, angleRad: 0.15 }), 56.25, 0.01)
})

test('G02: 1200 kg at 0.45 m', () => {
  expectValue(raisedLoadEnergy({ massKg: 1200, heightM: 0.45 }), 5295.6, 0.1)
  expectValue(impactSpeed({ heightM: 0.45 }), 2.9709, 0.0001)
})

// Source: physics textbook.
test('G03: 5 kg·m² at 60 rad/s stop in 300 s', () => {
  const rotor = { momentOfInertiaKgM2: 5, speedRadPerS: 60 }
  expectValue(stoppingTorque({ ...rotor, stoppingTimeS: 300 }), 1, 0.01)
  expectValue(rotorEnergy(rotor), 9000, 0.01)
  // The work of the torque over the angle is the energy.
  expectValue(stoppingAngle({ ...rotor, brakingTorqueNm: 1 }), 9000, 0.01)
})

// A web page prints 100 s: it rounds between its steps.
test('G04: 53 kg·m² at 4 rad/s, 6.5 N at 0.36 m', () => {
  expectValue(runDownTime({ momentOfInertiaKgM2: 53, speedRadPerS: 4, brakingTorqueNm: 6.5 * 0.36 }), 90.6, 0.05)
})

test('G05: disc of 40 kg, 0.3 m, 1500 1/min, 3 Nm', () => {
  const inertia = discInertia({ massKg: 40, radiusM: 0.3 })
  expectValue(inertia, 1.8, 0.0018)
  const rotor = { momentOfInertiaKgM2: isComputed(inertia) ? inertia.value : undefined, speedRadPerS: (1500 * 2 * Math.PI) / 60 }
  expectValue(rotorEnergy(rotor), 22_207, 22)
  expectValue(runDownTime({ ...rotor, brakingTorqueNm: 3 }), 94.25, 0.094)
})

test('a viscous drag: time to a speed, and 0 where it is reached', () => {
  const rotor = { momentOfInertiaKgM2: 2, speedRadPerS: 100, viscousDragNmsPerRad: 0.5 }
  expectValue(viscousRunDownTime({ ...rotor, harmlessSpeedRadPerS: 100 / Math.E }), 4, 1e-9)
  expectValue(viscousRunDownTime({ ...rotor, harmlessSpeedRadPerS: 200 }), 0, 0)
})

// Source: ISO 13732-1; G11: EN 563, figure 2.
test.each([
  ['G06', 'bare-metal', 60, 53, true],
  ['G06 at the threshold', 'bare-metal', 60, 51, true],
  ['G07', 'bare-metal', 60, 50, false],
  ['G08', 'ceramic', 600, 49, true],
  ['G09', 'plastic', 60, 55, false],
  ['G10', 'coated-metal', 28_800, 44, true],
  ['G11', 'bare-metal', 1, 70, true],
] as const)('%s: %s, %d s, %d °C', (_, surface, contactS, temperatureC, expected) => {
  expect(burns(surface, contactS, temperatureC)).toBe(expected)
})

test('values that no two texts confirm ask for a limit of the author', () => {
  expect(burns('bare-metal', 1, 66)).toEqual({ notComputed: ['harmlessAt'] })
  expect(burns('ceramic', 60, 60)).toEqual({ notComputed: ['harmlessAt'] })
  expect(burns('coated-metal', 60, 60)).toEqual({ notComputed: ['harmlessAt'] })
  expect([burnThresholdC('bare-metal', 10), burnThresholdC('wood', 60), burnThresholdC('wood', 36_000)]).toEqual([undefined, 60, 43])
})

// Source: table of a hospital's burns institute.
test('G12: water of 60 °C burns badly in less than 5 s', () => {
  expect([68, 60, 59, 55, 52, 51].map(scaldWithinS)).toEqual([1, 5, 10, 30, 120, undefined])
})

const hot = { temperatureK: 180 + 273.15, ambientK: 20 + 273.15, harmlessK: 48 + 273.15, timeConstantS: 45 * 60 }

test('G13: 180 °C to 48 °C takes 78.43 min: the label says 79 min', () => {
  const time = coolDownTime(hot)
  expectValue(time, 78.43 * 60, 0.05 * 60)
  expect(roundedUpS(isComputed(time) ? time.value : Number.NaN)).toBe(79 * 60)
})

test('G14: nothing cools to its ambient or below', () => {
  expect(coolDownTime({ ...hot, harmlessK: hot.ambientK })).toHaveProperty('impossible')
  expect(coolDownTime({ ...hot, harmlessK: hot.ambientK - 5 })).toHaveProperty('impossible')
  expectValue(coolDownTime({ ...hot, temperatureK: hot.harmlessK }), 0, 0)
})

test('G15: full vacuum on a cover of 600 mm, and in a cubic metre', () => {
  expectValue(coverForce({ pressureDifferencePa: 101_325, diameterM: 0.6 }), 28_650, 50)
  expectValue(vacuumEnergy({ volumeM3: 1 }), 101_325, 1e-6)
})

// Enthalpies of a steam table, in kJ/kg 632.2, 419.1 and 2256.4.
test('G16: flash of water of 150 °C', () => {
  const given = { liquidEnthalpyJPerKg: 632_200, saturationEnthalpyJPerKg: 419_100, evaporationHeatJPerKg: 2_256_400 }
  expectValue(flashFraction(given), 0.0944, 0.0005)
})

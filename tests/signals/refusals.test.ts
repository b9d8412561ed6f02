import { describe, expect, test } from 'vitest'
import { coldCoilResistance } from '../../src/signals/coil.ts'
import { materialFactor } from '../../src/signals/material-factor.ts'
import { excessGain } from '../../src/signals/photoelectric.ts'
import { platinumTolerance } from '../../src/signals/platinum-class.ts'
import { distanceFactors, factorsOf, targetRefusal } from '../../src/signals/proximity.ts'
import type { RefusalId } from '../../src/signals/refusals.ts'
import { safetySignal } from '../../src/signals/safety-device.ts'
import { pairingRefusal } from '../../src/signals/sensor-output.ts'
import { languagesWithSignalWords, signalWords } from '../../src/signals/words/words.ts'

/** Every refusal with what asks for the number. */
const asked: Readonly<Record<RefusalId, unknown>> = {
  'material-without-factor': materialFactor('inductive', 'titanium'),
  'target-smaller-than-standard': targetRefusal(11, 12),
  'no-assured-distance': factorsOf('ultrasonic'),
  'retro-reflective-gain': excessGain('retro-reflective', { ratedRangeM: 4, rangeM: 2 }),
  'diffuse-gain': excessGain('diffuse', { ratedRangeM: 4, rangeM: 2 }),
  'alternating-current-coil': coldCoilResistance({ fedWith: 'a.c.', hasElectronics: false }, { coilV: 230, coilW: 9 }),
  'coil-with-electronics': coldCoilResistance({ fedWith: 'd.c.', hasElectronics: true }, { coilV: 24, coilW: 4.5 }),
  'outside-class-range': platinumTolerance({ temperatureC: 700 }, 'B', [-196, 600]),
  'safety-approval': safetySignal('pass').approval,
  'pnp-on-sourcing-input': pairingRefusal('pnp', 'sourcing'),
  'npn-on-sinking-input': pairingRefusal('npn', 'sinking'),
  'not-this-pairing': pairingRefusal('dry contact', 'namur amplifier'),
}

describe.each(Object.entries(asked))('%s', (id, answer) => {
  test('is the answer, and no number', () => expect(answer).toEqual({ refused: id }))

  test.each(languagesWithSignalWords)('has its reason in %s', (language) => {
    expect(signalWords(language)?.refusals[id as RefusalId]).toMatch(/^\p{Lu}.{30,}\.$/u)
  })
})

test('what can be computed is not refused', () => {
  expect(factorsOf('inductive')).toBe(distanceFactors.inductive)
  expect([targetRefusal(12, 12), targetRefusal(undefined, 12)]).toEqual([undefined, undefined])
  expect(excessGain('through-beam', { ratedRangeM: 4, rangeM: 2 })).toHaveProperty('value', 4)
})

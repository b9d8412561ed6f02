import { describe, expect, test } from 'vitest'
import { findingsOf, inShort } from './read.ts'

const units = (text: string, language = 'en') => inShort(findingsOf('paragraph', text, language))

// Source: SI brochure, 9th edition, 5.2, 5.4.3 and 5.4.4.
describe('a unit', () => {
  test.each([
    ['The gap is 5mm.', ['unit-form: 5mm → 5 mm']],
    ['The gap is 3-5mm.', ['unit-form: 3-5mm → 3-5 mm']],
    ['It weighs 12 Kg.', ['unit-form: 12 Kg → 12 kg']],
    ['Wait 30 sec. Then start.', ['unit-form: 30 sec → 30 s']],
    ['The motor has 5.5 KW.', ['unit-form: 5.5 KW → 5.5 kW']],
    ['The belt has 12 mtr.', ['unit-form: 12 mtr → 12 m']],
    ['The oil has 40 degrees C.', ['unit-form: 40 degrees C → 40 °C']],
    ['The oil has 40°C.', ['unit-form: 40°C → 40 °C']],
    ['The oil has 40 ºC.', ['unit-form: 40 ºC → 40 °C']],
    ['Tighten it to 45 Nm.', ['unit-form: 45 Nm → 45 N·m']],
    ['The supply has 24V.', ['unit-form: 24V → 24 V']],
    ['It runs at 1.5 Mhz and 6 Bar.', ['unit-form: 1.5 Mhz → 1.5 MHz', 'unit-form: 6 Bar → 6 bar']],
    ['It weighs 1,450Kg.', ['unit-form: 1,450Kg → 1,450 kg']],
  ])('%s', (text, found) => {
    expect(units(text)).toEqual(found)
  })

  test.each([
    'The supply has 24 V DC, 24 VDC and 4 to 20 mA.',
    'Turn it by 90° at 1500 rpm.',
    'The load is 1,450 kg at 50 Hz, and 5 % of it is oil.',
    'Wait 5 minutes at 24 volts.',
    'It is on sheet 3A, terminal 2A, step 4h.',
    'Use M8 × 25, PT-100, part 4711-08mm and E-104.2V.',
    'The screen shows "40C 5mm".',
    'In the 3D view of the 5S board 2x.',
    'See item 2. Min level is marked.',
    'A hose of 1/2 in. and 1/2 inch.',
    'It moves 12 mm/s and takes 3 m³/h.',
    'Turn the key \uFFFC to 1.',
  ])('none: %s', (text) => {
    expect(units(text)).toEqual([])
  })
})

// Source: ISO 80000-1:2022.
describe('a unit outside the SI', () => {
  test.each([
    ['The air has 90 psi.', ['unit-not-si?: 90 psi']],
    ['The oil has 104 °F.', ['unit-not-si?: 104 °F']],
    ['The oil has 104 degrees F.', ['unit-form: 104 degrees F → 104 °F']],
    ['It weighs 20 lbs.', ['unit-not-si?: 20 lbs']],
    ['The air has 6 bar (87 psi).', []],
    ['The air has 87 psi (6 bar).', []],
    ['The rule: 100 psi = 6.9 bar = 690 kPa.', []],
  ])('%s', (text, found) => {
    expect(units(text)).toEqual(found)
  })
})

// Source: SI brochure, 9th edition, 5.4.4: point or comma on the line, by the custom of the language.
describe('a decimal sign', () => {
  test.each([
    ['en', 'The gap is 1,5 mm.', ['decimal-sign: 1,5 mm → 1.5 mm']],
    ['en', 'The load is 1,450 kg.', []],
    ['en', 'The gap is 0,125 mm.', ['decimal-sign: 0,125 mm → 0.125 mm']],
    ['en', 'See steps 1,2 and 3.', []],
    ['de', 'Der Spalt ist 1.5 mm.', ['decimal-sign: 1.5 mm → 1,5 mm']],
    ['de', 'Die Last ist 1.450 kg.', []],
    ['fr', 'Le jeu est de 1.5 mm.', ['decimal-sign: 1.5 mm → 1,5 mm']],
    ['es', 'La holgura es de 1.5 mm.', ['decimal-sign?: 1.5 mm → 1,5 mm']],
    ['es-MX', 'La holgura es de 1.5 mm.', []],
    ['es-MX', 'La holgura es de 1,5 mm.', ['decimal-sign?: 1,5 mm → 1.5 mm']],
    ['es', 'La holgura es de 1,5mm.', ['unit-form: 1,5mm → 1,5 mm']],
    ['de-CH', 'Der Spalt ist 1.5 mm oder 1,5 mm.', []],
    ['xx', 'A 1.5 mm and 1,5 mm.', []],
  ])('%s: %s', (language, text, found) => {
    expect(units(text, language)).toEqual(found)
  })
})

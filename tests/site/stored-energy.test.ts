import { describe, expect, test } from 'vitest'
import type { EnergyStore } from '../../src/model/energy-store.ts'
import type { EnergySource } from '../../src/model/machine.ts'
import { waitLabel } from '../../src/site/parts/said.ts'
import { energyText, scaldText, waitText, workings } from '../../src/site/parts/stored-energy.ts'
import { en } from '../../src/site/words/en.ts'
import { es } from '../../src/site/words/es.ts'

const place = { file: 'energy.yaml', line: 1, column: 1, endLine: 1, endColumn: 1 }

function source(stores: (Pick<EnergyStore, 'kind' | 'given'> & Partial<EnergyStore>)[], rest: Partial<EnergySource> = {}): EnergySource {
  const nothing = {
    place,
    of: undefined,
    quantities: {},
    surface: undefined,
    contactS: undefined,
    liquid: undefined,
    type: undefined,
    makersRatio: undefined,
  }
  return {
    id: { value: 'bus', place },
    form: 'electrical',
    name: {},
    magnitude: [],
    areas: [],
    hazard: {},
    hazards: [],
    from: undefined,
    pointNames: [],
    isolation: [],
    stored: true,
    stores: stores.map((store) => ({ ...nothing, ...store })),
    delayNoticeS: { value: 300, place },
    reaccumulates: false,
    watch: undefined,
    dissipate: undefined,
    waitS: undefined,
    waitBasis: undefined,
    verify: { by: ['voltage-test'], method: {}, expect: {}, noVoltageTest: undefined, tags: [] },
    fits: [],
    placeOf: () => place,
    ...rest,
  }
}

const bus = { kind: 'capacitor', given: { capacitanceF: 4.7e-4, startVoltageV: 622, resistanceOhm: 220e3 } } as const
const noResistor = { kind: 'capacitor', given: { capacitanceF: 4.7e-4, startVoltageV: 622 } } as const
const tank = { kind: 'hot-body', given: { temperatureK: 333.15, ambientK: 308.15, harmlessK: 313.15, timeConstantS: 18_000 } } as const
const basis = { en: { value: 'Label on the drive', place } }

describe('stored energy', () => {
  test('of all stores together', () => expect(energyText(source([bus, bus]), en, 'en')).toBe('181.8\u202fJ'))
  test('says what is missing, in the language of the page', () => {
    const half = { kind: 'capacitor', given: { startVoltageV: 622 } } as const
    expect(energyText(source([bus, half]), en, 'en')).toBe('not computed; missing: capacitance')
    expect(energyText(source([bus, half]), es, 'es')).toBe('no calculado; falta: capacidad')
  })
  test('is not told of a source that stores nothing, nor of a hot body; of a chemical why not', () => {
    expect(energyText(source([bus], { stored: false }), en, 'en')).toBeUndefined()
    expect(energyText(source([tank]), en, 'en')).toBeUndefined()
    expect(energyText(source([{ kind: 'chemical', given: {} }]), en, 'en')).toMatch(/^Not computed: no law/)
  })
})

describe('waiting time', () => {
  test('computed', () => expect(waitText(source([bus]), en, 'en')).toEqual({ text: 'Wait 5 min', basis: undefined }))
  test('stated, with its basis', () => {
    expect(waitText(source([bus], { waitS: 300, waitBasis: basis }), en, 'en')).toEqual({ text: 'Wait 5 min', basis })
    expect(waitText(source([noResistor], { waitS: 90, waitBasis: basis }), en, 'en')).toEqual({ text: 'Wait 90 s', basis })
  })
  test('too short as stated: the computed one, and no basis of the stated one', () => {
    expect(waitText(source([bus], { waitS: 60, waitBasis: basis }), en, 'en')).toEqual({ text: 'Wait 5 min', basis: undefined })
  })
  test('not computed', () => {
    expect(waitText(source([noResistor]), en, 'en')?.text).toBe('Waiting time: not computed; missing: discharge resistor')
    expect(waitText(source([]), es, 'es')?.text).toBe('Tiempo de espera: no calculado; falta: qué contiene la energía')
  })
  test('of a tank that is left to cool', () => expect(waitText(source([tank]), en, 'en')?.text).toBe('Left to cool by itself: 8 h 3 min'))
})

test('the working shows formulas, results and inputs, each once', () => {
  expect(workings(source([bus]), 'en')).toEqual([
    {
      of: undefined,
      results: ['E = C·V₀²/2 = 90.92\u202fJ', 't = R·C·ln(V₀/V) = 241.8\u202fs'],
      inputs: [
        'C = 470\u202fµF (capacitance)',
        'V₀ = 622\u202fV (highest voltage)',
        'R = 220\u202fkΩ (discharge resistor)',
        'V = 60\u202fV (harmless at)',
      ],
    },
  ])
  expect(workings(source([noResistor]), 'en').map(({ results }) => results.length)).toEqual([1])
  expect(workings(source([bus], { stored: false }), 'en')).toEqual([])
})

test('the voltage of a bus is computed from its line, and shown', () => {
  const byLine = { kind: 'capacitor', given: { capacitanceF: 4.7e-4, lineVoltageV: 440, resistanceOhm: 220e3 } } as const
  expect(waitText(source([byLine]), en, 'en')?.text).toBe('Wait 5 min')
  expect(workings(source([byLine]), 'en')[0]?.results).toEqual([
    'V₀ = √2·V = 622.3\u202fV',
    'E = C·V₀²/2 = 90.99\u202fJ',
    't = R·C·ln(V₀/V) = 241.9\u202fs',
  ])
})

test('of a hot liquid the time in which it scalds, of the hottest one', () => {
  const water = (temperatureK: number) => ({ kind: 'hot-body', liquid: 'water', given: { temperatureK } }) as const
  expect(scaldText(source([water(333.15), water(355.15)]), en)).toBe('Burns skin badly within 1 s, as tables of hot water say.')
  expect(scaldText(source([water(333.15)]), es)).toBe('Quema gravemente la piel en 5 s, según tablas de agua caliente.')
  for (const cool of [source([water(313.15)]), source([tank]), source([water(355.15)], { stored: false })])
    expect(scaldText(cool, en)).toBeUndefined()
})

test('of water above 100 °C the share that turns to steam', () => {
  const boiler = { kind: 'hot-body', liquid: 'water', given: { ...tank.given, temperatureK: 423.15, liquidEnthalpyJPerKg: 632.2e3 } } as const
  expect(workings(source([boiler]), 'en')[0]?.results[0]).toBe('x = (h₁ − h₂)/r = 0.09444')
})

test('of a vent that is not known the time is not computed', () => {
  const receiver = { kind: 'receiver', given: { gaugePressurePa: 6e5, volumeM3: 0.05, adiabaticExponent: 1.4 } } as const
  expect(waitText(source([receiver]), en, 'en')?.text).toBe(
    'Waiting time: not computed; missing: sonic conductance of the vent, critical pressure ratio of the vent, harmless at',
  )
})

test.each([
  [90, '90 s'],
  [119.2, '120 s'],
  [120, '2 min'],
  [4740, '79 min'],
  [7200, '2 h 0 min'],
  [28_980, '8 h 3 min'],
  [28_981, '8 h 4 min'],
])('%d s is %s', (seconds, expected) => expect(waitLabel(en, seconds)).toBe(expected))

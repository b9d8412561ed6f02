import { describe, expect, test } from 'vitest'
import { diskFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import { graphOf } from '../../src/model/graph.ts'
import { inputLimits } from '../../src/signals/digital-input.ts'
import type { SwitchedCircuit } from '../../src/signals/fault/circuit.ts'
import { faultTable } from '../../src/signals/fault/fault-table.ts'
import { readQuantity } from '../../src/signals/read-quantity.ts'
import { outputLimits } from '../../src/signals/sensor-output.ts'
import { faultWords } from '../../src/signals/words/fault-words.ts'
import { signalWords } from '../../src/signals/words/words.ts'
import type { Context } from '../../src/site/context.ts'
import { fieldsOf, indicatorsOf } from '../../src/site/meter/fields-of.ts'
import { expectationOf, judgeField, withMeasured } from '../../src/site/meter/judge-field.ts'
import { lightPatterns, observationsOf } from '../../src/site/meter/light-pattern.ts'
import type { Field, MeterSheet, PlatinumSheet, SwitchedSheet, Values } from '../../src/site/meter/meter-sheet.ts'
import { bandText, basisText } from '../../src/site/meter/meter-words.ts'
import { type Lights, outcomeOf } from '../../src/site/meter/outcome-of.ts'
import { faultRowsOf } from '../../src/site/parts/fault-rows.ts'
import { metersOf } from '../../src/site/parts/meter.ts'
import { pressed } from '../../src/site/scripts/meter/keys.ts'
import { labelsOf } from '../../src/site/words/labels.ts'
import { meterEn, meterEs, meterWords } from '../../src/site/words/meter.ts'

const pnp: SwitchedCircuit = {
  output: 'pnp',
  contact: 'NO',
  card: 'sinking',
  supplyV: { value: 24, basis: 'data sheet' },
  lowestSupplyV: { value: 10, basis: 'data sheet' },
  dropV: { value: 2, basis: 'data sheet' },
  limits: inputLimits['Type 3'],
}
const sheetOf = (circuit: Partial<SwitchedCircuit> = {}): SwitchedSheet => ({ kind: 'switched', circuit: { ...pnp, ...circuit }, expected: [] })
const loop: MeterSheet = { kind: 'loop', low: 0, high: 6, unit: 'bar', expected: [] }
const pt100: PlatinumSheet = { kind: 'platinum', iceResistanceOhm: 100, low: 0, high: 150, expected: [] }

function first(sheet: MeterSheet, values: Values, lights: Lights = {}): string | undefined {
  const outcome = outcomeOf(sheet, values, lights)
  if (outcome.kind === 'value') return outcome.causes[0]?.id ?? outcome.sign
  return outcome.kind === 'faults' ? outcome.findings.diagnoses[0]?.row.id : outcome.kind
}
const field = (sheet: MeterSheet, id: string): Field => {
  const found = fieldsOf(sheet).find((it) => it.id === id)
  if (!found) throw new Error(`no field ${id}`)
  return found
}

describe('a fault row in words', () => {
  const words = signalWords('en')
  if (!words) throw new Error('no words')
  const guard = { seen: { target: 'guard open', none: 'guard closed' }, isSafetyDevice: true } as const

  test('of a healthy safety device approves nothing', () => {
    expect(faultWords(words, 'healthy', guard).diagnosis).toBe('What was read is as expected. It approves no safety function.')
    expect(faultWords(words, 'healthy', {}).diagnosis).toBe('The circuit is healthy.')
  })

  test('of a guard speaks of the guard, and never asks to bridge it', () => {
    expect(faultWords(words, 'always-senses', guard).diagnosis).toBe('The guard is reported open, and it is closed.')
    expect(faultWords(words, 'never-senses', guard)).toEqual(words.stuck['guard closed'])
    expect(words.stuck['guard closed'].nextStep).toContain('lock it out')
    expect(faultWords(words, 'never-senses', {}).diagnosis).toBe('The sensor does not see the target.')
  })
})

describe('a number key', () => {
  test.each([
    ['0', '5', '5'],
    ['−0', '2', '−2'],
    ['0.', '5', '0.5'],
    ['10', '0', '100'],
    ['', 'decimal', '0.'],
  ])('after `%s` %s gives %s', (text, key, shown) => expect(pressed(text, key, '.')).toBe(shown))
})

describe('a supply that was not measured', () => {
  const sheet: SwitchedSheet = { ...sheetOf(), supply: { band: { low: 20.4, high: 26.4 }, basis: ['data sheet'] } }
  const healthy = { 'output-at-sensor.target': 25.1, 'input-at-card.target': 25, 'input-at-card.none': 0.1 }
  const lights: Lights = { 'output-led': 'with', 'card-led': 'with', tag: 'with' }

  test('is told by the highest reading, so that a good circuit is no faulty one', () => {
    expect(first(sheet, healthy, lights)).toBe('healthy')
    expect(judgeField(field(sheet, 'output-at-sensor.target'), 25.1, withMeasured(sheet, healthy), healthy)).toBe('pass')
  })

  test('is not believed beyond what its source may give, and a reading of it counts first', () => {
    const beyond = { 'output-at-sensor.target': 27 }
    expect(judgeField(field(sheet, 'output-at-sensor.target'), 27, withMeasured(sheet, beyond), beyond)).toBe('fail')
    const read = { ...healthy, supply: 24 }
    expect(judgeField(field(sheet, 'output-at-sensor.target'), 25.1, withMeasured(sheet, read), read)).toBe('fail')
  })
})

describe('the rows that come first', () => {
  const dry = sheetOf({ output: 'dry contact', dropV: outputLimits['dry contact'].dropV })
  const npn = sheetOf({ output: 'npn', card: 'sourcing' })
  test.each<[string, MeterSheet, Values, Lights, string]>([
    ['two taps: the LED follows, the tag stays off', sheetOf(), {}, { 'output-led': 'with', tag: 'never' }, 'signal-open'],
    ['the LED follows, the tag stays on', sheetOf(), {}, { 'output-led': 'with', tag: 'always' }, 'signal-shorted-to-l-plus'],
    ['and the LED of the card follows too', sheetOf(), {}, { 'output-led': 'with', 'card-led': 'with', tag: 'always' }, 'tag-stays-on'],
    ['no supply at the sensor', sheetOf(), { 'supply-at-sensor.target': 0, 'brown-to-common.target': 0 }, { 'output-led': 'never' }, 'l-plus-open'],
    ['the signal is good, its channel is dark', sheetOf(), { 'input-at-card.target': 22 }, { 'card-led': 'never' }, 'card-channel-failed'],
    [
      'an NC sensor for an NO one',
      sheetOf(),
      { 'input-at-card.target': 0, 'input-at-card.none': 22 },
      { 'output-led': 'without' },
      'contact-inverted',
    ],
    ['leakage lights the input', sheetOf(), { 'input-at-card.target': 22, 'input-at-card.none': 8 }, {}, 'leakage'],
    ['a contact that is pressed and stays open', dry, { 'across-sensor.target': 24 }, { tag: 'never' }, 'contact-stays-open'],
    ['an NPN sensor whose wire is open', npn, { 'input-at-card.target': 24 }, { 'output-led': 'with' }, 'signal-open'],
    ['all good', sheetOf(), { supply: 24, 'input-at-card.target': 22, 'input-at-card.none': 0.1 }, { 'output-led': 'with', tag: 'with' }, 'healthy'],
    ['all good at a measured supply of 20 V', sheetOf(), { supply: 20, 'supply-at-sensor.target': 20, 'input-at-card.target': 18 }, {}, 'healthy'],
    ['nothing entered', sheetOf(), {}, {}, 'nothing'],
    ['a sensor that cannot drive its card', sheetOf({ card: 'sourcing' }), {}, { tag: 'never' }, 'refused'],
    ['no current', loop, { 'loop-current': 0 }, {}, 'loop-open'],
    ['3.5 mA', loop, { 'loop-current': 3.5 }, {}, 'transmitter-reports-low'],
    ['3.7 mA', loop, { 'loop-current': 3.7 }, {}, 'betweenStates'],
    ['3.9 mA', loop, { 'loop-current': 3.9 }, {}, 'saturated'],
    ['21 mA', loop, { 'loop-current': 21 }, {}, 'transmitter-reports-high'],
    ['an open thermometer', pt100, { element: 1e6 }, {}, 'element-open'],
    ['a shorted thermometer', pt100, { element: 0.4 }, {}, 'element-shorted'],
  ])('%s', (_, sheet, values, lights, expected) => expect(first(sheet, values, lights)).toBe(expected))

  test('each but the first names what tells it apart', () => {
    const outcome = outcomeOf(sheetOf(), {}, { 'output-led': 'with', tag: 'never' })
    expect(outcome.kind === 'faults' && outcome.apart.slice(1, 4)).toMatchObject([{ indicator: 'card-led' }, { point: 'output-at-sensor' }, {}])
  })
})

describe('values', () => {
  // Pt100 at 131.2 Ω: IEC 60751:2022, t = (−A + √(A² − 4B(1 − R/R₀)))/2B = 80.76 °C.
  test('131.2 Ω of a Pt100 are 80.8 °C, inside the range', () => {
    expect(outcomeOf(pt100, { element: 131.2, reference: 80 }, {})).toMatchObject({
      value: expect.closeTo(80.77, 1),
      difference: expect.closeTo(0.77, 1),
    })
    expect(judgeField(field(pt100, 'element'), 131.2, pt100, {})).toBe('pass')
    expect(judgeField(field(pt100, 'element'), 165, pt100, {})).toBe('fail')
  })
  test('the pair of leads is taken off what is read across the element', () => {
    expect(outcomeOf(pt100, { element: 133, leads: 1.8 }, {})).toMatchObject({ value: expect.closeTo(80.77, 1) })
    expect(judgeField(field(pt100, 'element'), 158, pt100, { leads: 1.8 })).toBe('pass')
    expect(judgeField(field(pt100, 'element'), 158, pt100, {})).toBe('fail')
  })
  test('against the reference the class of the element counts', () => {
    const classB: MeterSheet = { ...pt100, tolerance: { class: 'B', rangeC: [-50, 500] } }
    const at = (reference: number) => judgeField(field(classB, 'element'), 131.2, classB, { reference })
    expect([at(80.2), at(79)]).toEqual(['pass', 'fail'])
  })
  test('13.6 mA of 0 to 6 bar are 3.6 bar', () => {
    expect(outcomeOf(loop, { 'loop-current': 13.6 }, {})).toMatchObject({ sign: 'measuring', value: expect.closeTo(3.6, 9), unit: 'bar' })
  })
  test.each([
    [3.5, 'fail'],
    [3.7, 'no verdict'],
    [3.8, 'pass'],
    [20.5, 'pass'],
    [20.8, 'no verdict'],
    [21, 'fail'],
  ])('%d mA: %s', (current, verdict) => expect(judgeField(field(loop, 'loop-current'), current, loop, {})).toBe(verdict))
})

describe('limits', () => {
  test('follow the supply that was measured, and say so', () => {
    const at = (values: Values) => expectationOf(field(sheetOf(), 'output-at-sensor.target'), withMeasured(sheetOf(), values), values)
    expect(at({})).toMatchObject({ usual: { low: 21.7, high: 23.7 }, basis: ['data sheet', 'standard'] })
    expect(at({ supply: 20 })).toMatchObject({ usual: { low: 17.7, high: 19.7 }, basis: ['measured', 'data sheet', 'standard'] })
  })
  test('are generic where nobody has looked them up', () => {
    const generic = sheetOf({ dropV: outputLimits.pnp.dropV })
    const expected = expectationOf(field(generic, 'input-at-card.target'), generic, {})
    expect(basisText(meterEn, expected?.basis ?? [])).toBe('data sheet, generic limit, standard')
  })
  test('are missing where the supply is', () => {
    const { supplyV: _, ...unsupplied } = pnp
    const sheet: MeterSheet = { kind: 'switched', circuit: unsupplied, expected: [] }
    expect(expectationOf(field(sheet, 'input-at-card.target'), sheet, {})).toBeUndefined()
    expect(judgeField(field(sheet, 'input-at-card.target'), 22, sheet, {})).toBe('no verdict')
    expect(outcomeOf(sheet, { 'input-at-card.target': 22 }, {})).toMatchObject({ findings: { notJudged: [{ missing: ['supply'] }] } })
  })
})

test('every light can be tapped in a way that each row shows', () => {
  for (const output of ['pnp', 'npn', '2-wire', 'dry contact', 'namur'] as const) {
    const card = output === 'npn' ? 'sourcing' : output === 'namur' ? 'namur amplifier' : 'sinking'
    const sheet = sheetOf({ output, card })
    const table = faultTable(sheet.circuit)
    if ('refused' in table) throw new Error(output)
    for (const indicator of indicatorsOf(sheet))
      for (const { id, lights } of table)
        expect(
          lightPatterns.some((pattern) =>
            observationsOf(indicator, pattern).every((it) => 'shows' in it && (lights[indicator]?.[it.state]?.includes(it.shows) ?? true)),
          ),
          `${output} ${id} ${indicator}`,
        ).toBe(true)
  }
})

describe('in words', () => {
  test.each([
    [{ low: 20.2, high: 23.7 }, '20,2 a 23,7 V'],
    [{ low: -0.3, high: 5 }, '−0,3 a 5,0 V'],
    [{ high: -0.01 }, '≤ 0,0 V'],
    [{ low: 15 }, '≥ 15,0 V'],
    [{}, 'cualquiera'],
  ])('%j is %s', (band, text) => expect(bandText(meterEs, band, 'V')).toBe(text))

  test('the table has every row and every reading of the circuit', () => {
    const signal = signalWords('en')
    if (!signal) throw new Error('no words')
    const shown = faultRowsOf(sheetOf(), meterEn, signal)
    expect(shown?.rows.map(({ id }) => id)).toContain('cores-swapped')
    expect(shown?.headings).toHaveLength(9)
    expect(shown?.rows.find(({ id }) => id === 'signal-open')?.cells.map(({ lines }) => lines)).toEqual([
      ['on', 'off'],
      ['off', 'off'],
      ['off', 'off'],
      ['off', 'off'],
      ['20.4 to 24.3 V', '20.4 to 24.3 V'],
      ['11.0 to 24.3 V', 'any'],
      ['20.4 to 24.3 V', '20.4 to 24.3 V'],
      ['−0.3 to 0.3 V', '−0.3 to 0.3 V'],
      ['−0.3 to 0.3 V', '−0.3 to 0.3 V'],
    ])
  })

  test('every language of the meter has its own', () => {
    expect(meterWords('es')?.meter).not.toBe(meterWords('en')?.meter)
    expect(meterWords('xx')).toBeUndefined()
  })
})

describe('every device of the example', () => {
  const { machines } = loadMachine(diskFolder('example-machine', 'example-machine/'), diskFolder('content', 'content/'))
  const [machine] = machines
  if (!machine) throw new Error('no machine')
  const graph = graphOf(machine)
  const labels = labelsOf('en')
  const context = { machine, graph, language: 'en', labels } as unknown as Context
  const metered = machine.devices.flatMap((device) => metersOf(context, device).map((it) => [device.tag.value, it] as const))

  test('has a meter where it has something to read', () => {
    expect(metered.length).toBeGreaterThan(60)
    expect(new Set(metered.map(([, { sheet }]) => sheet.kind))).toEqual(
      new Set(['switched', 'loop', 'platinum', 'plain', 'voltage', 'thermocouple', 'thermistor', 'output', 'encoder', 'flow', 'motor']),
    )
  })

  test('asks for each reading under an id of its own, and only in units that can be typed', () => {
    for (const [tag, { sheet }] of metered) {
      const ids = fieldsOf(sheet).map(({ id }) => id)
      expect(new Set(ids).size, tag).toBe(ids.length)
      for (const { id, unit } of fieldsOf(sheet)) expect(readQuantity(`1 ${unit}`, unit), `${tag} ${id}`).toMatchObject({ value: 1 })
    }
  })

  test('passes with what a good circuit reads, at the nominal supply', () => {
    for (const [tag, { sheet }] of metered)
      for (const it of fieldsOf(sheet)) {
        const usual = expectationOf(it, sheet, {})?.usual
        if (usual?.low === undefined || usual.high === undefined) continue
        expect(judgeField(it, (usual.low + usual.high) / 2, sheet, {}), `${tag} ${it.id}`).toBe('pass')
      }
  })

  test('of a safety device is never an approval', () => {
    const safety = metered.filter(([, { isSafetyDevice }]) => isSafetyDevice).map(([tag]) => tag)
    expect(safety).toEqual(expect.arrayContaining(['ES055', 'GLS221', 'LC106']))
  })
})

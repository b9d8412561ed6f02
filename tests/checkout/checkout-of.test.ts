import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkoutOf, hasLimits } from '../../src/checkout/checkout-of.ts'
import type { Expectation } from '../../src/checkout/expectation.ts'
import { meaningOf } from '../../src/checkout/meaning.ts'
import { readTaken } from '../../src/checkout/reading.ts'
import { canBe } from '../../src/law/input-kind.ts'
import { diskFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import { graphOf } from '../../src/model/graph.ts'
import { checkoutNumbers } from '../../src/model/schema/checkout-values.ts'
import { type InputName, inputKinds } from '../../src/signals/inputs.ts'

const folder = diskFolder('example-machine', '')
const example = new Map(
  folder.list().flatMap((path) => (/\.(yaml|csv)$/.test(path) ? [[path, readFileSync(`example-machine/${path}`, 'utf8')] as const] : [])),
)

/** What a device of the example should read, with some words of its data changed. */
function checkout(tag: string, change: Readonly<Record<string, string>> = {}, measuredV?: number) {
  const files = new Map(example)
  for (const [from, to] of Object.entries(change)) {
    const path = [...files.keys()].find((it) => it.startsWith('data/') && files.get(it)?.includes(from))
    if (path === undefined) throw new Error(`no file has ${from}`)
    files.set(path, (files.get(path) ?? '').replaceAll(from, to))
  }
  const { machines } = loadMachine(
    { ...folder, read: (path) => Buffer.from(files.get(path) ?? folder.read(path)) },
    diskFolder('content', 'content/'),
  )
  for (const machine of machines) {
    const device = machine.devices.find((it) => it.tag.value === tag)
    const found = device && checkoutOf(device, machine, graphOf(machine), measuredV)
    if (found) return found
  }
  throw new Error(`no checkout of ${tag}`)
}

const of = (all: readonly Expectation[], measured: Expectation['measured'], state?: Expectation['state']) =>
  all.find((it) => it.measured === measured && (state === undefined || it.state === state))

describe('a PNP switch on a sinking card', () => {
  const { expectations, circuit } = checkout('PRS204')

  test('has its circuit for the fault table', () => {
    expect(circuit).toMatchObject({ output: 'pnp', contact: 'NO', card: 'sinking', dropV: { value: 2, basis: 'data sheet' } })
  })

  test('reads at the terminal what supply, drop and cable leave, and passes by the limits of the card', () => {
    const on = of(expectations, 'terminal-voltage', 'target')
    // 24 − 2 − (10 + 2.5) mA · 0.784 Ω − 2.5 mA · 0.784 Ω, by hand.
    expect(on?.value).toBeCloseTo(21.98824, 6)
    expect(on).toMatchObject({ low: 11, high: 30, unit: 'V', point: 'terminal', meter: 'input-at-card' })
    expect(of(expectations, 'terminal-voltage', 'none')).toMatchObject({ low: -3, high: 5 })
  })

  test('follows the supply that was measured', () => {
    const on = of(checkout('PRS204', {}, 20).expectations, 'terminal-voltage', 'target')
    expect(on?.value).toBeCloseTo(17.98824, 6)
    expect(on?.restsOn.bases).toContain('measured')
  })

  test('has both gaps', () => {
    // 0.81 · 8 and 1.43 · 8.
    expect(of(expectations, 'on-distance')?.high).toBeCloseTo(6.48, 9)
    expect(of(expectations, 'off-distance')?.low).toBeCloseTo(11.44, 9)
  })

  test('without a drop from the data sheet takes the limit of the standard, and says that it is a generic one', () => {
    const on = of(checkout('PRS204', { '    dropV: 2\n': '' }).expectations, 'terminal-voltage', 'target')
    expect(on?.value).toBeCloseTo(20.48824, 6)
    expect(on?.restsOn).toMatchObject({ generic: true, fromMemory: true })
    expect(of(expectations, 'terminal-voltage', 'target')?.restsOn).toMatchObject({ generic: false })
  })

  test('without a cable gives the limits, and says what is missing for the value', () => {
    const on = of(
      checkout('PRS204', { 'PRS204: { from: measured, cableLengthM: 14,': 'PRS204: { from: measured,' }).expectations,
      'terminal-voltage',
      'target',
    )
    expect(on).toMatchObject({ low: 11, high: 30, notComputed: ['cableLengthM', 'cableAreaMm2'] })
    expect(on?.value).toBeUndefined()
  })

  test('on a material without a factor has no gap, and the reason', () => {
    const all = checkout('PRS204', { 'targetMaterial: mild steel, targetSideMm: 30': 'targetMaterial: titanium, targetSideMm: 30' }).expectations
    expect(of(all, 'on-distance')).toMatchObject({ refused: 'material-without-factor' })
    expect(of(all, 'on-distance')?.high).toBeUndefined()
  })

  test('with a target of unknown material asks for it', () => {
    const all = checkout('PRS204', { 'targetMaterial: mild steel, targetSideMm: 30': 'targetSideMm: 30' }).expectations
    expect(of(all, 'on-distance')?.notComputed).toEqual(['targetMaterial'])
  })

  test('with a target that is too small has no gap', () => {
    const all = checkout('PRS204', { 'targetSideMm: 30': 'targetSideMm: 20' }).expectations
    expect(of(all, 'off-distance')).toMatchObject({ refused: 'target-smaller-than-standard' })
  })

  test('on a sourcing card is refused', () => {
    expect(checkout('PRS204', { 'inputType: Type 3, sense: sinking, filterMs: 3': 'inputType: Type 3, sense: sourcing, filterMs: 3' })).toMatchObject(
      {
        refused: 'pnp-on-sourcing-input',
      },
    )
  })

  test('on a card without a sense has no circuit, and asks for it', () => {
    const found = checkout('PRS204', { 'inputType: Type 3, sense: sinking, filterMs: 3': 'inputType: Type 3, filterMs: 3' })
    expect(found).toMatchObject({ notComputed: ['sense'] })
    expect(found.circuit).toBeUndefined()
  })
})

test('a range of factors gives the safe end of each gap', () => {
  const all = checkout('PRS204', { 'targetMaterial: mild steel, targetSideMm: 30': 'targetMaterial: brass, targetSideMm: 30' }).expectations
  // Brass 0.32 to 0.51.
  expect(of(all, 'on-distance')?.high).toBeCloseTo(0.81 * 0.32 * 8, 9)
  expect(of(all, 'off-distance')?.low).toBeCloseTo(1.43 * 0.51 * 8, 9)
})

test('a current loop reads its range in mA and counts, and leaves the transmitter its voltage', () => {
  const { expectations } = checkout('PT518')
  expect(of(expectations, 'analogue-signal', 'range-middle')).toMatchObject({ at: { value: 3, unit: 'bar' }, value: 12, unit: 'mA' })
  // 0.5 % of 16 mA.
  expect(of(expectations, 'analogue-signal', 'range-middle')?.low).toBeCloseTo(11.92, 9)
  expect(of(expectations, 'counts', 'range-middle')?.value).toBe(13824)
  // 24 − 22 mA · (250 + 2 · 18 m · 56 Ω/km).
  expect(of(expectations, 'transmitter-voltage')?.value).toBeCloseTo(24 - 0.022 * (250 + 2.016), 9)
  expect(of(expectations, 'transmitter-voltage')?.low).toBe(12)
  expect(of(expectations, 'analogue-signal', 'failure-low')?.high).toBe(3.6)
  expect(of(expectations, 'analogue-signal', 'failure-high')?.low).toBe(21)
})

test('a Pt100 reads the table of its standard, within its class', () => {
  // IEC 60751: 157.33 Ω at 150 °C, class A ± 0.45 K.
  const hot = of(checkout('TE416').expectations, 'element-resistance', 'range-high')
  expect(hot?.value).toBeCloseTo(157.33, 2)
  expect((hot?.high ?? 0) - (hot?.low ?? 0)).toBeCloseTo(2 * 0.45 * 0.3735, 3)
})

test('a range in another unit of temperature reads the same', () => {
  // 0 °C and 150 °C.
  const fahrenheit = { 'líquido de lavado,0,150,°C': 'líquido de lavado,32,302,°F' }
  const found = checkout('TE416', fahrenheit)
  const { expectations } = found
  const hot = of(expectations, 'element-resistance', 'range-high')
  expect(hot?.value).toBeCloseTo(157.33, 2)
  expect(hot?.at).toEqual({ value: 302, unit: '°F' })
  const taken = readTaken('157.33 ohm')
  expect('unread' in taken ? taken : meaningOf(taken, found)?.value).toBeCloseTo(302, 1)
  const bare = checkout('TE416', { 'líquido de lavado,0,150,°C': 'líquido de lavado,0,150,' }).expectations
  expect(of(bare, 'element-resistance')?.notComputed).toEqual(['unit'])
})

test('counts pass with both errors at their worst, and are usual within the root of their squares', () => {
  // 0.5 % of the transmitter and 0.2 % of the card: 0.7 %, and √(0.29) = 0.5385 %, of 27,648.
  const middle = of(checkout('PT518').expectations, 'counts', 'range-middle')
  expect((middle?.high ?? 0) - (middle?.value ?? 0)).toBeCloseTo(193.536, 3)
  expect((middle?.usual?.high ?? 0) - (middle?.value ?? 0)).toBeCloseTo(148.888, 2)
})

test('a flush switch of M18 with Sn 8 mm has its room, its travel and its rate', () => {
  const all = checkout('PRS204').expectations
  expect(of(all, 'clear-in-front')?.low).toBe(24)
  expect(of(all, 'clear-beside')?.low).toBe(18)
  expect(of(all, 'clear-opposite')?.low).toBe(48)
  expect(of(all, 'clear-behind')).toBeUndefined()
  // 20 % of the largest effective distance, 1.1 · 8 mm.
  expect(of(all, 'differential-travel')?.high).toBeCloseTo(1.76, 9)
  expect(of(checkout('PRS603').expectations, 'switching-rate')).toMatchObject({ value: 97, high: 2000 })
})

test('three leads of a Pt100 err by what two of them differ', () => {
  // 1 % of 16 m · 56 Ω/km over 0.382 Ω/K at 75 °C.
  expect(of(checkout('TE416').expectations, 'lead-error')?.value).toBeCloseTo((0.01 * 0.896) / 0.3822, 3)
})

test('a thermocouple reads less by what its terminals are warm', () => {
  // NIST: type K 4.096 mV at 100 °C, 1.285 mV at 32 °C.
  expect(of(checkout('TC517').expectations, 'thermovoltage', 'range-middle')?.value).toBeCloseTo(4.096 - 1.285, 2)
})

test('a coil of wire has a resistance, one with electronics a reason', () => {
  expect(of(checkout('SOL211').expectations, 'coil-resistance')).toMatchObject({ value: 128, low: 115.2, restsOn: { generic: true } })
  expect(of(checkout('CON411').expectations, 'coil-resistance')).toMatchObject({ refused: 'coil-with-electronics' })
  expect(of(checkout('SOL211').expectations, 'load-current')).toMatchObject({ value: 187.5, high: 500, unit: 'mA' })
})

test('a pressure switch has both bands', () => {
  const { expectations } = checkout('PS906')
  expect(of(expectations, 'switch-pressure', 'rising')).toMatchObject({ low: 4.4, high: 4.6 })
  expect(of(expectations, 'switch-pressure', 'falling')?.low).toBeCloseTo(4.1, 9)
})

test('a safety device shows its signals and is never approved', () => {
  const { approval, circuits, expectations } = checkout('ES055')
  expect(approval).toBe('safety-approval')
  expect(circuits.map(({ signal }) => signal.signal?.value)).toEqual(['channel-1', 'channel-2'])
  expect(of(expectations, 'signal-bit', 'target')).toMatchObject({ value: 0, signal: 'channel-1' })
})

test('a photoelectric sensor that no law covers says so', () => {
  expect(of(checkout('PEC102').expectations, 'excess-gain')).toMatchObject({ refused: 'retro-reflective-gain' })
  expect(of(checkout('PEC103').expectations, 'excess-gain')?.value).toBeCloseTo((10 / 1.1) ** 2, 9)
})

test('every device of the example that has something to measure has limits, but for the isolator that no signal tells of', () => {
  const { machines } = loadMachine(folder, diskFolder('content', 'content/'))
  const without = machines.flatMap((machine) =>
    machine.devices.filter((device) => {
      const found = checkoutOf(device, machine, graphOf(machine))
      return found !== undefined && !hasLimits(found)
    }),
  )
  expect([...new Set(without.map(({ tag }) => tag.value))]).toEqual(['DISC001'])
})

test('what the file takes, the laws take', () => {
  const samples = [-300, -1, 0, 0.5, 1, 2]
  const takes = {
    above: (it: number) => it > 0,
    from: (it: number) => it >= 0,
    any: () => true,
    share: (it: number) => it > 0 && it <= 1,
    degrees: (it: number) => it > -273.15,
  }
  const shared = (Object.keys(checkoutNumbers) as (keyof typeof checkoutNumbers)[]).filter((name) => name in inputKinds)
  expect(shared.length).toBeGreaterThan(40)
  for (const name of shared) {
    const taken = samples.filter(takes[checkoutNumbers[name][0]])
    expect([name, taken.filter((it) => canBe(inputKinds[name as InputName], it))]).toEqual([name, taken])
  }
})

test('a lower supply never raises what a point of any device reads', () => {
  const { machines } = loadMachine(folder, diskFolder('content', 'content/'))
  const [machine] = machines
  if (!machine) throw new Error('the example is no machine')
  const graph = graphOf(machine)
  const followers = new Set<Expectation['measured']>(['terminal-voltage', 'supply', 'load-voltage', 'transmitter-voltage'])
  let compared = 0
  for (const device of machine.devices) {
    const at = (measuredV: number) => checkoutOf(device, machine, graph, measuredV)?.expectations ?? []
    const all = [20, 22, 24, 26, 28].map(at)
    for (const [index, lower] of all.entries())
      for (const [position, { measured, value = Number.NEGATIVE_INFINITY }] of lower.entries()) {
        const higher = all[index + 1]?.[position]
        if (!higher || !followers.has(measured)) continue
        compared++
        expect(value, `${device.tag.value} ${measured}`).toBeLessThanOrEqual(higher.value ?? Number.POSITIVE_INFINITY)
      }
  }
  expect(compared).toBeGreaterThan(500)
})

test('the states of a guard, a field and a contact are what a reader sees there', () => {
  const seen = (tag: string) => checkout(tag).expectations.flatMap((it) => (it.measured === 'signal-bit' ? [`${it.seen} ${it.value}`] : []))
  expect(seen('GLS221').slice(0, 2)).toEqual(['guard open 0', 'guard closed 1'])
  expect(seen('LC106').slice(0, 2)).toEqual(['field interrupted 0', 'field free 1'])
  expect(seen('LS206')).toEqual(['actuated 0', 'at rest 1'])
  expect(seen('PS906')[0]).toMatch(/^actuated /)
  expect(seen('PRS204')[0]).toMatch(/^undefined /)
})

test('a coil that was on reads anything from cold to as hot as it gets', () => {
  // 24 V, 4.5 W: 128 Ω cold, 80 K hotter for want of a value of its own.
  const warm = of(checkout('SOL211').expectations, 'warm-coil-resistance')
  expect([warm?.low, warm?.value, warm?.high].map((it) => it?.toFixed(1))).toEqual(['115.2', '168.2', '185.1'])
  expect(warm?.restsOn).toMatchObject({ generic: true, fromMemory: true })
})

test('the shortest object that sensor, card and program see at the speed in service', () => {
  // 0.3 m/s · (1 + 3 + 10) ms + 3 mm.
  expect(of(checkout('PEC103').expectations, 'object-length')?.low).toBeCloseTo(7.2, 9)
  expect(of(checkout('PEC102').expectations, 'object-length')).toBeUndefined()
})

test('a level by the pressure at the bottom: what a hand pump gives for each point of the range', () => {
  const { expectations } = checkout('LVT414')
  // 1000 kg/m³ · 9.80665 m/s² · 0.6 m.
  expect(of(expectations, 'head-pressure', 'range-high')).toMatchObject({ at: { value: 600, unit: 'mm' }, value: 5.88399, unit: 'kPa' })
  expect(of(checkout('PT518').expectations, 'head-pressure')).toBeUndefined()
})

test('the output of a flow meter is on in a pulse and off between two, and has no target', () => {
  const { expectations } = checkout('FLM519')
  expect(new Set(expectations.flatMap(({ seen }) => seen ?? []))).toEqual(new Set(['pulse', 'between pulses']))
  expect(expectations.some(({ state, seen }) => (state === 'target' || state === 'none') && seen === undefined)).toBe(false)
})

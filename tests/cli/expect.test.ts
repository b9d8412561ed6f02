import { describe, expect, test } from 'vitest'
import { runFettle } from './run-fettle.ts'

const run = (...args: string[]) => runFettle(['expect', 'example-machine', ...args])

test('every point of a device with its limits, from the supply that was measured', async () => {
  const { code, stdout } = await run('PRS204', '--supply', '23,6')
  expect(code).toBe(0)
  expect(stdout).toMatch(/^PRS204 {2}Lift at the bottom position\n/)
  expect(stdout).toMatch(/gap at which it must be on .* 0 to 6\.48 mm .* generic limit/)
  expect(stdout).toMatch(/input terminal to 0 V +with target, or actuated +11 to 30 V \(usually 21\.59 to 23\.6 V\)/)
})

test('a dead terminal with a target is an open signal wire first, and the next reading is named', async () => {
  const { stdout } = await run('PRS204', '--measured', 'terminal:target=0.2 V', '--measured', 'pin=24 V', '--measured', 'output-led:target=lit')
  expect(stdout).toContain('terminal:target=0.2 V: not in order')
  expect(stdout).toMatch(/Likely faults[^\n]*\n {2}1\. The signal wire is open/)
  expect(stdout).toMatch(/Look next at: /)
})

test('a current says its value, and that it measures', async () => {
  expect((await run('PT518', '--measured', '12,2 mA')).stdout).toContain('12,2 mA: stands for 3.075 bar  ·  measuring')
})

test('a current of failure says so, in another language', async () => {
  expect((await run('PT518', '--measured', '3.5 mA', '--language', 'es')).stdout).toContain('fallo, bajo')
})

test('a current at a named point of the range has a verdict', async () => {
  expect((await run('PT518', '--measured', 'terminal:range-middle=12,1 mA')).stdout).toMatch(/range-middle=12,1 mA: not in order/)
})

test('a Pt100 turns 131.2 Ω into a temperature', async () => {
  // IEC 60751: 130.90 Ω at 80 °C, 0.381 Ω/K.
  expect((await run('TE416', '--measured', '131.2 Ω')).stdout).toMatch(/131\.2 Ω: stands for 80\.79 °C/)
})

// NIST ITS-90: type K 4.096 mV at 100 °C, 1.285 mV at 32 °C, 1.000 mV at 25 °C.
test('a thermocouple turns mV into a temperature, with the terminals of the data or as they were measured', async () => {
  expect((await run('TC517', '--measured', '2.811 mV')).stdout).toMatch(/2\.811 mV: stands for (100|99\.9\d) °C/)
  const { stdout } = await run('TC517', '--measured', '3.096 mV', '--measured', 'terminal=25 °C')
  expect(stdout).toMatch(/3\.096 mV: stands for (100|99\.9\d) °C/)
  expect(stdout).toContain('terminal=25 °C: taken as the temperature of the terminals')
})

test('a thermistor and 0-10 V stand for a value', async () => {
  // Beta equation by hand: 1492 Ω at 75 °C.
  expect((await run('TH418', '--measured', '1.492 kΩ')).stdout).toMatch(/stands for (75|74\.9\d) °C/)
  expect((await run('LVT949', '--measured', '4 V')).stdout).toContain('4 V: stands for 320 mm')
  expect((await run('LVT949', '--measured', '23.4 V')).stdout).toContain('The signal wire touches L+.')
})

test('pulses stand for a flow or a speed', async () => {
  // 60 · 5 / 10 l/min, and 60 · 1536 / 1024 min⁻¹.
  expect((await run('FLM519', '--measured', '5 Hz')).stdout).toContain('5 Hz: stands for 30 l/min')
  expect((await run('ENC104', '--measured', '1536 Hz')).stdout).toContain('1536 Hz: stands for 90 min⁻¹')
})

test('a load has its likely faults', async () => {
  const { stdout } = await run('SOL211', '--measured', 'terminal:on=23.6 V', '--measured', 'device:on=0 V', '--measured', 'tag=lit')
  expect(stdout).toMatch(/Likely faults\n {2}1\. The wire is open between card and load\./)
})

test('the same as JSON, with what each limit rests on', async () => {
  const { stdout } = await run('SOL211', '--format', 'json', '--measured', 'device:isolated=131 Ω')
  const { tag, expectations, readings } = JSON.parse(stdout)
  expect(tag).toBe('SOL211')
  expect(expectations[0]).toMatchObject({ measured: 'coil-resistance', value: 128, restsOn: { generic: true } })
  // 131 ohms may be of a cold coil and of a warm one.
  expect(readings[0].verdicts).toMatchObject([
    { measured: 'coil-resistance', value: 131, verdict: 'pass' },
    { measured: 'warm-coil-resistance', value: 131 },
  ])
})

test('a safety device is not approved', async () => {
  expect((await run('ES055')).stdout).toContain('It does not validate a safety function')
})

describe('cannot run', () => {
  test.each([
    [['PRS20'], /no device has the tag `PRS20`; the nearest tag/],
    [['TK424'], /`TK424` has no technology with anything to measure/],
    [['SOL231'], /not fitted to this unit/],
    [['PRS204', '--measured', '12'], /value with its unit.*no unit/],
    [['PRS204', '--measured', '12 ma'], /unknown unit; perhaps `mA`/],
    [['PRS204', '--measured', 'plug=3 V'], /`plug` is no point; it takes device, pin/],
    [['PRS204', '--measured', 'pin:now=3 V'], /`now` is no state/],
    [['PRS204', '--supply', '24 A'], /--supply takes a voltage/],
    [['PRS204', '--language', 'de'], /no words for measuring in the language `de`/],
    [[], /is missing/],
  ])('%j', async (args, message) => {
    const { code, stderr } = await run(...args)
    expect(code).toBe(2)
    expect(stderr).toMatch(message)
  })
})

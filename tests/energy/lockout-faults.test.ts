import { expect, test } from 'vitest'
import { isControlDevice, leastFasteningN, lockoutFaults } from '../../src/energy/lockout-faults.ts'
import type { Procedure, ProcedurePoint, ProcedureSource, ProcedureStep } from '../../src/energy/lockout-procedure.ts'

/** A procedure in which nothing is missing. Source of the cases: 29 CFR 1910.147, clause beside each. */
const point: ProcedurePoint = { id: 'E1', device: 'disconnect switch', place: 'cabinet door', safe: 'OFF', hardware: 'padlock', lockable: true }
const source: ProcedureSource = {
  id: 'supply',
  form: 'electrical',
  magnitudes: [{ value: 400, unit: 'V' }],
  hazard: 'electric shock',
  points: ['E1'],
  stored: true,
  reaccumulates: false,
  method: 'test each phase',
  expect: '0 V',
  voltageTest: true,
}
const steps: ProcedureStep[] = [
  { phase: 'prepare' },
  { phase: 'notify' },
  { phase: 'shut-down' },
  { phase: 'isolate', point: 'E1' },
  { phase: 'lock', point: 'E1' },
  { phase: 'dissipate', source: 'supply' },
  { phase: 'verify', source: 'supply' },
  { phase: 'work' },
  { phase: 'release', act: 'clear-area' },
  { phase: 'release', act: 'count-people' },
  { phase: 'release', act: 'remove-locks' },
  { phase: 'release', act: 'tell-before-start' },
]
const whole: Procedure = {
  machine: 'press, hall 2',
  purpose: 'work on the press',
  scope: 'the whole press',
  authorised: 'authorised persons',
  enforcement: 'programme of the employer',
  responsible: 'each authorised person',
  sources: [source],
  points: [point],
  steps,
}
const rulesOf = (changes: Partial<Procedure>) => [...new Set(lockoutFaults({ ...whole, ...changes }).map(({ rule }) => rule))]
const without = (key: keyof Procedure) =>
  lockoutFaults(Object.fromEntries(Object.entries(whole).filter(([name]) => name !== key)) as unknown as Procedure)
const move = (from: number, to: number) => {
  const [taken] = steps.slice(from, from + 1)
  const rest = steps.toSpliced(from, 1)
  return taken ? rest.toSpliced(to, 0, taken) : rest
}

test('a whole procedure has no fault: prepare, notify, shut down, isolate, lock, dissipate, verify, (d)(1) to (6)', () => {
  expect(lockoutFaults(whole)).toEqual([])
})

test.each([
  ['machine and location, (c)(4)(ii)', 'machine', 'L01'],
  ['statement of purpose, (c)(4)(ii)(A)', 'purpose', 'L02'],
  ['scope, (c)(4)(ii)', 'scope', 'L03'],
  ['authorisation, (c)(4)(ii)', 'authorised', 'L03'],
  ['means of enforcement, (c)(4)(ii)', 'enforcement', 'L04'],
  ['responsibility for locks, (c)(4)(ii)(C)', 'responsible', 'L27'],
] as const)('%s is missed where it is not there', (_, key, rule) => {
  expect(without(key).map((fault) => fault.rule)).toEqual([rule])
})

test.each<[string, Partial<Procedure>, string[]]>([
  ['stored energy is released before the lock is on, (d)(4), (d)(5)', { steps: move(4, 5) }, ['L21', 'L15']],
  ['the isolation point is an emergency stop, (b)', { points: [{ ...point, device: 'E-stop button' }] }, ['L08']],
  ['the isolation point is a selector switch, (b)', { points: [{ ...point, device: 'selector switch' }] }, ['L08']],
  ['the isolation point is a lockable ball valve', { points: [{ ...point, device: 'lockable ball valve' }] }, []],
  ['a source without magnitude, (d)(1)', { sources: [{ ...source, magnitudes: [] }] }, ['L05']],
  ['a magnitude without unit, (d)(1)', { sources: [{ ...source, magnitudes: [{ value: 6, unit: ' ' }] }] }, ['L05']],
  ['a source without isolation point, (d)(3)', { sources: [{ ...source, points: [] }] }, ['L06']],
  ['a point that serves no source, (d)(3)', { points: [point, { ...point, id: 'P1' }], steps: steps.concat() }, ['L06', 'L11']],
  ['a point without safe position, (d)(4)(ii)', { points: [{ ...point, safe: '' }] }, ['L07']],
  ['nobody shuts the machine down, (d)(2)', { steps: steps.toSpliced(2, 1) }, ['L09']],
  ['nobody is told, (c)(9)', { steps: steps.toSpliced(1, 1) }, ['L10']],
  ['no lock is put on, (d)(4)(i)', { steps: steps.toSpliced(4, 1) }, ['L11']],
  ['the lock comes before the isolation, (d)(4)(i)', { steps: move(3, 4) }, ['L21', 'L11']],
  ['stored energy is not released, (d)(5)(i)', { steps: steps.toSpliced(5, 1) }, ['L15']],
  ['energy that builds up again is not watched, (d)(5)(ii)', { sources: [{ ...source, reaccumulates: true }] }, ['L16']],
  ['energy that builds up again is watched', { sources: [{ ...source, reaccumulates: true, recheck: 'gauge in sight' }] }, []],
  ['nothing is proved, (d)(6)', { steps: steps.toSpliced(6, 1) }, ['L17']],
  ['the work begins before the proof, (d)(6)', { steps: move(6, 7) }, ['L21', 'L17']],
  ['the proof has no expected reading, (c)(4)(ii)(D)', { sources: [{ ...source, expect: '' }] }, ['L18']],
  ['electrical energy is proved by a try-out alone, 1910.333(b)(2)(iv)(B)', { sources: [{ ...source, voltageTest: false }] }, ['L19']],
  ['the same, and it is said why no conductor is exposed', { sources: [{ ...source, voltageTest: false, noVoltageTest: 'no cover is opened' }] }, []],
  ['after the try-out the controls stay on, Appendix A', { steps: steps.toSpliced(7, 0, { phase: 'verify', act: 'try-out' }) }, ['L20']],
  ['a tag alone on a device that takes a lock, (c)(2)(ii)', { points: [{ ...point, tagOut: { at: 'handle', fasteningN: 300 } }] }, ['L12']],
  [
    'a tag on a device that takes a lock, with further means and proof, (c)(3)',
    { points: [{ ...point, tagOut: { at: 'handle', additional: 'valve handle removed', proof: 'assessment 12', fasteningN: 300 } }] },
    [],
  ],
  [
    'the fastening of a tag holds 40 lbf, (c)(5)(ii)(C)(2)',
    { points: [{ ...point, lockable: false, tagOut: { at: 'handle', fasteningN: 40 * 4.448 } }] },
    ['L12'],
  ],
  ['no lock and no tag, (d)(4)(i)', { points: [{ ...point, lockable: false }] }, ['L11']],
  [
    'a device without lock on a machine of 1995, (c)(2)(iii)',
    { year: 1995, points: [{ ...point, lockable: false, tagOut: { at: 'handle', fasteningN: 300 } }] },
    ['L13'],
  ],
  [
    'a device without lock on a machine of 1985',
    { year: 1985, points: [{ ...point, lockable: false, tagOut: { at: 'handle', fasteningN: 300 } }] },
    [],
  ],
  ['two crews without a coordinator, (f)(3)(ii)(C)', { group: { crews: 2, responsible: 'shift leader', personalLocks: true } }, ['L25']],
  ['a group without a responsible person, (f)(3)(ii)(A)', { group: { crews: 1, personalLocks: true } }, ['L25']],
  ['a group without personal locks, (f)(3)(ii)(D)', { group: { crews: 1, responsible: 'shift leader', personalLocks: false } }, ['L25']],
  ['jogging without a sequence for it, (f)(1)', { needsPower: true }, ['L24']],
  ['jogging with its sequence', { needsPower: true, testSequence: true }, []],
  ['the machine starts before the people are told, (e)(2)(ii)', { steps: steps.toSpliced(11, 0, { phase: 'release', act: 'start' }) }, ['L22']],
  ['the release is short of the area check, (e)(1)', { steps: steps.toSpliced(8, 1) }, ['L22']],
  ['there is no release, (e)', { steps: steps.slice(0, 8) }, ['L22']],
])('%s', (_, changes, expected) => {
  expect(rulesOf(changes).toSorted()).toEqual(expected.toSorted())
})

test('50 lbf are 222.4 N, by the exact pound-force of 4.4482216152605 N', () => {
  expect(leastFasteningN).toBeCloseTo(222.4, 1)
})

test.each([
  'push button',
  'illuminated push button',
  'key switch',
  'emergency stop',
  'guard interlock with locking',
  'contactor',
  'solenoid valve',
  'PLC output',
  'pulsador luminoso',
  'relé',
  'electroválvula',
])('%s belongs to the control circuit', (kind) => expect(isControlDevice(kind)).toBe(true))
test.each([
  'main disconnect switch',
  'maintenance isolator',
  'lockable exhaust valve',
  'hand valve',
  'locking pin',
  'seccionador principal',
  'válvula manual',
  'circuit breaker',
])('%s can isolate', (kind) => expect(isControlDevice(kind)).toBe(false))

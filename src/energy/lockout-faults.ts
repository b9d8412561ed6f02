import { faultsOf, type LockoutFault, type Procedure } from './lockout-procedure.ts'
import { stepFaults } from './lockout-step-faults.ts'

/** Unlocking strength that what fastens a tag must have, in newton: 50 lbf. Source: 29 CFR 1910.147(c)(5)(ii)(C)(2). */
export const leastFasteningN = 50 * 4.4482216152605

/** Devices of a control circuit. They isolate nothing. Source: 29 CFR 1910.147(b). */
const controlDevice = new RegExp(
  `(?<!\\p{L})(?:${[
    'push ?-?buttons?|selectors?|key switch|mode switch|emergency[ -]stops?|e-?stops?|interlocks?|light curtain',
    'plc|controller|output|relay|contactor|solenoid',
    'pulsador|paro de emergencia|parada de emergencia|enclavamiento|relé|electroválvula|controlador',
    'drucktaster|wahlschalter|not-?halt|schütz|magnetventil',
  ].join('|')})(?!\\p{L})`,
  'iu',
)

/** Whether the words for a device name one that belongs to the control circuit and can never be an isolation point. */
export function isControlDevice(kind: string): boolean {
  return controlDevice.test(kind)
}

/**
 * What is missing or out of order in a lockout procedure, each with its clause.
 * Source: 29 CFR 1910.147 (c), (d), (e), (f) and Appendix A; 1910.333(b)(2)(iv)(B) for the voltage tester.
 */
export function lockoutFaults(procedure: Procedure): LockoutFault[] {
  return [...headFaults(procedure), ...sourceFaults(procedure), ...pointFaults(procedure), ...stepFaults(procedure), ...specialFaults(procedure)]
}

function* headFaults({ machine, purpose, scope, authorised, enforcement, responsible }: Procedure): Iterable<LockoutFault> {
  const says = (
    rule: string,
    value: string | undefined,
    key: NonNullable<LockoutFault['key']>,
    what: string,
    clause: string,
    help: string,
    severity: LockoutFault['severity'] = 'error',
  ): LockoutFault[] => (value?.trim() ? [] : [faultsOf({ key })(rule, `the lockout does not say ${what}`, clause, help, severity)])
  yield* says('L01', machine, 'machine', 'which machine it is for and where that stands', '(c)(4)(ii)', 'name the machine and its areas')
  yield* says('L02', purpose, 'purpose', 'what it is for', '(c)(4)(ii)(A)', 'say under `purpose` what work it is meant for')
  yield* says(
    'L03',
    scope,
    'scope',
    'what it covers and what it does not',
    '(c)(4)(ii)',
    'say under `scope` what stays live and what work it does not cover',
  )
  yield* says('L03', authorised, 'authorised', 'who is authorised', '(c)(4)(ii)', 'say under `authorised` who may apply it')
  yield* says(
    'L04',
    enforcement,
    'enforcement',
    'how it is enforced',
    '(c)(4)(ii)',
    'say under `enforcement`, or where the employer says it',
    'warning',
  )
  yield* says(
    'L27',
    responsible,
    'responsible',
    'who places, removes and transfers the locks',
    '(c)(4)(ii)(C)',
    'say under `responsible`, by role, who does it',
  )
}

function* sourceFaults({ sources, points }: Procedure): Iterable<LockoutFault> {
  const known = new Set(points.map(({ id }) => id))
  for (const source of sources) {
    const fault = faultsOf({ source: source.id }, `energy source \`${source.id}\` `)
    if (!source.form || source.magnitudes.length === 0 || source.magnitudes.some(({ unit }) => unit.trim() === '') || !source.hazard)
      yield fault('L05', 'lacks its form, its magnitude with a unit, or its hazard', '(d)(1)', 'give each of them in energy.yaml')
    if (!source.points.some((point) => known.has(point)))
      yield fault('L06', 'has no isolation point in this lockout', '(d)(3)', 'name under `isolation` what cuts it off')
    if (source.reaccumulates && !source.recheck)
      yield fault('L16', 'can build up again, and nothing says how it is watched', '(d)(5)(ii)', 'say how often or by what it is checked again')
    if (!source.method || !source.expect)
      yield fault('L18', 'lacks the method of its proof or the reading that is expected', '(c)(4)(ii)(D)', 'give `method` and `expect`')
    if (source.form === 'electrical' && !source.voltageTest && !source.noVoltageTest?.trim())
      yield fault(
        'L19',
        'is proved without a voltage tester',
        '29 CFR 1910.333(b)(2)(iv)(B)',
        'add `voltage-test` to `verify.by`: that a machine does not start says nothing about its conductors; or say under `noVoltageTest` why no work exposes one',
      )
  }
}

function* pointFaults({ points, sources, year }: Procedure): Iterable<LockoutFault> {
  const used = new Set(sources.flatMap((source) => source.points))
  for (const point of points) {
    const fault = faultsOf({ point: point.id }, `isolation point \`${point.id}\` `)
    if (!used.has(point.id)) yield fault('L06', 'cuts off no energy source', '(d)(3)', 'name it under `isolation` of its source')
    if (!point.device || !point.place || !point.safe)
      yield fault('L07', 'lacks its kind of device, its place or its safe position', '(d)(3), (d)(4)(ii)', 'give each of them in energy.yaml')
    if (point.device && isControlDevice(point.device))
      yield fault('L08', `is a device of the control circuit: ${point.device}`, '(b)', 'name the switch, valve or block that parts the energy itself')
    if (!point.hardware) yield fault('L14', 'names no lock hardware', '(c)(5)(i)', 'say which lock, hasp or cover holds it', 'warning')
    const { tagOut } = point
    if (tagOut && point.lockable && !(tagOut.additional && tagOut.proof))
      yield fault(
        'L12',
        'takes a lock and has a tag alone',
        '(c)(2)(ii), (c)(3)',
        'lock it; or give the further means and the written proof that they protect as well',
      )
    if (tagOut && tagOut.fasteningN < leastFasteningN)
      yield fault(
        'L12',
        `has a tag whose fastening holds ${tagOut.fasteningN} N; it takes 222.4 N (50 lbf)`,
        '(c)(5)(ii)(C)(2)',
        'use a fastening that holds',
      )
    if (tagOut && !point.lockable && !tagOut.at)
      yield fault('L13', 'takes no lock, and nothing says where the tag hangs', '(d)(4)(iii)', 'say where the tag hangs', 'warning')
    if (!point.lockable && !tagOut) yield fault('L11', 'takes no lock, and has no tag', '(d)(4)(i)', 'give `tagOut`, or a device that takes a lock')
    if (!point.lockable && year !== undefined && year >= 1990)
      yield fault(
        'L13',
        `takes no lock on a machine of ${year}`,
        '(c)(2)(iii)',
        'machines installed or renovated after 2 January 1990 must take a lock: change the device',
        'warning',
      )
  }
}

function* specialFaults({ group, needsPower, testSequence }: Procedure): Iterable<LockoutFault> {
  if (needsPower && !testSequence)
    yield faultsOf({ key: 'needsPower' })(
      'L24',
      'work under this lockout needs power, and nothing says how it is given and taken away',
      '(f)(1)',
      'add the test sequence',
    )
  if (!group) return
  const fault = faultsOf({ key: 'group' })
  if (!group.responsible?.trim())
    yield fault('L25', 'the group has no responsible person', '(f)(3)(ii)(A)', 'name the role under `group.responsible`')
  if (group.crews > 1 && !group.coordinator?.trim())
    yield fault(
      'L25',
      `${group.crews} crews work under this lockout, and nobody coordinates them`,
      '(f)(3)(ii)(C)',
      'name the role under `group.coordinator`',
    )
  if (!group.personalLocks)
    yield fault('L25', 'a member of the group has no personal lock', '(f)(3)(ii)(D)', 'each person puts on a lock of their own')
}

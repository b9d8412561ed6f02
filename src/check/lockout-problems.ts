import { isControlDevice, lockoutFaults } from '../energy/lockout-faults.ts'
import { type Lockout, lockoutOfPage } from '../energy/lockout-of-page.ts'
import type { LockoutFault, Procedure, ProcedurePoint } from '../energy/lockout-procedure.ts'
import type { Graph } from '../model/graph.ts'
import type { IsolationPoint, Machine } from '../model/machine.ts'
import type { Technology } from '../model/schema/common.ts'
import type { Words } from '../model/words.ts'
import type { Problem } from '../source/finding.ts'

/** Technologies of the control circuit. Source: 29 CFR 1910.147(b), "energy isolating device". */
const controlTechnologies: ReadonlySet<Technology> = new Set<Technology>([
  'push-button',
  'selector-switch',
  'emergency-stop',
  'safety-interlock',
  'light-curtain',
  'solenoid-valve',
  'contactor',
  'limit-switch',
])

/** What rules of their own report at the data. */
const reportedElsewhere = new Set(['L06', 'L15', 'L16'])

/** The faults of every lockout as problems, each at the value that it is about. */
export function* lockoutProblems(graph: Graph, severity: LockoutFault['severity']): Iterable<Problem> {
  for (const { fault, lockout } of graph.made(allFaults)) {
    if (fault.severity !== severity || reportedElsewhere.has(fault.rule)) continue
    const { message, clause, help } = fault
    yield { message, place: placeOf(fault, lockout), note: clause, help }
  }
}

const allFaults = (machine: Machine, graph: Graph): { fault: LockoutFault; lockout: Lockout }[] =>
  graph.pagesIn('lockout').flatMap((page) => {
    const lockout = lockoutOfPage(page, graph)
    return lockoutFaults(procedureOf(lockout, machine, graph)).map((fault) => ({ fault, lockout }))
  })

function placeOf({ source, point, key }: LockoutFault, { page, sources, points }: Lockout): Problem['place'] {
  const own = source === undefined ? undefined : sources.find(({ id }) => id.value === source)?.id.place
  const at = point === undefined ? undefined : points.find((it) => it.point.value === point)?.point.place
  // A key that is not written is placed at the head of the page.
  return own ?? at ?? page.placeOf(key === undefined || key === 'machine' ? [] : [key])
}

function procedureOf({ page, sources, points, steps }: Lockout, machine: Machine, graph: Graph): Procedure {
  const { frontmatter } = page
  const said = (words: Words | undefined) => words?.[machine.sourceLanguage]?.value ?? ''
  const { group } = frontmatter
  return {
    machine: `${machine.file.model} ${machine.unit.serial} ${frontmatter.areas.join(' ')}`,
    purpose: frontmatter.purpose,
    scope: frontmatter.scope,
    authorised: frontmatter.authorised,
    responsible: frontmatter.responsible,
    enforcement: frontmatter.enforcement,
    sources: sources.map((source) => ({
      id: source.id.value,
      form: source.form,
      magnitudes: source.magnitude.map(({ value, unit }) => ({ value, unit: unit.value })),
      hazard: said(source.hazard),
      points: source.isolation.map(({ point }) => point.value),
      stored: source.stored,
      reaccumulates: source.reaccumulates,
      method: said(source.verify.method),
      expect: said(source.verify.expect),
      voltageTest: source.verify.by.includes('voltage-test'),
      noVoltageTest: said(source.verify.noVoltageTest),
    })),
    points: points.map((point) => pointOf(point, graph, said)),
    steps,
    // Every person puts on a lock of their own, and power in between has its sequence: both are composed.
    group: group && { ...group, personalLocks: true },
    needsPower: frontmatter.needsPower,
    testSequence: true,
    year: machine.file.builtYear,
  }
}

function pointOf(
  { point, tag, device, safe, place, hardware, lockable, tagOut }: IsolationPoint,
  graph: Graph,
  said: (words: Words | undefined) => string,
): ProcedurePoint {
  return {
    id: point.value,
    device: controlKind(tag.value, graph) ?? device,
    place: said(place),
    safe: said(safe),
    hardware: said(hardware),
    lockable,
    tagOut: tagOut && { at: said(tagOut.at), additional: said(tagOut.additional), proof: said(tagOut.proof), fasteningN: tagOut.fasteningN.value },
  }
}

/** What the device of a tag is, where it belongs to the control circuit: by its kind or its technology. */
function controlKind(tag: string, graph: Graph): string | undefined {
  const device = graph.device(tag)
  const kinds = Object.values(device?.kind ?? {}).flatMap((it) => it?.value ?? [])
  const kind = kinds.find(isControlDevice)
  if (kind !== undefined) return kind
  const technology = device?.technology?.value
  // A breaker with a shunt trip has an output and isolates all the same: outputs tell nothing.
  return technology && controlTechnologies.has(technology) ? technology.replace('-', ' ') : undefined
}

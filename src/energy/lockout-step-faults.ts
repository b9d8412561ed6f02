import { type LockoutPhase, lockoutPhases } from '../model/lockout-phases.ts'
import { faultsOf, type LockoutFault, type Procedure } from './lockout-procedure.ts'

/** What is missing or out of order in the steps. Source: 29 CFR 1910.147(d) and (e). */
export function* stepFaults({ steps, sources, points }: Procedure): Iterable<LockoutFault> {
  const fault = faultsOf({})
  const indexOf = (phase: LockoutPhase, about: Pick<LockoutFault, 'point' | 'source'> = {}) =>
    steps.findIndex(
      (step) =>
        step.phase === phase &&
        (about.point === undefined || step.point === about.point) &&
        (about.source === undefined || step.source === about.source),
    )
  const lastIndexOf = (phase: LockoutPhase) => steps.findLastIndex((step) => step.phase === phase)
  const order = steps.map(({ phase }) => lockoutPhases.indexOf(phase))
  const back = order.findIndex((it, index) => index > 0 && it < (order[index - 1] ?? 0))
  const [before, after] = [steps[back - 1], steps[back]]
  if (before && after)
    yield fault(
      'L21',
      `a step to ${spoken(after.phase)} stands behind a step to ${spoken(before.phase)}`,
      '(d)',
      'put the steps into the order of the phases',
    )
  if (indexOf('shut-down') < 0) yield fault('L09', 'no step shuts the machine down', '(d)(2)', "write the steps of the machine's own shut-down")
  if (indexOf('notify') < 0) yield fault('L10', 'nobody is told before the locks are put on', '(c)(9)', 'tell the affected people first')
  for (const { id } of points) {
    const ofPoint = faultsOf({ point: id })
    const isolate = indexOf('isolate', { point: id })
    const lock = indexOf('lock', { point: id })
    if (isolate < 0) yield ofPoint('L06', `no step isolates point \`${id}\``, '(d)(3)', 'isolate each point')
    if (lock < 0) yield ofPoint('L11', `no step puts a lock or tag on point \`${id}\``, '(d)(4)(i)', 'lock each point')
    else if (lock < isolate) yield ofPoint('L11', `point \`${id}\` is locked before it is isolated`, '(d)(4)(i)', 'isolate first')
  }
  for (const { id, stored } of sources) {
    const ofSource = faultsOf({ source: id })
    const dissipate = indexOf('dissipate', { source: id })
    const verify = indexOf('verify', { source: id })
    if (stored && dissipate < 0)
      yield ofSource('L15', `no step releases what energy source \`${id}\` stores`, '(d)(5)(i)', 'release, block or wait it out')
    else if (stored && dissipate < lastIndexOf('lock'))
      yield ofSource('L15', `what \`${id}\` stores is released before the last lock is on`, '(d)(5)(i)', 'lock first')
    if (verify < 0) yield ofSource('L17', `no step proves that energy source \`${id}\` is gone`, '(d)(6)', 'prove each source')
    else if (dissipate >= 0 && verify < dissipate)
      yield ofSource('L17', `\`${id}\` is proved before what it stores is released`, '(d)(6)', 'release first')
    else if (indexOf('work') >= 0 && indexOf('work') < verify)
      yield ofSource('L17', `the work begins before \`${id}\` is proved`, '(d)(6)', 'prove first')
  }
  const has = (act: string) => steps.some((step) => step.act === act)
  const at = (act: string) => steps.findIndex((step) => step.act === act)
  if (has('try-out') && !has('controls-off'))
    yield fault('L20', 'after the try-out the controls are not put back', '29 CFR 1910.147, Appendix A', 'put the controls back to off', 'warning')
  if (indexOf('release') >= 0) {
    const needed = ['clear-area', 'count-people', 'remove-locks', 'tell-before-start']
    const missing = needed.filter((act) => !has(act))
    if (missing.length > 0) yield fault('L22', `the release lacks: ${missing.map(spoken).join(', ')}`, '(e)(1) to (e)(3)', 'add these steps')
    else if (needed.some((act, index) => index > 0 && at(act) < at(needed[index - 1] ?? '')))
      yield fault('L22', 'the steps of the release are out of order', '(e)(1) to (e)(3)', `keep to: ${needed.map(spoken).join(', ')}`)
    if (has('start') && at('start') < at('tell-before-start'))
      yield fault('L22', 'the machine starts before the affected people are told', '(e)(2)(ii)', 'tell them first')
  } else yield fault('L22', 'nothing says how the machine is given back', '(e)', 'add the release')
}

const spoken = (name: string) => name.replace(/-/g, ' ')

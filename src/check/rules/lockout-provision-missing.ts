import { lockoutProblems } from '../lockout-problems.ts'
import type { Rule } from '../rule.ts'

export const lockoutProvisionMissing: Rule = {
  id: 'lockout-provision-missing',
  severity: 'warning',
  summary: 'A lockout procedure leaves open what a programme for the control of energy provides for.',
  why: 'Whoever inspects the procedure asks for it.',
  source: '29 CFR 1910.147(c)(2)(iii), (c)(4)(ii) and (d)(4)(iii)',

  *check(_machine, graph) {
    yield* lockoutProblems(graph, 'warning')
  },
}

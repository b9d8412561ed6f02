import { lockoutProblems } from '../lockout-problems.ts'
import type { Rule } from '../rule.ts'

export const incompleteLockout: Rule = {
  id: 'incomplete-lockout',
  severity: 'error',
  summary: 'A lockout procedure lacks something without which nobody may work by it.',
  why: 'People put their hands where the procedure says that nothing can move.',
  source: "29 CFR 1910.147(b), (c)(2) to (c)(5), (d), (e) and (f); 1910.333(b)(2)(iv)(B). The employer's programme and local codes come first",
  guards: 'people',

  *check(_machine, graph) {
    yield* lockoutProblems(graph, 'error')
  },
}

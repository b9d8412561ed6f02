import { askedLessons } from '../../model/asked-lessons.ts'
import type { Machine } from '../../model/machine.ts'
import type { Duty } from '../../model/schema/training.ts'
import type { Rule } from '../rule.ts'

const sources: Readonly<Record<Duty, string>> = {
  authorised: '29 CFR 1910.147(c)(7)(i)(A): the energies, their type and magnitude, and how they are isolated and controlled',
  affected: '29 CFR 1910.147(c)(7)(i)(B): the purpose and the use of the energy control procedure',
  other: '29 CFR 1910.147(c)(7)(i)(C): that the procedure exists, and that locked equipment is not started again',
  'tags-only': '29 CFR 1910.147(c)(7)(ii): the limits of tags, where a tag stands in place of a lock',
  exposed: '29 CFR 1910.332(b)(1): the work practices that keep a person off live parts',
  qualified: '29 CFR 1910.332(b)(3): to tell live parts, to find the voltage, and the distances to keep',
}

export const dutyWithoutLesson: Rule = {
  id: 'duty-without-lesson',
  severity: 'warning',
  summary: 'No lesson of a role serves a duty that training.yaml gives it.',
  why: 'The law asks for the training, and a person of this role could finish every lesson without it.',
  source: '29 CFR 1910.147(c)(7) and 1910.332 (from memory)',

  *check(machine, graph) {
    for (const [index, role] of machine.training.roles.entries()) {
      const served = new Set(askedLessons(machine, graph, role.id).flatMap(({ lesson }) => lesson.frontmatter.duties ?? []))
      for (const { duty, at } of dutiesOf(role, machine)) {
        if (served.has(duty)) continue
        yield {
          message: `no lesson of the role \`${role.id}\` serves the duty \`${duty}\``,
          place: machine.training.placeOf(['roles', index, at]),
          note: sources[duty],
          help: `add \`${duty}\` to the \`duties\` of a lesson that teaches it, and ask this role to take it`,
        }
      }
    }
  },
}

function dutiesOf({ lockout, electrical }: Machine['training']['roles'][number], { points }: Machine): { duty: Duty; at: string }[] {
  return [
    ...(lockout ? [{ duty: lockout, at: 'lockout' }] : []),
    ...(lockout === 'authorised' && points.some(({ tagOut }) => tagOut) ? [{ duty: 'tags-only' as const, at: 'lockout' }] : []),
    ...(electrical ? [{ duty: electrical, at: 'electrical' }] : []),
  ]
}

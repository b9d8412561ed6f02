import { askedLessons } from '../../model/asked-lessons.ts'
import type { Rule } from '../rule.ts'

export const lockoutWithoutTraining: Rule = {
  id: 'lockout-without-training',
  severity: 'warning',
  summary: 'No lesson covers a lockout for the people who apply it, or for those it affects.',
  why: 'An authorised person has to know the energies of this machine and their points, an affected one what this lockout is for.',
  source: '29 CFR 1910.147(c)(7)(i)(A) and (B) (from memory)',

  *check(machine, graph) {
    for (const kind of ['authorised', 'affected'] as const) {
      const roles = machine.training.roles.filter(({ lockout }) => lockout === kind)
      if (roles.length === 0) continue
      const covered = new Set(
        roles.flatMap(({ id }) => askedLessons(machine, graph, id).flatMap(({ lesson }) => lesson.frontmatter.covers?.lockouts ?? [])),
      )
      for (const lockout of graph.pagesIn('lockout')) {
        if (covered.has(lockout.name)) continue
        yield {
          message: `no lesson for ${kind} people covers the lockout \`${lockout.name}\``,
          place: lockout.placeOf(['number']),
          note: `training.yaml has as ${kind}: ${roles.map(({ id }) => `\`${id}\``).join(', ')}`,
          help: `name \`${lockout.name}\` under \`covers.lockouts\` of a lesson that one of them is asked to take`,
        }
      }
    }
  },
}

import type { Rule } from '../rule.ts'

export const skillNeverReached: Rule = {
  id: 'skill-never-reached',
  severity: 'warning',
  summary: 'No lesson leads to the level of a skill that a role needs.',
  why: 'The gap in the skills matrix could never close.',
  source: 'house rule; ISO 9001:2015 7.2 asks for the means to reach the competence that is needed',

  *check({ training }, graph) {
    const reached = new Map<string, number>()
    for (const [index, { id, lessons }] of training.skills.entries()) {
      const levels = lessons.flatMap((name, n) => {
        const lesson = graph.page(`lessons/${name}`)
        return lesson?.collection === 'lessons'
          ? [{ name, level: lesson.frontmatter.level, place: training.placeOf(['skills', index, 'lessons', n]) }]
          : []
      })
      for (const { name, level, place } of levels)
        if (level === undefined)
          yield { message: `\`${name}\` leads to no level of the skill \`${id}\``, place, help: `say its \`level\` in the lesson, or take it out` }
      if (levels.length === lessons.length && levels.every(({ level }) => level !== undefined))
        reached.set(id, Math.max(...levels.map(({ level }) => level ?? 0)))
    }
    for (const [index, { id, needs = {} }] of training.roles.entries())
      for (const [skill, level] of Object.entries(needs)) {
        const highest = reached.get(skill)
        if (highest === undefined || highest >= level) continue
        yield {
          message: `the role \`${id}\` needs \`${skill}\` at level ${level}, and its lessons lead to level ${highest}`,
          place: training.placeOf(['roles', index, 'needs', skill]),
          help: 'add a lesson of that level to the skill, or lower what the role needs',
        }
      }
  },
}

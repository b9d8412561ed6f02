import type { Rule } from '../rule.ts'

export const lessonLongerThanSession: Rule = {
  id: 'lesson-longer-than-session',
  severity: 'error',
  summary: 'A lesson or a break does not go into a session of training.yaml.',
  why: 'No plan can be made: a lesson is taught in one piece.',
  source: 'house rule',

  *check({ training }, graph) {
    const { sessions } = training
    if (!sessions) return
    const place = (key: string) => training.placeOf(['sessions', key])
    const { minutes, breakMinutes, breakAfterMinutes, dayMinutes } = sessions
    for (const lesson of graph.pagesIn('lessons')) {
      if (lesson.shared && (lesson.frontmatter.minutes <= minutes || !isAsked(lesson.name))) continue
      if (lesson.frontmatter.minutes > minutes)
        yield {
          message: `\`${lesson.name}\` takes ${lesson.frontmatter.minutes} minutes, and a session has ${minutes}`,
          place: lesson.placeOf(['minutes']),
          related: [{ label: 'the longest session', place: place('minutes') }],
          help: 'split the lesson, or allow longer sessions',
        }
    }
    if ((breakMinutes === undefined) !== (breakAfterMinutes === undefined))
      yield {
        message: breakMinutes === undefined ? 'nothing says how long a break is' : 'nothing says after how long a break comes',
        place: place(breakMinutes === undefined ? 'breakAfterMinutes' : 'breakMinutes'),
        help: `add \`${breakMinutes === undefined ? 'breakMinutes' : 'breakAfterMinutes'}\``,
      }
    if (dayMinutes !== undefined && dayMinutes < minutes)
      yield {
        message: `a session has ${minutes} minutes, and a day ${dayMinutes}`,
        place: place('dayMinutes'),
        help: 'allow more minutes a day, or shorter sessions',
      }

    function isAsked(name: string) {
      return training.sequences.some(({ lessons }) => lessons.includes(name)) || training.skills.some(({ lessons }) => lessons.includes(name))
    }
  },
}

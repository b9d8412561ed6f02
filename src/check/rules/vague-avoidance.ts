import { isVague } from '../../hazard/message-lints.ts'
import type { Rule } from '../rule.ts'
import { safetyTexts } from '../safety-texts.ts'

export const vagueAvoidance: Rule = {
  id: 'vague-avoidance',
  severity: 'error',
  summary: 'A safety message tells to be careful, and not what to do.',
  why: 'Everybody means to be careful. Only an act keeps a hand out of a machine.',
  source: 'common practice; ANSI Z535.6, in its manner: how to avoid the hazard',
  guards: 'people',

  *check(_machine, graph) {
    for (const { part, language, text, place } of safetyTexts(graph))
      if (part === 'avoid' && isVague(text, language))
        yield {
          message: 'the avoidance names no act',
          place: place(0, text.length),
          help: 'say what to do or to leave: lock out, keep away, wear gloves, wait',
        }
  },
}

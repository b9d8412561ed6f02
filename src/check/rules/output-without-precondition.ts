import type { Graph } from '../../model/graph.ts'
import type { Page } from '../../model/machine.ts'
import { sensing } from '../../model/schema/common.ts'
import type { Outputs } from '../../model/schema/outputs.ts'
import type { Problem } from '../../source/finding.ts'
import { handOperation } from '../hand-operation.ts'
import type { Rule } from '../rule.ts'

type Instruction = Page<'procedures'> | Page<'alarms'> | Page<'lessons'>

export const outputWithoutPrecondition: Rule = {
  id: 'output-without-precondition',
  severity: 'error',
  summary: 'A step moves or switches an output by hand, and the page does not say what has to hold before.',
  why: 'The reader moves a part while a guard is open, in another mode, or with somebody in reach.',
  source: 'house rule; common practice: mode, guards, login and a look at who is near come before an output is switched by hand',
  guards: 'people',

  *check(_, graph) {
    const pages: Instruction[] = [...graph.pagesIn('procedures'), ...graph.pagesIn('alarms'), ...graph.pagesIn('lessons')]
    for (const page of pages) {
      const { outputs } = page.frontmatter
      if (outputs) {
        yield* faultsOf(page, outputs, graph)
        continue
      }
      const place = handOperation(page, page.language)
      if (!place) continue
      yield {
        message: 'a step switches an output by hand, and the page has no `outputs`',
        place,
        help: 'say under `outputs` in the frontmatter which tags, in which mode, with which guards, at which login, and who is clear',
      }
    }
  },
}

function* faultsOf(page: Instruction, outputs: Outputs, graph: Graph): Iterable<Problem> {
  const ofTechnology = page.collection === 'lessons' && page.frontmatter.technology !== undefined
  if (!outputs.tags && !ofTechnology)
    yield { message: '`outputs` has no `tags`', place: page.placeOf(['outputs']), help: 'name what is moved or switched' }
  for (const [index, tag] of (outputs.tags ?? []).entries()) {
    const technology = graph.device(tag)?.technology?.value
    if (!technology || !sensing.has(technology)) continue
    yield {
      message: `\`${tag}\` is no output: its technology is \`${technology}\``,
      place: page.placeOf(['outputs', 'tags', index]),
      help: 'name the motor, drive, valve or contactor that is moved or switched',
    }
  }
  for (const key of ['mode', 'login', 'clear'] as const) {
    const words = outputs[key]
    if (typeof words === 'string' || words[page.language] !== undefined) continue
    yield {
      message: `\`outputs.${key}\` has no text in \`${page.language}\``,
      place: page.placeOf(['outputs', key]),
      help: `add \`${page.language}\`, the language that the page is written in`,
    }
  }
}

import { isWearPart, tasksFor } from '../../model/coverage.ts'
import { partlyRead } from '../partly-read.ts'
import type { Rule } from '../rule.ts'

export const wearPartWithoutTask: Rule = {
  id: 'wear-part-without-task',
  severity: 'note',
  summary: 'No job looks after a wear part.',
  why: 'The part wears until the machine stops, for nobody is told to look at it.',
  source: 'house rule',

  *check(machine, graph) {
    if (partlyRead(machine)) return
    for (const part of machine.parts) {
      if (!isWearPart(part) || tasksFor(part, graph).length > 0) continue
      yield {
        message: `no job names the wear part \`${part.number.value}\``,
        place: part.number.place,
        help: 'name it in the procedure that looks at it or changes it; where it does not wear, correct its spare class',
      }
    }
  },
}

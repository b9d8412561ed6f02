import { checkDesignation } from '../../model/designation.ts'
import type { Rule } from '../rule.ts'

export const tagGrammar: Rule = {
  id: 'tag-grammar',
  severity: 'error',
  summary: 'A tag does not follow the designation system of the machine.',
  why: 'A tag that breaks the system is not recognised on drawings and in search.',
  source: 'NFPA 79 or IEC 81346-1, as machine.yaml chooses',

  *check({ devices, file }) {
    for (const { tag } of devices) {
      const fault = checkDesignation(tag.value, file.designation)
      if (!fault) continue
      yield {
        message: `\`${tag.value}\` is no tag: ${fault.reason}`,
        place: { ...tag.place, column: tag.place.column + fault.offset },
        note: `machine.yaml chooses ${typeof file.designation === 'string' ? file.designation : 'a pattern of its own'} for the tags`,
      }
    }
  },
}

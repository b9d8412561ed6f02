import { greatestWord, warnsOfInjury } from '../../hazard/signal-word.ts'
import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'

export const messageWithoutHazard: Rule = {
  id: 'message-without-hazard',
  severity: 'warning',
  summary: 'A message about injury belongs to no hazard of hazards.yaml.',
  why: 'Either the risk assessment has missed the hazard, or the message warns of what is not there.',
  source: 'common practice: each message of injury traces to a risk that is left',

  *check({ hazards, references, unread }, graph) {
    if (!hazards || unread.has('hazard')) return
    const included = new Set(referencesTo(references, 'caution').flatMap(({ id, page }) => (page ? [id] : [])))
    const ofHazards = new Set(hazards.flatMap(({ caution }) => caution?.value ?? []))
    for (const { page, text, names, harms, place } of graph.safetyMessages()) {
      const word = greatestWord(harms)
      if (text.language !== page.language || names.length > 0 || !word || !warnsOfInjury(word)) continue
      const isCaution = page.collection === 'cautions'
      // What is written for every machine can name no hazard of this one; a standard caution is named by it.
      if (page.shared && !isCaution) continue
      // A standard caution that no page of this machine shows says nothing about it.
      if (isCaution && (ofHazards.has(page.name) || !included.has(page.name))) continue
      yield {
        message: isCaution ? `no hazard of hazards.yaml names the caution \`${page.name}\`` : 'the message about injury names no hazard',
        place,
        help: isCaution
          ? `write \`caution: ${page.name}\` at the hazard that it speaks of`
          : 'write `hazard="…"` with an id of hazards.yaml, and declare the hazard there if it is missing',
      }
    }
  },
}

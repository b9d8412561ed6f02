import { greatestWord, warnsOfInjury } from '../../hazard/signal-word.ts'
import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'

/** Share of DANGER among the messages of injury above which a review is worth it. Common practice. */
const dangerShare = 0.2

export const dangerOverused: Rule = {
  id: 'danger-overused',
  severity: 'note',
  summary: 'More than one in five messages about injury says DANGER.',
  why: 'The word is for the most extreme situations. On every other page it warns of nothing.',
  source: 'common practice',

  *check({ references }, graph) {
    const included = new Set(referencesTo(references, 'caution').flatMap(({ id, page }) => (page ? [id] : [])))
    const messages = graph
      .safetyMessages()
      .filter(({ page, text }) => text.language === page.language && (page.collection !== 'cautions' || included.has(page.name)))
      .flatMap((it) => {
        const word = greatestWord(it.harms)
        return word && warnsOfInjury(word) ? [{ ...it, word }] : []
      })
    const [first, second, ...more] = messages.filter(({ word }) => word === 'danger')
    if (!first || !second || (more.length + 2) / messages.length <= dangerShare) return
    yield {
      message: `${more.length + 2} of ${messages.length} messages about injury say \`danger\``,
      place: first.place,
      related: [{ label: 'another one', place: second.place }],
      help: 'look again whether accident and injury both will happen, with the guards and measures in place',
    }
  },
}

import { greatestWord } from '../../hazard/signal-word.ts'
import { attributePlace } from '../../model/placed-messages.ts'
import type { Rule } from '../rule.ts'
import { wordTable } from '../word-table.ts'

export const wrongSignalWord: Rule = {
  id: 'wrong-signal-word',
  severity: 'error',
  summary: 'A safety message is given another signal word than its harm has.',
  why: 'A word that is too weak lets people walk into the hazard; one that is too strong teaches them not to read.',
  source: 'ANSI Z535.6, annex C, in its manner',
  guards: 'people',

  *check(_, graph) {
    for (const it of graph.safetyMessages()) {
      const word = greatestWord(it.harms)
      // A message whose harm is not complete is reported as such.
      if (it.word === undefined || word === undefined || it.word === word) continue
      const [harm] = it.harms.filter((one) => greatestWord([one]) === word)
      if (!harm) continue
      const likely = harm.severity === 'death-or-serious-injury' ? `, accident \`${harm.accident}\`, injury \`${harm.injury}\`` : ''
      yield {
        message: `the message says \`${it.word}\`, and its harm takes \`${word}\``,
        place: attributePlace(it, 'word'),
        note: `its greatest harm is ${harm.severity.replaceAll('-', ' ')}${likely}; ${wordTable}`,
        help: `write \`word="${word}"\` or no word, or correct the harm if the risk was assessed anew`,
      }
    }
  },
}

import { chapters, instructionFaults } from '../../instructions/instruction-faults.ts'
import type { Rule } from '../rule.ts'

export const instructionsAgainstLaw: Rule = {
  id: 'instructions-against-law',
  severity: 'error',
  summary: 'What machine.yaml says of the manual is not what the law of its day asks for.',
  why: 'A user who needs the manual in ten years, on paper or in a breakdown, does not get it.',
  source:
    'Directive 2006/42/EC, annex I, 1.7.4; Regulation (EU) 2023/1230, Article 10(7) and annex III, 1.7.4. The text of the law and the advice of a lawyer come first',

  *check({ file: { manual }, languages, placeOf }) {
    if (!manual) return
    const { digital, paper, original = [] } = manual
    const named = chapters.filter((chapter) => manual.chapters[chapter] !== undefined)
    for (const { message, key, clause, help } of instructionFaults({ ...manual, digital, paper, original, languages, chapters: named })) {
      const path = ['manual', ...key.split('.')]
      yield { message, place: placeOf(path), note: clause, help }
    }
  },
}

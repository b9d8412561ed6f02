import { type PageLevel, pageLevels } from '../../model/page-level.ts'
import { readPages } from '../../model/prose/read-text.ts'
import { hardestSentences } from '../hardest-sentences.ts'
import type { Rule } from '../rule.ts'

export const pageTooHard: Rule = {
  id: 'page-too-hard',
  severity: 'error',
  summary: 'A page is harder to read than its reader is meant to take.',
  why: 'A page that an operator cannot read is a defect of the machine.',
  source:
    'Flesch-Kincaid grade, as military technical manuals take it (Kincaid and others 1975); Szigriszt-Pazos 1993 on the scale of INFLESZ; the limits are a house rule',
  concerns: 'wording',

  *check(machine) {
    for (const level of pageLevels(machine, readPages(machine))) {
      if (!level.tooHard || !level.level || !level.limit) continue
      const { page, language } = level
      const at = page.translations.get(language) ?? page
      yield {
        message: `the page reads at ${said(level.level.value, level)}, and ${said(level.limit.value, level)} is the ${level.level.scale === 'ease' ? 'least' : 'most'} for ${who[level.reader]}`,
        place: at.placeOf(['title']),
        related: hardestSentences(level, machine).map(({ value, place }) => ({ label: `${said(value, level)} alone`, place })),
        help: 'make two of a long sentence, and take a plainer word where there is one',
      }
    }
  },
}

const who = { operator: 'an operator', maintenance: 'maintenance', engineer: 'an engineer' } as const

const said = (value: number, { level }: PageLevel) => `${level?.scale === 'ease' ? 'ease' : 'grade'} ${Number(value.toFixed(1))}`

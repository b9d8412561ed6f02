import type { Detail } from '../changes/change.ts'
import type { SpeakingPage } from '../changes/speaking-pages.ts'
import {
  byGroup,
  type ChangesReport,
  fieldName,
  groupWords,
  nameOf,
  notComparedLines,
  placesByFile,
  placesWords,
  relationWords,
  revisionWords,
  sentenceOf,
  type ToldChange,
  totalWords,
} from './changes-words.ts'
import { retrainingText, retrainingTotal } from './retraining.ts'
import { oneLine } from './visible.ts'

/** Places of a file that are shown; the JSON form has them all. */
const mostPlaces = 3

/** Changes as a person reads them: the dangerous ones first, below each what it was and is, and the pages that speak of it. */
export function reportChangesText(report: ChangesReport): string {
  const { old, now, changes, notCompared, remarks, retraining } = report
  const parts = [
    [`old: ${revisionWords(old)}`, `new: ${revisionWords(now)}`, ...[...remarks, ...notComparedLines(notCompared)].map(oneLine)].join('\n'),
    ...byGroup(changes).flatMap(({ group, own }) => {
      const { title, ask } = groupWords[group]
      return [`${title} (${own.length})\n${ask}`, ...own.map(changeLines)]
    }),
    ...(retraining ? [retrainingText(retraining)] : []),
    [totalWords(report), ...(retraining ? [oneLine(retrainingTotal(retraining))] : [])].join('\n'),
  ]
  return `${parts.join('\n\n')}\n`
}

function changeLines(change: ToldChange): string {
  const { thing, text, details, notes, pages, kind } = change
  const head = `  ${thing} \`${oneLine(nameOf(change))}\` ${sentenceOf(change)}${kind === 'means-another' ? '' : `: ${oneLine(text)}`}`
  const shown = kind === 'renamed' ? [] : details
  return [head, ...shown.map(detailLine), ...notes.map((note) => `    ${oneLine(note)}`), ...pages.flatMap(pageLines)].join('\n')
}

function detailLine({ field, was, is }: Detail): string {
  const name = oneLine(fieldName(field))
  if (was === '') return `    ${name}: ${oneLine(is)} (was empty)`
  return `    ${name}: ${oneLine(was)} → ${is === '' ? '(now empty)' : oneLine(is)}`
}

/** One line a file. */
function pageLines(page: SpeakingPage): string[] {
  const { relation, places, translations } = page
  const silent = translations.filter((language) => !places.some((it) => it.language === language))
  const also = silent.length > 0 ? `; written in ${silent.join(', ')} too` : ''
  return placesByFile(page).map((own, index) => {
    const more = own.length > mostPlaces ? ` and ${own.length - mostPlaces} more` : ''
    return `    ${placesWords(own.slice(0, mostPlaces))}${more} ${relationWords[relation]}${index === 0 ? also : ''}`
  })
}

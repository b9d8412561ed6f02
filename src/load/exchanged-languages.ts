import { loadRules, type Sink } from './load-rules.ts'
import type { Rows } from './rows.ts'

/** Words that join others, and few lists do without: what a cell with one of them is written in. */
const joining: Readonly<Record<string, ReadonlySet<string>>> = {
  en: new Set('of the with for and when from at by is are on to in not no'.split(' ')),
  es: new Set('de del la el los las con para y en al una un por cuando es no sin'.split(' ')),
  de: new Set('der das des dem den und mit für von zur zum bei auf im ein eine einer ist wenn nicht ohne'.split(' ')),
  fr: new Set('de du la le les des et avec pour une un sur au aux dans par quand est pas sans en à'.split(' ')),
}

/** In so many cells of each column the words of the other language stand, and so many times as often as those of its own. */
const clearly = { cells: 4, times: 5 }

/** The first part of a language with a region: `es-MX` is spoken as `es`. */
const spoken = (language: string) => language.split('-')[0] ?? language

/**
 * Reports two columns of one text in two languages whose cells speak each the language of the other. It speaks only
 * where both do so clearly, and for languages whose words are known.
 */
export function reportExchangedLanguages(file: Rows, positions: ReadonlyMap<string, number>, sourceLanguage: string, sink: Sink): void {
  const columns = [...positions].map(([column, index]) => {
    const [name = '', language = sourceLanguage] = column.split('.')
    return { name, language, index }
  })
  for (const [at, one] of columns.entries()) {
    for (const other of columns.slice(at + 1)) {
      if (one.name !== other.name || one.index === other.index) continue
      if (!speaks(file, one.index, other.language, one.language) || !speaks(file, other.index, one.language, other.language)) continue
      const [first, second] = [file.header[one.index], file.header[other.index]]
      if (!first || !second) continue
      sink(loadRules.exchangedLanguages, {
        message: `the columns \`${first.value}\` and \`${second.value}\` look exchanged`,
        place: first.place,
        related: [{ label: `this one is read as \`${other.language}\`, and its cells speak \`${one.language}\``, place: second.place }],
        note: `\`${first.value}\` is read as \`${one.language}\`, and its cells speak \`${other.language}\``,
        help: 'exchange the two headings, or their names under `columns` in machine.yaml',
      })
    }
  }
}

/** Whether the cells of a column clearly speak one language and not the other. */
function speaks(file: Rows, column: number, language: string, not: string): boolean {
  const [own, other] = [joining[spoken(language)], joining[spoken(not)]]
  if (!own || !other) return false
  let [speaking, against] = [0, 0]
  for (const { cells } of file.records) {
    const words = cells[column]?.value.toLowerCase().match(/\p{L}+/gu) ?? []
    if (words.some((word) => own.has(word) && !other.has(word))) speaking++
    if (words.some((word) => other.has(word) && !own.has(word))) against++
  }
  return speaking >= clearly.cells && speaking >= against * clearly.times
}

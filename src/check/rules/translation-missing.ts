import { isDraft } from '../../model/coverage.ts'
import { type AnyPage, isIn, type Machine } from '../../model/machine.ts'
import { inScope } from '../../model/translation-scope.ts'
import type { Problem } from '../../source/finding.ts'
import type { Rule } from '../rule.ts'
import { type UntranslatedTexts, untranslatedOutputs, untranslatedTexts } from '../untranslated-texts.ts'

export const translationMissing: Rule = {
  id: 'translation-missing',
  severity: 'warning',
  summary: 'Something that must be whole in a language is not translated.',
  why: 'The reader of that language meets the source language in the middle of the work.',
  source: 'house rule',

  *check(machine) {
    const { source, translations = [] } = machine.file.languages
    for (const [index, language] of [source, ...translations].entries()) {
      for (const page of machine.pages) yield* ofOutputs(page, language)
      const pages = machine.pages.filter((page) => isMissing(page, language) && inScope(machine.file, language, page.collection))
      const texts = inScope(machine.file, language, 'data') ? untranslatedTexts(machine, language).filter(({ missing }) => missing.length > 0) : []
      if (machine.file.languages.complete?.[language]) {
        for (const page of pages) yield ofPage(page, language)
        for (const text of texts) yield* ofTexts(text, language)
      } else if (pages.length + texts.length > 0) yield ofAll(machine, language, index === 0 ? ['source'] : ['translations', index - 1], pages, texts)
    }
  },
}

/** A file that is there and cannot be read is reported as such. */
const isMissing = (page: AnyPage, language: string) => !isDraft(page) && !isIn(page, language) && !page.brokenTranslations.has(language)

const ofPage = (page: AnyPage, language: string): Problem => ({
  message: `\`${page.id}\` is not translated into \`${language}\``,
  place: page.placeOf(['title']),
  help: `write \`${page.name}.${language}.mdx\` beside it, or take \`${page.collection}\` out of \`languages.complete\``,
})

/** What has to hold before an output is switched stands in the source page, for every language that the page is in. */
function* ofOutputs(page: AnyPage, language: string): Iterable<Problem> {
  const [first, ...others] = untranslatedOutputs(page, language)
  if (!first) return
  yield {
    message: `what has to hold before an output is switched is not in \`${language}\`, and the page is`,
    place: first,
    related: others.map((place) => ({ label: 'not translated either', place })),
    help: `write \`{ ${page.language}: …, ${language}: … }\``,
  }
}

/** One finding for the texts of one kind: a column that nobody translates is one cause. */
function* ofTexts({ what, missing, all }: UntranslatedTexts, language: string): Iterable<Problem> {
  const [first, ...others] = missing
  if (!first) return
  yield {
    message: `${what} are not translated into \`${language}\``,
    place: first,
    related: others.slice(0, 2).map((place) => ({ label: 'another one', place })),
    note: `${missing.length} of ${all} are missing`,
    help: 'translate them, or take `data` out of `languages.complete`',
  }
}

/** Nothing says what must be whole: that is the one cause. */
function ofAll(
  machine: Machine,
  language: string,
  at: readonly (string | number)[],
  pages: readonly AnyPage[],
  texts: readonly UntranslatedTexts[],
): Problem {
  const shared = pages.every((page) => page.shared) ? ', all of them shared' : ''
  return {
    message: `not everything is translated into \`${language}\``,
    place: machine.placeOf(['languages', ...at]),
    note: `missing are ${[...(pages.length > 0 ? [`${pages.length} of ${machine.pages.length} pages${shared}`] : []), ...texts.map(({ what }) => what)].join(', ')}`,
    help: `say under \`languages.complete\` what must be whole: \`complete: { ${language}: [lockout, cautions] }\``,
  }
}

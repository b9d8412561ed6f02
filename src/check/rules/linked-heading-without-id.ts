import type { Reference } from '../../model/machine.ts'
import { referencesTo } from '../references.ts'
import type { Rule } from '../rule.ts'

export const linkedHeadingWithoutId: Rule = {
  id: 'linked-heading-without-id',
  severity: 'warning',
  summary: 'A link leads to a heading, and nothing tells which heading of a translation that is.',
  why: 'The reader of the translation lands at the top of the page and does not find what was meant.',
  source: 'house rule',

  *check({ references, pages, languages }) {
    const links = Map.groupBy(referencesTo(references, 'page'), ({ id, page }) => (id === '' ? page?.page.id : id))
    for (const page of pages) {
      const own = Map.groupBy(links.get(page.id) ?? [], ({ anchor }) => anchor?.value)
      for (const heading of page.headings) {
        for (const [language, { anchorsAtHead, headings, source }] of page.translations) {
          if (!languages.includes(language) || !anchorsAtHead.has(heading.anchor)) continue
          const link = own.get(heading.anchor)?.find(isReadIn(language))
          if (!link) continue
          yield {
            message: `\`${heading.text}\` has no counterpart in \`${language}\``,
            place: heading.place,
            related: [
              { label: 'a link leads here', place: (link.anchor ?? link).place },
              {
                label: `${counted(headings.length)} here, and ${counted(page.headings.length)} in the source`,
                place: headings[0]?.place ?? source.place(0, 1),
              },
            ],
            help: `put \`<Anchor id="${heading.anchor}" />\` in the translation where the same is said`,
          }
        }
      }
    }
  },
}

/** A page that has no translation is shown in the source language, with its links. */
const isReadIn =
  (language: string) =>
  ({ page }: Reference) =>
    !page || page.language === language || (page.language === page.page.language && !page.page.translations.has(language))

const counted = (headings: number) => (headings === 1 ? '1 heading' : `${headings} headings`)

import type { Rule } from '../rule.ts'

export const translationUnstamped: Rule = {
  id: 'translation-unstamped',
  severity: 'note',
  summary: 'A translation does not hold the hashes of what was translated.',
  why: 'Nobody can tell which of its parts are older than their source.',
  source: 'house rule',

  *check({ pages, languages }) {
    for (const page of pages) {
      for (const { sync, source, language } of page.translations.values()) {
        if (sync.state !== 'unstamped' || !languages.includes(language)) continue
        yield {
          message: 'nothing tells which text of the source was translated',
          place: source.place(0),
          help: `compare it with its source, then run \`fettle translated ${source.file}\``,
        }
      }
    }
  },
}

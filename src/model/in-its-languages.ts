import type { AnyPage, Machine, Reference } from './machine.ts'

/** Whether the text that refers is read in some of these languages: a source text always is, a translation in its own. */
export function isReadIn(languages: readonly string[], { page }: Pick<Reference, 'page'>): boolean {
  return !page || page.language === page.page.language || languages.includes(page.language)
}

/** The machine without the translations of shared pages into languages that it does not have: nothing of them is seen in its site. */
export function inItsLanguages(machine: Machine): Machine {
  const { languages, pages, references } = machine
  const isForeign = (language: string) => !languages.includes(language)
  if (!pages.some(({ translations }) => [...translations.keys()].some(isForeign))) return machine
  return {
    ...machine,
    pages: pages.map((page): AnyPage => ({ ...page, translations: new Map([...page.translations].filter(([language]) => !isForeign(language))) })),
    references: references.filter((reference) => isReadIn(languages, reference)),
  }
}

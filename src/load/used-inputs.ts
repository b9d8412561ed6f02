import { isReadIn } from '../model/in-its-languages.ts'
import type { InputFile } from '../model/input-file.ts'
import type { AnyPage, Reference } from '../model/machine.ts'

/** What one unit is made of, as far as it tells which files of `content/` it takes. */
export interface Taken {
  /** Its pages, its own and shared ones. */
  pages: readonly AnyPage[]
  /** Every page of the folder and of the shared content. */
  allPages: readonly AnyPage[]
  references: readonly Reference[]
  languages: readonly string[]
}

/**
 * The input files that a unit takes: every file of the machine folder, and of the shared content what can be seen in its
 * site. That is each of its shared pages with the translations into its languages, the pictures that they show, and the
 * glossary. A change in any other file of `content/` leaves the site as it is, to the byte.
 */
export function usedInputs(inputs: readonly InputFile[], taken: Taken): InputFile[] {
  const own = new Set(inputs.flatMap(({ path }) => (path.startsWith('machine/') ? [path.slice('machine/'.length)] : [])))
  const used = new Set([...whole, ...taken.pages.flatMap((page) => filesOf(page, taken.languages))])
  // The number of a lockout is no tag where it stands on a drawing, whether or not the unit has the lockout.
  for (const page of taken.allPages) if (page.shared && 'number' in page.frontmatter) used.add(`${page.id}.mdx`)
  for (const reference of taken.references)
    if (reference.kind === 'image' && !own.has(reference.id) && isReadIn(taken.languages, reference)) used.add(reference.id)
  return inputs.filter(({ path }) => !path.startsWith('content/') || used.has(path.slice('content/'.length)))
}

/** Files of the shared content that every machine takes, if they are there. */
const whole = ['content.yaml', 'glossary.yaml'] as const

/** The files of a shared page, from `content/`. A page of the machine has none there. */
function filesOf({ id, shared, translations }: AnyPage, languages: readonly string[]): string[] {
  if (!shared) return []
  const translated = [...translations.keys()].filter((language) => languages.includes(language))
  return [`${id}.mdx`, ...translated.map((language) => `${id}.${language}.mdx`)]
}

import type { Graph } from '../model/graph.ts'
import type { AnyPage, Device, Machine, PageText, Term } from '../model/machine.ts'
import { type Spoken, speak, type Words } from '../model/words.ts'
import { relativeLink } from './address.ts'
import type { SiteInput } from './handover.ts'
import type { OwnStyles } from './own-styles.ts'
import { pathIn, type SitePage } from './site-map.ts'
import { type Labels, labelsOf } from './words/labels.ts'

/** What every component of a page knows: the machine, the language, and how to link from here. */
export interface Context {
  input: SiteInput
  machine: Machine
  graph: Graph
  here: SitePage
  language: string
  labels: Labels
  /** The device that the page is about, where it is about one. */
  device: Device | undefined
  /** A link to an address of this language; throws when there is no such page. */
  link(address: string): string
  /** Whether there is a page at an address. */
  has(address: string): boolean
  /** A link to a file that is the same in every language: `assets/site.css`. */
  asset(path: string): string
  /** What the parts of this page have asked for, besides the styles of every page. */
  styles: Set<OwnStyles>
  /** Whether this is asked for a name the first time on this page. */
  shownOnce(name: string): boolean
  /** The text in this language, or in the source language. */
  say(words: Words): Spoken
  /** A page's text in this language, or in the source language. */
  textOf(page: AnyPage): PageText
  titleOf(page: AnyPage): Spoken
  /** A term of the glossary in this language, or in another that has it; the source language first. */
  termOf(term: Term): Term['byLanguage'][string] & { language: string }
}

declare global {
  namespace App {
    interface Locals {
      page: SitePage
      context: Context
    }
  }
}

export function createContext(input: SiteInput, here: SitePage): Context {
  const { machine, graph } = input
  const { language } = here
  const labels = labelsOf(language)
  if (!labels) throw new Error(`the site has no labels for the language ${language}`)
  const { view } = here
  const shown = new Set<string>()
  return {
    input,
    machine,
    graph,
    here,
    language,
    labels,
    device: view.kind === 'device' || view.kind === 'lesson-for' ? graph.device(view.tag) : undefined,
    link(address) {
      const [path = ''] = address.split('#')
      if (!input.addresses.has(path)) throw new Error(`${here.path} links to ${path}, and there is no such page`)
      return relativeLink(here.path, pathIn(machine, language, address))
    },
    has: (address) => input.addresses.has(address.split('#')[0] ?? ''),
    // A file name of the author may hold what an address may not.
    asset: (path) => relativeLink(here.path, path.split('/').map(encodeURIComponent).join('/')),
    styles: new Set(),
    shownOnce: (name) => !shown.has(name) && shown.add(name).has(name),
    say: (words) => speak(words, language, machine.sourceLanguage),
    textOf: (page) => page.translations.get(language) ?? page,
    termOf({ id, byLanguage }) {
      const found = [language, machine.sourceLanguage, ...Object.keys(byLanguage)].find((it) => byLanguage[it])
      const term = found === undefined ? undefined : byLanguage[found]
      if (found === undefined || !term) throw new Error(`the term ${id} has no language`)
      return { ...term, language: found }
    },
    titleOf: (page) => titleIn(page, language),
  }
}

/** The title of a page in a language, or in its own where it is not translated. */
export function titleIn(page: AnyPage, language: string): Spoken {
  const translated = page.translations.get(language)
  return translated ? { text: translated.frontmatter.title, language } : { text: page.frontmatter.title, language: page.language }
}

/** The `lang` of a text that is in another language than the page; undefined where it is in the same. */
export function langOf(context: Context, { language }: Pick<Spoken, 'language'>): string | undefined {
  return language === context.language ? undefined : language
}

import type { Graph } from '../model/graph.ts'
import type { Device, Machine } from '../model/machine.ts'
import { remembered } from '../source/once.ts'

/** What the words of a machine say of kinds of devices, in one language. Words are lower case. */
export interface KindWords {
  /** Whether a text is the whole name of a kind: `pressure switch`. */
  isKind(text: string): boolean
  /** The kind that a name of goods begins with: `solenoid valve` of `Solenoid valve 5/2, G1/4`. */
  kindOfGoods(name: string): string | undefined
  /** Whether a kind may be said of a device: its own kind, a more general or a closer word for it, a synonym, a word of its description. */
  suits(text: string, device: Device): boolean
}

/** Heads of kinds so general that they say nothing. */
const general: Readonly<Record<string, readonly string[]>> = {
  en: ['switch', 'sensor', 'detector', 'device', 'unit', 'button', 'light', 'lamp', 'stop', 'panel', 'screen', 'meter', 'instrument', 'tank'],
  es: ['interruptor', 'sensor', 'detector', 'aparato', 'dispositivo', 'unidad', 'botón', 'luz', 'lámpara', 'panel', 'pantalla', 'tanque'],
}

/** Languages whose head noun comes last; in the others it comes first. */
const headLast = new Set(['en', 'de', 'nl', 'sv', 'da'])

/** Words with which no name of a kind ends. */
const linking = new Set(['de', 'del', 'con', 'para', 'a', 'por', 'y', 'e', 'o', 'la', 'el', 'los', 'las', 'tipo', 'type', 'with', 'for', 'of', 'and'])

/** By language; none for a language in which we cannot tell a kind from another word. */
export const kindWords = (graph: Graph): ReadonlyMap<string, KindWords> => graph.made(wordsByLanguage)

const wordsByLanguage = (machine: Machine) =>
  new Map(
    machine.languages.flatMap((language) => {
      const words = wordsIn(machine, language)
      return words ? [[language, words] as const] : []
    }),
  )

function wordsIn({ devices, terms }: Machine, language: string): KindWords | undefined {
  const silent = general[language]
  if (!silent) return undefined
  const last = headLast.has(language)
  const kindOf = ({ kind }: Device) => kind[language]?.value.toLowerCase() ?? ''
  const kinds = new Set(devices.map(kindOf).flatMap((kind) => [...namesOf(kind), headOf(kind, last)]))
  const technologies = new Set<string>(devices.flatMap(({ technology }) => technology?.value ?? []))
  // A term of the glossary is a kind when a device has it as its kind or technology.
  const families = terms.flatMap(({ id, byLanguage }) => {
    const own = byLanguage[language]
    const names = own ? [own.term, ...own.synonyms].map((name) => name.toLowerCase()) : []
    return technologies.has(id) || names.some((name) => kinds.has(name)) ? [{ id, term: names[0], names: new Set(names) }] : []
  })
  const named = [...kinds, ...families.flatMap(({ names }) => [...names])]
  const all = new Set([...named, ...[...kinds].flatMap((kind) => shorter(kind, last))].filter((name) => name.length > 2 && !silent.includes(name)))
  const exact = new Set([...kinds, ...families.map(({ term }) => term)])
  const saidOf = remembered((device: Device) => {
    const own = namesOf(kindOf(device))
    const related = families.filter(({ id, names }) => id === device.technology?.value || own.some((name) => names.has(name)))
    const said = [own[0] ?? '', device.description[language]?.value.toLowerCase() ?? '', device.technology?.value ?? '']
    return {
      words: [...said, ...related.flatMap(({ names }) => [...names])].map(spaced),
      names: own.filter((name) => name !== '').map(spaced),
      head: headOf(kindOf(device), last),
    }
  })
  const spacedName = remembered(spaced)
  return {
    isKind: (text) => all.has(text),
    kindOfGoods(name) {
      const [head = ''] = name.toLowerCase().split(/[,;:()]| (?=[\d.]*\d)| (?:with|for|of|con|para|de(?=l? (?:la|el|los|las) )) /u)
      return [head, ...shorter(head, last, 1)].find((text) => all.has(text))
    },
    suits(text, device) {
      if (text === '') return false
      const said = saidOf(device)
      // A synonym is a loose word: an air valve may be any valve.
      if (!exact.has(text) && headOf(text, last) === said.head) return true
      const name = spacedName(text)
      return said.words.some((words) => words.includes(name)) || said.names.some((own) => name.includes(own))
    },
  }
}

/** `pump with motor` is that and a pump. */
const namesOf = (kind: string) => [kind, kind.replace(/ (?:with|con|for|of) .*$/, '')]

/** A name without its closer words, longest first: `temperature sensor` of `pt100 temperature sensor`. */
function shorter(kind: string, headIsLast: boolean, fewest = 2): string[] {
  const words = (namesOf(kind)[1] ?? kind).split(' ')
  const counts = Array.from({ length: Math.max(0, words.length - fewest) }, (_, index) => words.length - 1 - index)
  const parts = counts.map((count) => (headIsLast ? words.slice(-count) : words.slice(0, count)))
  return parts.filter((part) => (part.at(-1) ?? '').length > 2 && !linking.has(part.at(-1) ?? '')).map((part) => part.join(' '))
}

/** The one word that says what it is: `valve` of `solenoid valve`; of `válvula manual` the first. */
function headOf(kind: string, headIsLast: boolean): string {
  const words = (namesOf(kind)[1] ?? kind).split(' ')
  return (headIsLast ? words.at(-1) : words[0]) ?? kind
}

/** Words each with a blank on both sides, so that one text can be looked for in another as whole words. */
const spaced = (words: string) => ` ${words.replace(/[^\p{L}\p{N}]+/gu, ' ')} `

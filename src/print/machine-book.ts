import type { Graph } from '../model/graph.ts'
import type { Machine } from '../model/machine.ts'
import { speak } from '../model/words.ts'
import { address, slug } from '../site/address.ts'
import { spareLabel } from '../site/parts/said.ts'
import { pathIn } from '../site/site-map.ts'
import { type Labels, languageName } from '../site/words/labels.ts'
import { type Book, type BookInput, composeBook, type Indexed } from './book.ts'
import type { BookFacts } from './book-facts.ts'
import { type PlannedChapter, planBook, safetyPages } from './book-plan.ts'
import type { DrawingPaper, Paper } from './page-boxes.ts'
import { partsPage } from './parts-page.ts'
import type { PrintWords } from './words/print-words.ts'

export interface PrintInput {
  machine: Machine
  graph: Graph
  language: string
  labels: Labels
  words: PrintWords
  paper: Paper
  drawings: DrawingPaper
  checkValue: string
  /** Styles besides those of the site. */
  styles: string
  /** What the site builder has written at a path from the root of the site. */
  read(path: string): string
}

export function factsOf({ machine, language, labels, checkValue }: PrintInput): BookFacts {
  const { file, unit, sourceLanguage } = machine
  const say = (words: Machine['name']) => speak(words, language, sourceLanguage).text
  const original = file.manual?.original
  return {
    language,
    languageName: languageName(language),
    name: say(machine.name),
    builder: file.builder,
    model: file.model,
    serial: unit.serial,
    document: file.document,
    revision: file.revision,
    date: file.date,
    options: unit.fitted.map((id) => {
      const name = machine.options.get(id)
      return name ? say(name) : id
    }),
    version: original && (original.includes(language) ? labels.original : labels.translationOfOriginal),
    demonstration: file.demonstration ? labels.demonstration : undefined,
    checkValue,
  }
}

/** The whole manual, or its chapters about safety alone. */
export function machineBook(input: PrintInput, what: 'book' | 'safety'): Book {
  const { machine, graph, labels, words, language } = input
  const at = (it: string) => pathIn(machine, language, it)
  const safety = safetyPages(machine, graph).map(({ id }) => address.page(id))
  const chapters = planBook(machine, graph, labels, words).filter(({ addresses }) => what === 'book' || addresses.some((it) => safety.includes(it)))
  const read = (it: string) => ({ path: at(it), html: it === address.parts ? partsHtml(input) : input.read(at(it)) })
  return composeBook({
    chapters: chapters.map(({ addresses, ...chapter }: PlannedChapter) => ({ ...chapter, pages: addresses.map(read) })),
    rows: new Map(machine.parts.map(({ number }) => [at(address.part(number.value)), { path: at(address.parts), anchor: rowId(number.value) }])),
    things: thingsOf(input, at),
    facts: factsOf(input),
    names: labels,
    words,
    paper: input.paper,
    drawings: input.drawings,
    styles: input.styles,
    lists: new Set([labels.usedAlsoOn, labels.devicesOnSheet]),
    whole: what === 'book',
  } satisfies BookInput)
}

const rowId = (part: string) => `part-${slug(part)}`

/** The parts list, or with an empty column for quantities an order sheet. */
export function partsHtml({ machine, graph, language, labels, words }: PrintInput, isOrder = false): string {
  const said = {
    title: isOrder ? words.orderSheet : labels.parts,
    number: labels.number,
    description: labels.description,
    quantity: labels.quantity,
    maker: labels.maker,
    spareClass: labels.spareClass,
    stock: labels.stock,
    usedBy: words.usedBy,
    ...(isOrder ? { order: { head: words.order, hint: words.orderHint } } : {}),
    spare: (spare: 'wear' | 'spare' | 'consumable' | 'none') => spareLabel(labels, spare),
  }
  return partsPage(machine, graph, language, said, { anchor: rowId, device: (tag) => address.tag(tag) })
}

function thingsOf({ machine, language }: PrintInput, at: (address: string) => string): Map<string, Indexed> {
  const say = (words: Machine['name']) => speak(words, language, machine.sourceLanguage).text
  const things: [string, Indexed][] = [
    ...machine.devices.map(({ tag, description }): [string, Indexed] => [
      at(address.tag(tag.value)),
      { group: 'tags', name: tag.value, said: say(description) },
    ]),
    ...machine.parts.map(({ number, description }): [string, Indexed] => [
      at(address.part(number.value)),
      { group: 'partNumbers', name: number.value, said: say(description) },
    ]),
    ...machine.alarms.map(({ number, text }): [string, Indexed] => [
      at(address.alarm(number.value)),
      { group: 'alarmNumbers', name: number.value, said: say(text) },
    ]),
  ]
  return new Map(things.sort(([, a], [, b]) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0)))
}

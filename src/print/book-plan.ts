import { formatsOf } from '../model/changeover.ts'
import type { Graph } from '../model/graph.ts'
import type { AnyPage, Machine } from '../model/machine.ts'
import { elementsOf } from '../model/mdx-elements.ts'
import { address } from '../site/address.ts'
import type { Labels } from '../site/words/labels.ts'
import type { ChapterInput } from './chapters.ts'
import type { PrintWords } from './words/print-words.ts'

/** A chapter by the addresses of its pages. */
export interface PlannedChapter extends Omit<ChapterInput, 'pages'> {
  addresses: readonly string[]
}

/**
 * The pages of the manual about safety: those in which residual risks and protective equipment stand, as machine.yaml says;
 * else the chapters that explain the signal words.
 */
export function safetyPages({ file }: Machine, graph: Graph): AnyPage[] {
  const { residualRisks, protectiveEquipment } = file.manual?.chapters ?? {}
  const front = chaptersOf(graph)
  const named = front.filter(({ id }) => id === residualRisks || id === protectiveEquipment)
  return named.length > 0 ? named : front.filter(({ body }) => elementsOf(body, 'SafetySummary').length > 0)
}

/** The book: safety, the other chapters in their order, then what is done, what can stop the machine, and what it is made of. */
export function planBook(machine: Machine, graph: Graph, labels: Labels, words: PrintWords): PlannedChapter[] {
  const safety = safetyPages(machine, graph)
  const front = [...safety, ...chaptersOf(graph).filter((page) => !safety.includes(page))]
  const jobs = [...graph.pagesIn('procedures')].sort((a, b) => jobOrder(a.frontmatter.kind) - jobOrder(b.frontmatter.kind))
  const drawn = machine.drawings.flatMap(({ number, sheetList }) => sheetList.map((sheet) => address.drawing(number.value, sheet.number)))
  return [
    ...front.map((page) => one(address.page(page.id))),
    several(labels.lockouts, 'narrow', graph.pagesIn('lockout').map(addressOfPage)),
    several(labels.procedures, 'own', jobs.map(addressOfPage)),
    several(words.setUp, 'together', formatsOf(machine).map(address.format)),
    several(
      labels.alarms,
      'together',
      machine.alarms.map(({ number }) => address.alarm(number.value)),
    ),
    several(labels.components, 'together', graph.pagesIn('components').map(addressOfPage)),
    {
      ...several(
        labels.devices,
        'together',
        machine.devices.map(({ tag }) => address.tag(tag.value)),
      ),
      listed: false,
    },
    several(labels.pictures, 'own', graph.pagesIn('parts').map(addressOfPage)),
    ...(machine.parts.length > 0 ? [one(address.parts)] : []),
    several(labels.drawings, 'sheets', drawn),
    ...(machine.terms.length > 0 ? [one(address.glossary)] : []),
  ]
}

const addressOfPage = ({ id }: AnyPage) => address.page(id)
const one = (it: string): PlannedChapter => ({ layout: 'own', addresses: [it] })
const several = (title: string, layout: PlannedChapter['layout'], addresses: readonly string[]): PlannedChapter => ({ title, layout, addresses })

/** The chapters of the manual, as its page lists them. */
function chaptersOf(graph: Graph): AnyPage[] {
  return graph.pagesIn('front').toSorted((a, b) => (a.frontmatter.order ?? 999) - (b.frontmatter.order ?? 999))
}

const kinds = ['start', 'stop', 'set-up', 'clean', 'maintain', 'other']
const jobOrder = (kind: string) => kinds.indexOf(kind)

import { askedLessons } from '../model/asked-lessons.ts'
import { formatsOf } from '../model/changeover.ts'
import type { Graph } from '../model/graph.ts'
import type { AnyPage, Machine } from '../model/machine.ts'
import { address } from './address.ts'

/** What a page of the site shows. Ids are looked up in the machine when the page is rendered. */
export type View =
  | {
      kind:
        | 'start'
        | 'search'
        | 'devices'
        | 'alarms'
        | 'parts'
        | 'drawings'
        | 'lessons'
        | 'lockouts'
        | 'procedures'
        | 'manual'
        | 'glossary'
        | 'lookup'
        | 'about'
        | 'planning'
    }
  | { kind: 'device'; tag: string }
  | { kind: 'alarm'; number: string }
  | { kind: 'part'; number: string }
  | { kind: 'drawing'; number: string; sheet: number }
  | { kind: 'area'; id: string }
  | { kind: 'page'; id: string }
  | { kind: 'format'; format: string }
  | { kind: 'lesson-for'; id: string; tag: string }
  | { kind: 'path'; role: string }

export interface SitePage {
  /** From the root of the site: `es/tags/PRS104.html`. */
  path: string
  /** The same page in every language: `tags/PRS104.html`. */
  address: string
  language: string
  view: View
}

/** Every page of the site, in a fixed order. Nothing links to a page that is not in here. */
export function planSite(machine: Machine, graph: Graph): SitePage[] {
  const views = planViews(machine, graph)
  const seen = new Map<string, View>()
  for (const [address, view] of views) {
    const other = seen.get(address.toLowerCase())
    // The rules refuse what would meet here; a page must never take the place of another in silence.
    if (other) throw new Error(`two pages would be ${address}: ${JSON.stringify(other)} and ${JSON.stringify(view)}`)
    seen.set(address.toLowerCase(), view)
  }
  return machine.languages.flatMap((language) =>
    views.map(([address, view]): SitePage => ({ path: pathIn(machine, language, address), address, language, view })),
  )
}

function planViews(machine: Machine, graph: Graph): [string, View][] {
  const plain = [
    'search',
    'devices',
    'alarms',
    'parts',
    'drawings',
    'lessons',
    'lockouts',
    'procedures',
    'manual',
    'glossary',
    'lookup',
    'about',
    'planning',
  ] as const
  return [
    [address.start, { kind: 'start' }],
    ...plain.map((kind): [string, View] => [address[kind], { kind }]),
    ...machine.areas.map(({ id }): [string, View] => [address.area(id.value), { kind: 'area', id: id.value }]),
    ...machine.devices.map(({ tag }): [string, View] => [address.tag(tag.value), { kind: 'device', tag: tag.value }]),
    ...machine.alarms.map(({ number }): [string, View] => [address.alarm(number.value), { kind: 'alarm', number: number.value }]),
    ...machine.parts.map(({ number }): [string, View] => [address.part(number.value), { kind: 'part', number: number.value }]),
    ...machine.drawings.flatMap(({ number, sheetList }) =>
      sheetList.map((sheet): [string, View] => [
        address.drawing(number.value, sheet.number),
        { kind: 'drawing', number: number.value, sheet: sheet.number },
      ]),
    ),
    ...machine.pages.filter(hasOwnPage).map(({ id }): [string, View] => [address.page(id), { kind: 'page', id }]),
    ...machine.pages.flatMap((page) =>
      page.collection === 'lessons'
        ? graph
            .devicesOfLesson(page)
            .map(({ tag }): [string, View] => [address.lessonFor(page.name, tag.value), { kind: 'lesson-for', id: page.id, tag: tag.value }])
        : [],
    ),
    ...formatsOf(machine).map((format): [string, View] => [address.format(format), { kind: 'format', format }]),
    ...rolesWithLessons(machine, graph).map((role): [string, View] => [address.path(role), { kind: 'path', role }]),
  ]
}

/** Roles that are asked to take a lesson. */
export function rolesWithLessons(machine: Machine, graph: Graph): string[] {
  return machine.training.roles.map(({ id }) => id).filter((role) => askedLessons(machine, graph, role).length > 0)
}

/** The path of an address in one language: the source language lies at the root of the site. */
export function pathIn({ sourceLanguage }: Machine, language: string, address: string): string {
  return language === sourceLanguage ? address : `${language}/${address}`
}

/** What a page of a collection is called, in `links.csv` and by the style of its page. */
export const pageKind = {
  components: 'component',
  lessons: 'lesson',
  lockout: 'lockout',
  alarms: 'alarm',
  procedures: 'procedure',
  parts: 'parts-list',
  front: 'chapter',
  cautions: 'caution',
} as const satisfies Record<AnyPage['collection'], string>

/** Cautions are included in other pages; a recovery is shown at its alarm; every other page stands for itself. */
export function hasOwnPage({ collection }: AnyPage): boolean {
  return collection !== 'cautions' && collection !== 'alarms'
}

/** Where a page of a collection is shown. */
export function addressOf(page: AnyPage): string {
  return page.collection === 'alarms' ? address.alarm(page.frontmatter.alarm) : address.page(page.id)
}

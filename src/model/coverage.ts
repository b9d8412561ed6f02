import { emptiness } from './described.ts'
import type { Graph } from './graph.ts'
import { type AnyPage, type Device, isIn, type Machine, type Part } from './machine.ts'
import { sensing } from './schema/common.ts'
import { inScope } from './translation-scope.ts'

/** What is counted, in the order it is told. */
export const coverageKinds = [
  'devices with a description',
  'devices with a page',
  'devices with a drawing',
  'devices with a place',
  'sensors with a lesson',
  'devices with limits computed',
  'alarms with a recovery',
  'maintenance tasks with an interval',
  'wear parts with a task',
  'drawing sheets shown',
  'drawings referred to',
  'pages written',
  'pages in',
  'pages that must be in',
] as const
export type CoverageKind = (typeof coverageKinds)[number]

/** How much of something the manual has: `have` of `of`, both from 0. */
export interface Coverage {
  kind: CoverageKind
  /** Language of pages; otherwise undefined. */
  language?: string
  /** In words: `devices with a page`, `pages in es`. */
  what: string
  have: number
  of: number
}

/**
 * The shares of one unit. A page that is a draft counts as not written. `hasLimits`: whether limits are computed for
 * what a device reads; undefined for one with nothing to measure.
 */
export function coverageOf(machine: Machine, graph: Graph, hasLimits: (device: Device) => boolean | undefined): Coverage[] {
  const { devices, alarms, parts, drawings, sourceLanguage, languages } = machine
  const written = machine.pages.filter((page) => !isDraft(page))
  const described = describer(machine)
  const sensors = devices.filter(isSensor)
  const tasks = graph.pagesIn('procedures').filter(isMaintenance)
  const wear = parts.filter(isWearPart)
  const sheets = drawings.flatMap(({ sheetList }) => sheetList)
  const used = drawingsReferredTo(machine)
  const row = <T>(kind: CoverageKind, all: readonly T[], has: (it: T) => boolean, language?: string): Coverage => ({
    kind,
    ...(language === undefined ? {} : { language }),
    what: language === undefined ? kind : `${kind} ${language}`,
    have: all.filter(has).length,
    of: all.length,
  })
  return [
    row('devices with a description', devices, (device) => described(device) === undefined),
    row('devices with a page', devices, (device) => pagesAbout(device, graph).length > 0),
    row('devices with a drawing', devices, (device) => hasDrawing(device, graph)),
    row('devices with a place', devices, ({ x, y, place }) => place !== undefined || (x !== undefined && y !== undefined)),
    row('sensors with a lesson', sensors, (device) => graph.lessonsOf(device).some((lesson) => !isDraft(lesson))),
    row(
      'devices with limits computed',
      devices.map(hasLimits).filter((it) => it !== undefined),
      (it) => it,
    ),
    row('alarms with a recovery', alarms, ({ number }) => {
      const recovery = graph.recoveryOf(number.value)
      return recovery !== undefined && !isDraft(recovery)
    }),
    row('maintenance tasks with an interval', tasks, ({ frontmatter }) => (frontmatter.interval ?? frontmatter.when) !== undefined),
    row('wear parts with a task', wear, (part) => tasksFor(part, graph).some((task) => !isDraft(task))),
    row('drawing sheets shown', sheets, ({ readable }) => readable),
    row('drawings referred to', drawings, ({ number }) => used.has(number.value)),
    row('pages written', machine.pages, (page) => !isDraft(page)),
    ...languages
      // Shared pages may be in another language than those of the machine.
      .filter((language) => language !== sourceLanguage || written.some((page) => page.language !== language))
      .flatMap((language) => {
        const required = written.filter(({ collection }) => inScope(machine.file, language, collection))
        return [
          row('pages in', written, (page) => isIn(page, language), language),
          row('pages that must be in', required, (page) => isIn(page, language), language),
        ]
      }),
  ]
}

export function isDraft(page: AnyPage): boolean {
  return page.collection !== 'cautions' && page.frontmatter.draft === true
}

export function isSensor({ technology }: Device): boolean {
  return technology !== undefined && sensing.has(technology.value)
}

/** A job that is done again and again to keep the machine going. */
export function isMaintenance({ frontmatter: { kind } }: Extract<AnyPage, { collection: 'procedures' }>): boolean {
  return kind === 'maintain' || kind === 'clean'
}

/** A part that wears and can be ordered. */
export function isWearPart({ spare, supersededBy }: Part): boolean {
  return spare?.value === 'wear' && supersededBy === undefined
}

/** Why the description of a device tells nothing, in the light of the other devices. */
export function describer({ devices, sourceLanguage }: Machine): (device: Device) => ReturnType<typeof emptiness> {
  const text = (words: Device['kind']) => words[sourceLanguage]?.value ?? ''
  const ofKind = Map.groupBy(devices, ({ kind }) => text(kind))
  return ({ tag, kind, description }) => emptiness(text(description), tag.value, text(kind), (ofKind.get(text(kind))?.length ?? 0) > 1)
}

/** Pages that speak of a device: they name it, or they are lessons made for it. Drafts do not count. */
export function pagesAbout(device: Device, graph: Graph): AnyPage[] {
  return [...graph.pagesNaming(device.tag.value), ...graph.lessonsOf(device)].filter((page) => !isDraft(page))
}

/** Jobs that name a part, the part that replaced it, or a device that has it. */
export function tasksFor({ number }: Part, graph: Graph): Extract<AnyPage, { collection: 'procedures' }>[] {
  const devices = graph.devicesWithPart(number.value)
  const pages = [...graph.pagesReferringTo('part', number.value), ...devices.flatMap(({ tag }) => graph.pagesNaming(tag.value))]
  return pages.filter((page) => page.collection === 'procedures')
}

function hasDrawing({ tag, drawing }: Device, graph: Graph): boolean {
  return drawing !== undefined || graph.sightingsOf(tag.value).length > 0 || graph.signalsOf(tag.value).some((signal) => signal.drawing !== undefined)
}

/** Numbers of drawings that a list, a page or the plan names, or whose sheet a page shows as its picture. */
export function drawingsReferredTo({ drawings, references, placeOf }: Machine): Set<string> {
  const registers = new Set(drawings.map(({ place }) => place.file))
  const named = references.flatMap(({ kind, id, place }) => (kind === 'drawing' && !registers.has(place.file) ? [id] : []))
  const folder = placeOf([]).file.replace(/machine\.yaml$/, '')
  const pictures = new Set(references.flatMap(({ kind, id }) => (kind === 'image' ? [folder + id] : [])))
  const pictured = drawings.filter(({ sheetList }) => sheetList.some(({ file }) => pictures.has(file)))
  return new Set([...named, ...pictured.map(({ number }) => number.value)])
}

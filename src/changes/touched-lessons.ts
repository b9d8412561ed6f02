import { graphOf } from '../model/graph.ts'
import type { AnyPage, Machine, Page } from '../model/machine.ts'
import type { Change, ChangeKind } from './change.ts'

/** Why a lesson teaches something that is another thing now: a change of the data, or a page that it covers. */
export type TouchReason = { change: Change } | { page: string; isGone: boolean }

export interface Touch {
  /** Name of the lesson's page. */
  lesson: string
  /** What it is to those who took the lesson: where things are found, how the work is done, or a hazard that is new. */
  calls: 'text' | 'procedure' | 'new-hazard'
  by: TouchReason
}

/** What changes where a thing is found or what it is called in a list, and not how the work is done. */
const onText = new Set<ChangeKind>([
  're-addressed',
  're-terminaled',
  'drawing-changed',
  'revision-changed',
  'part-replaced',
  'superseded',
  'reworded',
  'quantity-changed',
])

/**
 * The lessons of the new revision of which something that they cover has changed, in the order of the lessons: their devices and
 * alarms; lockouts and other pages, whose text is another or whose energies, isolating devices or hazards are. Pages are compared
 * where both revisions have them.
 */
export function touchedLessons(changes: readonly Change[], old: readonly Machine[], now: readonly Machine[]): Touch[] {
  const pages = { old: pagesById(old), now: pagesById(now) }
  const machines = [...old, ...now]
  const lessons = [...pages.now.values()].filter((page) => page.collection === 'lessons')
  return lessons.flatMap((lesson) => {
    const covered = coveredPages(lesson)
    const names = namesCovered(lesson, covered, machines)
    return [
      ...changes
        .filter((change) => [change.was, change.is].some((name) => name !== undefined && names.has(`${change.thing} ${name}`)))
        .map((change): Touch => ({ lesson: lesson.name, calls: callOf(change), by: { change } })),
      ...covered.flatMap((id): Touch[] => {
        const [was, is] = [pages.old.get(id), pages.now.get(id)]
        if (!was || (is && textOf(was) === textOf(is))) return []
        return [{ lesson: lesson.name, calls: 'procedure', by: { page: id, isGone: !is } }]
      }),
    ]
  })
}

function pagesById(machines: readonly Machine[]): Map<string, AnyPage> {
  return new Map(machines.flatMap(({ pages }) => pages.map((page): [string, AnyPage] => [page.id, page])))
}

function coveredPages({ frontmatter: { covers } }: Page<'lessons'>): string[] {
  return [...(covers?.lockouts ?? []).map((name) => `lockout/${name}`), ...(covers?.pages ?? [])]
}

/** `device PS-101`: the things whose change is a change of what the lesson teaches. */
function namesCovered({ frontmatter: { covers, tags = [] } }: Page<'lessons'>, pages: readonly string[], machines: readonly Machine[]): Set<string> {
  const devices = [...tags, ...(covers?.tags ?? [])].map((tag) => `device ${tag}`)
  const alarms = (covers?.alarms ?? []).map((number) => `alarm ${number}`)
  const byPages = machines.flatMap((machine) => {
    const graph = graphOf(machine)
    const lockouts = pages.flatMap((id) => graph.page(id) ?? []).filter((page) => page.collection === 'lockout')
    const energies = machine.energy.filter(({ id }) => lockouts.some(({ frontmatter }) => frontmatter.energy.includes(id.value)))
    const hazards = (machine.hazards ?? []).filter(({ tasks }) => tasks.some(({ value }) => pages.includes(value)))
    return [
      ...energies.flatMap(({ id, isolation, verify }) => [
        `energy source ${id.value}`,
        ...[...isolation.map(({ tag }) => tag), ...verify.tags].map(({ value }) => `device ${value}`),
      ]),
      ...hazards.map(({ id }) => `hazard ${id.value}`),
    ]
  })
  return new Set([...devices, ...alarms, ...byPages])
}

function callOf({ thing, kind }: Change): Touch['calls'] {
  if (thing === 'hazard') return kind === 'removed' || kind === 'left-out' || kind === 'renamed' ? 'text' : 'new-hazard'
  return onText.has(kind) ? 'text' : 'procedure'
}

/** Line breaks and blanks alone are no change. */
const textOf = ({ source }: AnyPage) => source.text.replace(/\s+/g, ' ').trim()

import { once, remembered } from '../source/once.ts'
import type { Hazard } from './hazard.ts'
import type { Alarm, AnyPage, Area, Device, Drawing, EnergySource, Machine, Page, Part, Reference, Sheet, SheetText, Signal } from './machine.ts'
import { type PlacedMessage, placedMessages } from './placed-messages.ts'
import { type SheetMention, sheetReader } from './sheet-tags.ts'

/** A device's tag as it stands on a sheet. */
export interface Sighting {
  drawing: Drawing
  sheet: Sheet
  tag: string
  text: SheetText
}

/**
 * What refers to what, found once from the data and the pages; an author never writes a back-reference.
 * Every list is in the order of its own table or by page id.
 */
export interface Graph {
  device(tag: string): Device | undefined
  part(number: string): Part | undefined
  drawing(number: string): Drawing | undefined
  alarm(number: string): Alarm | undefined
  page(id: string): AnyPage | undefined
  energy(id: string): EnergySource | undefined
  /** The energy sources that a lockout cuts off, in the order in which they are isolated. */
  sourcesOf(lockout: Page<'lockout'>): readonly EnergySource[]
  hazard(id: string): Hazard | undefined
  area(id: string | undefined): Area | undefined
  pagesIn<C extends AnyPage['collection']>(collection: C): readonly Extract<AnyPage, { collection: C }>[]
  signalsOf(tag: string): readonly Signal[]
  /** The device whose signal is on a terminal; the first one of the I/O list. */
  deviceOnTerminal(terminal: string): Device | undefined
  alarmsOf(tag: string): readonly Alarm[]
  /** Pages whose frontmatter or body, in the source language, name the device. */
  pagesNaming(tag: string): readonly AnyPage[]
  lessonsOf(device: Device): readonly Page<'lessons'>[]
  /** Lockouts that cover the device's area or name it; the one for the smallest part of the machine first. */
  lockoutsOf(device: Device): readonly Page<'lockout'>[]
  /** Lockouts that cover an area, the one for the smallest part of the machine first. */
  lockoutsCovering(area: string): readonly Page<'lockout'>[]
  /** Lockouts by the names that frontmatter gives them. */
  lockoutsNamed(names: readonly string[]): readonly Page<'lockout'>[]
  componentPagesOf(tag: string): readonly Page<'components'>[]
  sightingsOf(tag: string): readonly Sighting[]
  /** Tags of devices on one sheet, where it is certain which device is meant. */
  sightingsOn(sheet: Sheet): readonly Sighting[]
  /** Every text of a sheet that is a tag or has the form of one. */
  mentionsOn(sheet: Sheet): readonly SheetMention[]
  recoveryOf(alarmNumber: string): Page<'alarms'> | undefined
  devicesWithPart(number: string): readonly Device[]
  devicesOfLesson(lesson: Page<'lessons'>): readonly Device[]
  /** Pages that name a part, an alarm, a drawing or another page. */
  pagesReferringTo(kind: Reference['kind'], id: string): readonly AnyPage[]
  /** Parts that were replaced by this one, nearest first. */
  replacedBy(number: string): readonly Part[]
  /** The part to order today: the end of the chain of successors; stops before a circle. */
  latest(part: Part): Part
  isolationsOf(tag: string): readonly EnergySource[]
  /** Every safety message on a page, in the order of pages, languages and text. */
  safetyMessages(): readonly PlacedMessage[]
  /** What a function makes of machine and graph, made once: for what several rules ask for. */
  made<T>(make: (machine: Machine, graph: Graph) => T): T
}

export function graphOf(machine: Machine): Graph {
  const devices = indexBy(machine.devices, ({ tag }) => tag.value)
  const parts = indexBy(machine.parts, ({ number }) => number.value)
  const drawings = indexBy(machine.drawings, ({ number }) => number.value)
  const alarms = indexBy(machine.alarms, ({ number }) => number.value)
  const pages = indexBy(machine.pages, ({ id }) => id)
  const energy = indexBy(machine.energy, ({ id }) => id.value)
  const signals = groupBy(machine.signals, ({ tag }) => [tag.value])
  const onTerminal = groupBy(machine.signals, ({ terminal }) => (terminal ? [terminal.value] : []))
  const alarmsByTag = groupBy(machine.alarms, ({ tags }) => tags.map(({ value }) => value))
  const devicesByPart = groupBy(machine.devices, ({ part }) => (part ? [part.value] : []))
  const readSheet = sheetReader(machine)
  const mentions = new Map(machine.drawings.flatMap(({ sheetList }) => sheetList).map((sheet) => [sheet, readSheet(sheet)]))
  const allSightings = sightingsIn(machine, mentions)
  const sightings = groupBy(allSightings, ({ tag }) => [tag])
  const sightingsBySheet = Map.groupBy(allSightings, ({ sheet }) => sheet)
  const naming = referrers(machine, pages)
  const hazards = indexBy(machine.hazards ?? [], ({ id }) => id.value)
  const areas = indexBy(machine.areas, ({ id }) => id.value)
  const pagesIn = <C extends AnyPage['collection']>(collection: C) =>
    machine.pages.filter((page): page is Extract<AnyPage, { collection: C }> => page.collection === collection)
  const lessons = pagesIn('lessons')
  const lessonsByTag = groupBy(lessons, ({ frontmatter }) => frontmatter.tags ?? [])
  const lessonsByTechnology = groupBy(lessons, ({ frontmatter }) => frontmatter.technology ?? [])
  const lessonOrder = new Map(lessons.map((lesson, index) => [lesson, index]))
  const devicesByTag = groupBy(machine.devices, ({ tag }) => [tag.value])
  const devicesByTechnology = groupBy(machine.devices, ({ technology }) => (technology ? [technology.value] : []))
  const deviceOrder = new Map(machine.devices.map((device, index) => [device, index]))
  const lockouts = pagesIn('lockout').toSorted((a, b) => a.frontmatter.areas.length - b.frontmatter.areas.length)
  const lockoutOrder = new Map(lockouts.map((lockout, index) => [lockout, index]))
  const lockoutsByArea = groupBy(lockouts, ({ frontmatter }) => [...new Set(frontmatter.areas)])
  const lockoutsByName = indexBy(lockouts, ({ name }) => name)
  const isolations = groupBy(machine.energy, ({ isolation }) => [...new Set(isolation.map(({ tag }) => tag.value))])
  const components = groupBy(pagesIn('components'), ({ frontmatter }) => frontmatter.tags)
  const recoveries = indexBy(pagesIn('alarms'), ({ frontmatter }) => frontmatter.alarm)
  const predecessors = groupBy(machine.parts, ({ supersededBy }) => (supersededBy ? [supersededBy.value] : []))
  const pagesReferringTo = (kind: Reference['kind'], id: string) => naming.get(`${kind}:${id}`) ?? []
  const latest = (part: Part, seen: readonly string[] = []): Part => {
    const next = part.supersededBy && parts.get(part.supersededBy.value)
    return next && !seen.includes(next.number.value) ? latest(next, [...seen, part.number.value]) : part
  }
  const made = remembered((make: (machine: Machine, graph: Graph) => unknown) => make(machine, graph))
  const graph: Graph = {
    device: (tag) => devices.get(tag),
    part: (number) => parts.get(number),
    drawing: (number) => drawings.get(number),
    alarm: (number) => alarms.get(number),
    page: (id) => pages.get(id),
    pagesIn,
    area: (id) => (id === undefined ? undefined : areas.get(id)),
    energy: (id) => energy.get(id),
    sourcesOf: ({ frontmatter }) => frontmatter.energy.flatMap((id) => energy.get(id) ?? []),
    signalsOf: (tag) => signals.get(tag) ?? [],
    deviceOnTerminal: (terminal) => devices.get(onTerminal.get(terminal)?.[0]?.tag.value ?? ''),
    alarmsOf: (tag) => alarmsByTag.get(tag) ?? [],
    pagesNaming: (tag) => pagesReferringTo('tag', tag),
    lessonsOf: ({ tag, technology }) => inOrder([lessonsByTag.get(tag.value), technology && lessonsByTechnology.get(technology.value)], lessonOrder),
    lockoutsOf: ({ tag, area }) =>
      inOrder([area && lockoutsByArea.get(area.value), pagesReferringTo('tag', tag.value).filter(isLockout)], lockoutOrder),
    lockoutsCovering: (area) => lockoutsByArea.get(area) ?? [],
    lockoutsNamed: (names) => names.flatMap((name) => lockoutsByName.get(name) ?? []),
    componentPagesOf: (tag) => components.get(tag) ?? [],
    sightingsOf: (tag) => sightings.get(tag) ?? [],
    sightingsOn: (sheet) => sightingsBySheet.get(sheet) ?? [],
    mentionsOn: (sheet) => mentions.get(sheet) ?? [],
    recoveryOf: (number) => recoveries.get(number),
    devicesWithPart: (number) => devicesByPart.get(number) ?? [],
    devicesOfLesson: ({ frontmatter: { tags = [], technology = [] } }) =>
      inOrder([...tags.map((tag) => devicesByTag.get(tag)), ...technology.map((it) => devicesByTechnology.get(it))], deviceOrder),
    pagesReferringTo,
    replacedBy: (number) => predecessors.get(number) ?? [],
    latest,
    hazard: (id) => hazards.get(id),
    safetyMessages: once(() => placedMessages(machine.pages, (id) => hazards.get(id))),
    isolationsOf: (tag) => isolations.get(tag) ?? [],
    // Each function gives one type.
    made: <T>(make: (machine: Machine, graph: Graph) => T) => made(make) as T,
  }
  return graph
}

/** The items of some lists, each once, in the order of their table. */
function inOrder<T>(lists: readonly (readonly T[] | undefined)[], order: ReadonlyMap<T, number>): readonly T[] {
  return [...new Set(lists.flatMap((list) => list ?? []))].sort((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0))
}

/** Every text on a sheet that means one device. */
function sightingsIn({ drawings }: Machine, mentions: ReadonlyMap<Sheet, readonly SheetMention[]>): Sighting[] {
  return drawings.flatMap((drawing) =>
    drawing.sheetList.flatMap((sheet) =>
      (mentions.get(sheet) ?? []).flatMap(({ tags: [tag, other], text }) =>
        tag === undefined || other !== undefined ? [] : [{ drawing, sheet, tag, text }],
      ),
    ),
  )
}

/** `<kind>:<id>` -> the pages that refer to it in the source language, each once, by id. */
function referrers(machine: Machine, pages: ReadonlyMap<string, AnyPage>): ReadonlyMap<string, readonly AnyPage[]> {
  const found = new Map<string, Set<AnyPage>>()
  for (const { kind, id, page } of machine.references) {
    // A reference holds its page as it was read; the machine holds it as the unit has it.
    const own = page && page.language === page.page.language ? pages.get(page.page.id) : undefined
    if (!own) continue
    const key = `${kind}:${id}`
    const referring = found.get(key)
    if (referring) referring.add(own)
    else found.set(key, new Set([own]))
  }
  return new Map([...found].map(([key, referring]) => [key, [...referring]]))
}

const isLockout = (page: AnyPage): page is Page<'lockout'> => page.collection === 'lockout'

/** The first row wins; a second one with the same key is a finding that stops the build. */
function indexBy<T>(rows: readonly T[], key: (row: T) => string): Map<string, T> {
  const map = new Map<string, T>()
  for (const row of rows) if (!map.has(key(row))) map.set(key(row), row)
  return map
}

function groupBy<T>(rows: readonly T[], keys: (row: T) => readonly string[]): Map<string, T[]> {
  const map = new Map<string, T[]>()
  for (const row of rows) {
    for (const key of keys(row)) {
      const list = map.get(key)
      if (list) list.push(row)
      else map.set(key, [row])
    }
  }
  return map
}

import { composedAnchors } from '../model/lockout-phases.ts'
import type { AnyPage, EnergySource, IsolationPoint, LinkedMachine, Machine, NamedThing, PageText, Reference } from '../model/machine.ts'
import { elementsByName } from '../model/mdx-elements.ts'
import { bareNumbers } from '../model/prose/bare-numbers.ts'
import { bareTags } from '../model/prose/bare-tags.ts'
import type { Prose } from '../model/prose/prose.ts'
import { proseReader } from '../model/prose/prose-reader.ts'
import { type WordReader, wordReader } from '../model/prose/word-reader.ts'
import { optionsKey } from '../model/units.ts'
import { once } from '../source/once.ts'
import { compare, type Located, type Place } from '../source/place.ts'
import { anchorsOf, fittedBody } from './fitted.ts'
import type { Sink } from './load-rules.ts'
import type { Memory } from './memory.ts'
import type { LoadedPage } from './pages.ts'
import { usedInputs } from './used-inputs.ts'

/** All that the folder holds, before it is cut down to one unit. */
export interface Everything
  extends Omit<Machine, 'unit' | 'sourceLanguage' | 'languages' | 'pages' | 'absent' | 'prose' | 'bareTags' | 'bareNumbers' | 'readTags'> {
  pages: readonly LoadedPage[]
  /** `<kind>:<id>` of what is there and cannot be used. */
  broken: readonly { name: string; place: Place }[]
}

/** One machine for each different set of options among the units, in the order of machine.yaml; or the unit with a serial number. */
export function linkUnits(everything: Everything, memory: Memory, sink: Sink, wanted?: string): Machine[] {
  const seen = new Set<string>()
  const { pages: loadedPages, broken, file, devices, cards, parts, drawings, alarms, formats, signals, points, terms, unread } = everything
  const pages = loadedPages.map(({ page }) => page)
  const data = [file, devices, cards, parts, drawings, alarms, formats, signals, terms]
  const gone = broken.map(({ name }) => name)
  const pointNames = points.map(({ point }) => point.value)
  const numbers = pages.flatMap(({ frontmatter }) => ('number' in frontmatter ? [frontmatter.number] : []))
  const words = memory('words', [...data, ...unread, '', ...gone, '', ...numbers, '', ...pointNames], sink, () =>
    wordReader({ ...everything, pages, absent: new Map(broken.map(({ name, place }) => [name, place])) }),
  )
  const proseOf = memory('prose', [], sink, proseReader)
  return file.units.flatMap(({ serial, fitted }) => {
    if (wanted !== undefined && serial !== wanted) return []
    const key = optionsKey(fitted)
    if (seen.has(key)) return []
    seen.add(key)
    return [linkUnit(everything, { serial, fitted }, { ...words, proseOf }, (what, from, read) => memory(`${what} of ${serial}`, from, sink, read))]
  })
}

type Absent = Map<string, { reason: 'left-out' | 'broken'; place: Place; fits: readonly string[] }>

/** The machine as one unit has it: what does not fit is left out, and remembered in `absent`. */
function linkUnit(
  everything: Everything,
  unit: Machine['unit'],
  words: WordReader & { proseOf(machine: LinkedMachine): readonly Prose[] },
  kept: <T>(what: string, from: readonly unknown[], read: () => T) => T,
): Machine {
  const { pages, broken, references, ...rest } = everything
  const isFitted = fittedTo(unit)
  const { devices, signals, spares, cards, parts, drawings, alarms, formats, points, energy, hazards, safeguards } = rest
  const from = [rest.file, devices, signals, spares, cards, parts, drawings, alarms, formats, points, energy, hazards, safeguards]
  const data = kept('data', from, () => fittedData(rest, isFitted))
  const absent: Absent = new Map(broken.map(({ name, place }) => [name, { reason: 'broken', place, fits: [] }]))
  for (const [name, why] of data.absent) absent.set(name, why)
  const present = new Set(data.devices.flatMap(({ technology }) => (technology ? [technology.value] : [])))
  const keptPages = pages.filter(({ page }) => {
    const fits = optionsOf(page)
    if (isFitted(fits) && isOfUse(page, present)) return true
    for (const name of namesOf(page)) absent.set(name, { reason: 'left-out', place: page.placeOf([]), fits })
    return false
  })
  const linked: LinkedMachine = {
    ...rest,
    ...data,
    unit,
    sourceLanguage: rest.file.languages.source,
    languages: [rest.file.languages.source, ...(rest.file.languages.translations ?? [])],
    pages: keptPages
      .map(({ page }) => kept(`page ${page.source.file}`, [rest.file, page], () => asFitted(page, (option) => isFitted([option]))))
      .sort((a, b) => compare(a.id, b.id)),
    references: [...references, ...keptPages.flatMap(({ references }) => references)]
      .filter(({ fits }) => isFitted(fits))
      .filter(({ kind, id, listed }) => !listed || absent.get(`${kind}:${id}`)?.reason !== 'left-out')
      // A misspelt option would leave its page out of every unit, and never be seen.
      .concat(pages.filter((it) => !keptPages.includes(it)).flatMap(({ references }) => references.filter(({ kind }) => kind === 'option'))),
    absent,
  }
  const inputs = usedInputs(rest.inputs, { ...linked, allPages: pages.map(({ page }) => page) })
  const prose = once(() => words.proseOf(linked))
  const tags = once(() => bareTags(prose(), words.readTags))
  return {
    ...linked,
    inputs,
    prose,
    bareTags: tags,
    bareNumbers: once(() => bareNumbers(prose(), tags(), words.readNumbers)),
    readTags: words.readTags,
  }
}

/** Tells whether what fits some options, or any unit where it names none, is in a unit. */
function fittedTo(unit: Machine['unit']): (fits: readonly string[]) => boolean {
  const fitted = new Set(unit.fitted)
  return (fits) => fits.length === 0 || fits.some((option) => fitted.has(option))
}

/** The rows of a unit, and the names of those that are left out. */
function fittedData(rest: Omit<Everything, 'pages' | 'broken' | 'references'>, isFitted: (fits: readonly string[]) => boolean) {
  const absent: Absent = new Map()
  const optionsIn = (row: { readonly fits: readonly Located<string>[] }) => row.fits.map(({ value }) => value)
  const keep = <T extends { readonly fits: readonly Located<string>[] }>(
    rows: readonly T[],
    kind?: NamedThing,
    id?: (row: T) => Located<string>,
  ): T[] =>
    rows.filter((row) => {
      const fits = optionsIn(row)
      if (isFitted(fits)) return true
      if (kind && id) absent.set(`${kind}:${id(row).value}`, { reason: 'left-out', place: id(row).place, fits })
      return false
    })
  const devices = keep(rest.devices, 'tag', ({ tag }) => tag)
  for (const row of [...rest.signals, ...rest.spares])
    if (row.terminal && !isFitted(optionsIn(row)))
      absent.set(`terminal:${row.terminal.value}`, { reason: 'left-out', place: row.terminal.place, fits: optionsIn(row) })
  const energy = keep(rest.energy, 'energy', ({ id }) => id)
  const uses = (sources: readonly EnergySource[], point: IsolationPoint) => sources.some(({ isolation }) => isolation.includes(point))
  return {
    absent,
    devices,
    signals: keep(rest.signals),
    spares: keep(rest.spares),
    cards: keep(rest.cards, 'card', ({ card }) => card),
    parts: keep(rest.parts, 'part', ({ number }) => number),
    alarms: keep(rest.alarms, 'alarm', ({ number }) => number),
    formats: keep(rest.formats),
    drawings: keep(rest.drawings, 'drawing', ({ number }) => number),
    points: keep(rest.points, 'point', ({ point }) => point).filter((point) => uses(energy, point) || !uses(rest.energy, point)),
    energy,
    hazards: rest.hazards && keep(rest.hazards, 'hazard', ({ id }) => id),
    safeguards: keep(rest.safeguards).filter(({ tag }) => !absent.has(`tag:${tag.value}`)),
  }
}

function asFitted(page: AnyPage, kept: (option: string) => boolean): AnyPage {
  const composed = page.collection === 'lockout' ? composedAnchors : []
  const shown = <T extends PageText>(text: T): T => {
    const body = fittedBody(text.body, kept)
    return body === text.body ? text : { ...text, body, elements: elementsByName(body), anchors: new Set([...composed, ...anchorsOf(body)]) }
  }
  const own = shown(page)
  const translations = new Map([...page.translations].map(([language, text]) => [language, shown(text)]))
  // Units that show a page alike share it, and all that is read from it.
  const changed = own !== page || [...translations].some(([language, text]) => page.translations.get(language) !== text)
  return changed ? { ...own, translations } : page
}

function optionsOf(page: AnyPage): readonly string[] {
  return page.collection === 'cautions' ? [] : (page.frontmatter.fits ?? [])
}

/** A shared lesson about a technology that no fitted device has is of no use on this machine. */
function isOfUse(page: AnyPage, present: ReadonlySet<string>): boolean {
  if (page.collection !== 'lessons' || !page.shared || !page.frontmatter.technology) return true
  return page.frontmatter.technology.some((technology) => present.has(technology))
}

/** The names under which references know a page. */
export function namesOf(page: Pick<AnyPage, 'id' | 'collection' | 'name'>): string[] {
  const kind: Partial<Record<AnyPage['collection'], Reference['kind']>> = { lessons: 'lesson', lockout: 'lockout', cautions: 'caution' }
  const own = kind[page.collection]
  return own ? [`page:${page.id}`, `${own}:${page.name}`] : [`page:${page.id}`]
}

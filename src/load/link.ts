import { composedAnchors } from '../model/lockout-phases.ts'
import type { AnyPage, EnergySource, IsolationPoint, LinkedMachine, Machine, NamedThing, PageText, Reference } from '../model/machine.ts'
import { bareNumbers } from '../model/prose/bare-numbers.ts'
import { bareTags } from '../model/prose/bare-tags.ts'
import { type WordReader, wordReader } from '../model/prose/word-reader.ts'
import { optionsKey } from '../model/units.ts'
import { once } from '../source/once.ts'
import { compare, type Located, type Place } from '../source/place.ts'
import { anchorsOf, fittedBody } from './fitted.ts'
import type { LoadedPage } from './pages.ts'

/** All that the folder holds, before it is cut down to one unit. */
export interface Everything
  extends Omit<Machine, 'unit' | 'sourceLanguage' | 'languages' | 'pages' | 'absent' | 'prose' | 'bareTags' | 'bareNumbers' | 'readTags'> {
  pages: readonly LoadedPage[]
  /** `<kind>:<id>` of what is there and cannot be used. */
  broken: readonly { name: string; place: Place }[]
}

/** One machine for each different set of options, in the order of machine.yaml; or the unit with a serial number. */
export function linkUnits(everything: Everything, wanted?: string): Machine[] {
  const seen = new Set<string>()
  const words = wordReader({
    ...everything,
    pages: everything.pages.map(({ page }) => page),
    absent: new Map(everything.broken.map(({ name, place }) => [name, place])),
  })
  return everything.file.units.flatMap(({ serial, fitted }) => {
    if (wanted !== undefined && serial !== wanted) return []
    const key = optionsKey(fitted)
    if (seen.has(key)) return []
    seen.add(key)
    return [linkUnit(everything, { serial, fitted }, words)]
  })
}

/** The machine as one unit has it: what does not fit is left out, and remembered in `absent`. */
function linkUnit(everything: Everything, unit: Machine['unit'], words: WordReader): Machine {
  const { pages, broken, references, ...rest } = everything
  const absent = new Map<string, { reason: 'left-out' | 'broken'; place: Place; fits: readonly string[] }>()
  for (const { name, place } of broken) absent.set(name, { reason: 'broken', place, fits: [] })

  const fitted = new Set(unit.fitted)
  const kept = (fits: readonly string[]) => fits.length === 0 || fits.some((option) => fitted.has(option))
  const keep = <T extends { readonly fits: readonly Located<string>[] }>(
    rows: readonly T[],
    kind?: NamedThing,
    id?: (row: T) => Located<string>,
  ): T[] =>
    rows.filter((row) => {
      const fits = row.fits.map(({ value }) => value)
      if (kept(fits)) return true
      if (kind && id) absent.set(`${kind}:${id(row).value}`, { reason: 'left-out', place: id(row).place, fits })
      return false
    })

  const devices = keep(rest.devices, 'tag', ({ tag }) => tag)
  const leftOut = (row: (typeof rest.signals)[number]) => !kept(row.fits.map(({ value }) => value))
  for (const row of [...rest.signals, ...rest.spares].filter(leftOut))
    if (row.terminal)
      absent.set(`terminal:${row.terminal.value}`, { reason: 'left-out', place: row.terminal.place, fits: row.fits.map(({ value }) => value) })
  const energy = keep(rest.energy, 'energy', ({ id }) => id)
  const uses = (sources: readonly EnergySource[], point: IsolationPoint) => sources.some(({ isolation }) => isolation.includes(point))
  const points = keep(rest.points, 'point', ({ point }) => point).filter((point) => uses(energy, point) || !uses(rest.energy, point))
  const hazards = rest.hazards && keep(rest.hazards, 'hazard', ({ id }) => id)
  const present = new Set(devices.flatMap(({ technology }) => (technology ? [technology.value] : [])))
  const keptPages = pages.filter(({ page }) => {
    const fits = optionsOf(page)
    if (kept(fits) && isOfUse(page, present)) return true
    for (const name of namesOf(page)) absent.set(name, { reason: 'left-out', place: page.placeOf([]), fits })
    return false
  })
  const linked: LinkedMachine = {
    ...rest,
    unit,
    sourceLanguage: rest.file.languages.source,
    languages: [rest.file.languages.source, ...(rest.file.languages.translations ?? [])],
    devices,
    signals: keep(rest.signals),
    spares: keep(rest.spares),
    cards: keep(rest.cards, 'card', ({ card }) => card),
    parts: keep(rest.parts, 'part', ({ number }) => number),
    alarms: keep(rest.alarms, 'alarm', ({ number }) => number),
    formats: keep(rest.formats),
    drawings: keep(rest.drawings, 'drawing', ({ number }) => number),
    points,
    energy,
    hazards,
    pages: keptPages.map(({ page }) => asFitted(page, (option) => fitted.has(option))).sort((a, b) => compare(a.id, b.id)),
    references: [...references, ...keptPages.flatMap(({ references }) => references)]
      .filter(({ fits }) => kept(fits))
      .filter(({ kind, id, listed }) => !listed || absent.get(`${kind}:${id}`)?.reason !== 'left-out')
      // A misspelt option would leave its page out of every unit, and never be seen.
      .concat(pages.filter((it) => !keptPages.includes(it)).flatMap(({ references }) => references.filter(({ kind }) => kind === 'option'))),
    absent,
  }
  const prose = once(() => words.proseOf(linked))
  const tags = once(() => bareTags(prose(), words.readTags))
  return { ...linked, prose, bareTags: tags, bareNumbers: once(() => bareNumbers(prose(), tags(), words.readNumbers)), readTags: words.readTags }
}

function asFitted(page: AnyPage, kept: (option: string) => boolean): AnyPage {
  const composed = page.collection === 'lockout' ? composedAnchors : []
  const shown = <T extends PageText>(text: T): T => {
    const body = fittedBody(text.body, kept)
    return body === text.body ? text : { ...text, body, anchors: new Set([...composed, ...anchorsOf(body)]) }
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

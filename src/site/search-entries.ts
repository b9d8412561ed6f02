import type { Graph } from '../model/graph.ts'
import type { AnyPage, Machine } from '../model/machine.ts'
import { elementsOf } from '../model/mdx-elements.ts'
import { speak } from '../model/words.ts'
import type { SearchEntry, SearchPage } from '../search/build-index.ts'
import { hazardAnchor } from './parts/hazard-said.ts'
import type { SitePage } from './site-map.ts'

/** What search finds by its name alone: tags, alarms, parts, drawings, lockouts and hazards, in each language. */
export function searchEntries(machine: Machine, graph: Graph, pages: readonly SitePage[]): SearchEntry[] {
  const collected = machine.pages.find(({ body }) => elementsOf(body, 'SafetySummary').length > 0)
  return pages.flatMap(({ view, path, language }): SearchEntry[] => {
    const say = (words: Parameters<typeof speak>[0]) => speak(words, language, machine.sourceLanguage).text
    const areaName = (id: string | undefined) => {
      const area = graph.area(id)
      return area && say(area.name)
    }
    const entry = (kind: SearchEntry['kind'], id: string, title: string, place?: string): SearchEntry[] => [
      { id, kind, path, title, language, ...(place ? { place } : {}) },
    ]
    switch (view.kind) {
      case 'device': {
        const device = graph.device(view.tag)
        if (!device) return []
        const place = areaName(device.area?.value)
        // A technician in the cabinet has a terminal, a wire or an address, and wants the device.
        const points = graph.signalsOf(view.tag).flatMap(({ address, terminal, wire }) => [address, terminal, wire].flatMap((it) => it?.value ?? []))
        return [view.tag, ...new Set(points)].flatMap((name) =>
          entry('tag', name, name === view.tag ? say(device.description) : `${view.tag} ${say(device.description)}`, place),
        )
      }
      case 'alarm': {
        const alarm = graph.alarm(view.number)
        return alarm ? entry('alarm', view.number, say(alarm.text), areaName(alarm.area?.value)) : []
      }
      case 'part': {
        const part = graph.part(view.number)
        if (!part) return []
        const areas = new Set(graph.devicesWithPart(view.number).flatMap(({ area }) => area?.value ?? []))
        return entry('part', view.number, say(part.description), areas.size === 1 ? areaName([...areas][0]) : undefined)
      }
      case 'drawing': {
        const drawing = graph.drawing(view.number)
        return drawing && view.sheet === 1 ? entry('drawing', view.number, say(drawing.title)) : []
      }
      case 'page': {
        const page = graph.page(view.id)
        if (page?.collection === 'lockout')
          return entry(
            'lockout',
            page.frontmatter.number,
            page.translations.get(language)?.frontmatter.title ?? page.frontmatter.title,
            page.frontmatter.areas.flatMap((id) => areaName(id) ?? []).join(', '),
          )
        // The first page that collects the hazards has a card of each.
        if (!page || page.id !== collected?.id) return []
        return (machine.hazards ?? []).map(({ id, name }) => ({
          id: id.value,
          kind: 'hazard',
          path,
          anchor: hazardAnchor(id.value),
          title: say(name),
          language,
        }))
      }
      default:
        return []
    }
  })
}

const kindOfCollection: Partial<Record<AnyPage['collection'], SearchPage['kind']>> = {
  procedures: 'job',
  components: 'assembly',
  lessons: 'lesson',
}

/** What each page is that has no name of its own, and where on the machine it is about, where that is one area. */
export function searchPages(machine: Machine, graph: Graph, pages: readonly SitePage[]): SearchPage[] {
  return pages.flatMap(({ view, path, language }): SearchPage[] => {
    if (view.kind === 'format') return [{ path, language, kind: 'job' }]
    if (view.kind === 'path') return [{ path, language, kind: 'lesson' }]
    const page = view.kind === 'page' || view.kind === 'lesson-for' ? graph.page(view.id) : undefined
    const kind = page && kindOfCollection[page.collection]
    if (!page || !kind) return []
    const tags = view.kind === 'lesson-for' ? [view.tag] : page.collection === 'lessons' ? [] : tagsOf(page)
    const areas = new Set(tags.flatMap((tag) => graph.device(tag)?.area?.value ?? []))
    const area = areas.size === 1 ? graph.area([...areas][0]) : undefined
    return [{ path, language, kind, ...(area ? { place: speak(area.name, language, machine.sourceLanguage).text } : {}) }]
  })
}

const tagsOf = (page: AnyPage): readonly string[] => ('tags' in page.frontmatter ? (page.frontmatter.tags ?? []) : [])

/** Groups of words that mean the same: the term of the glossary first, then what else a reader may type. */
export function synonyms({ terms, languages }: Machine): Record<string, string[][]> {
  return Object.fromEntries(
    languages.map((language) => [
      language,
      terms.flatMap(({ byLanguage }) => {
        const term = byLanguage[language]
        const others = term ? [...term.synonyms, ...term.instead] : []
        return term && others.length > 0 ? [[term.term, ...others]] : []
      }),
    ]),
  )
}

import type { Area, EnergySource, IsolationPoint, Reference, Term } from '../model/machine.ts'
import type { WordsInput } from '../model/schema/common.ts'
import { energyFile } from '../model/schema/energy-file.ts'
import { glossaryFile } from '../model/schema/glossary-file.ts'
import type { MachineFile } from '../model/schema/machine-file.ts'
import { trainingFile } from '../model/schema/training-file.ts'
import type { Training } from '../model/training.ts'
import type { Words } from '../model/words.ts'
import { type Located, startOfFile } from '../source/place.ts'
import type { SourceText } from '../source/source-text.ts'
import type { Sink } from './load-rules.ts'
import { inQuotes } from './pages.ts'
import { checkShape } from './shape.ts'
import { storeFrom } from './store.ts'
import { wordsFrom } from './table.ts'
import { type Path, parseYaml, type YamlValue } from './yaml.ts'

type Named = Omit<Reference, 'page'>

/** Makes values of a YAML file into values with places. */
export function locator(yaml: YamlValue, sourceLanguage: string) {
  const text = (value: string, path: Path): Located<string> => ({ value, place: inQuotes(yaml, path) })
  return {
    text,
    texts: (values: readonly string[], path: Path) => values.map((value, index) => text(value, [...path, index])),
    words: (input: WordsInput, path: Path): Words =>
      wordsFrom(input, (language) => inQuotes(yaml, language ? [...path, language] : path), sourceLanguage),
  }
}

interface LoadedEnergy {
  points: IsolationPoint[]
  sources: EnergySource[]
  references: Named[]
  readable: boolean
}

export const noEnergy: LoadedEnergy = { points: [], sources: [], references: [], readable: false }

/** The isolation points and energy sources of `energy.yaml` and what they name. */
export function loadEnergy(source: SourceText, sourceLanguage: string, sink: Sink): LoadedEnergy {
  const yaml = parseYaml(source, sink)
  const file = yaml && checkShape(energyFile, yaml, sink, 'the file')
  if (!yaml || !file) return noEnergy
  const { text, texts, words } = locator(yaml, sourceLanguage)
  const maybe = (value: WordsInput | undefined, path: Path) => (value === undefined ? undefined : words(value, path))
  const references: Named[] = []
  const points = file.points.map((it, index): IsolationPoint => {
    const at: Path = ['points', index]
    const out = it.tagOut
    const point: IsolationPoint = {
      point: text(it.point, [...at, 'point']),
      tag: text(it.tag, [...at, 'tag']),
      device: it.device,
      safe: words(it.safe, [...at, 'safe']),
      service: words(it.service, [...at, 'service']),
      place: words(it.place, [...at, 'place']),
      hardware: words(it.hardware, [...at, 'hardware']),
      lockable: it.lockable,
      tagOut: out && {
        at: words(out.at, [...at, 'tagOut', 'at']),
        reason: words(out.reason, [...at, 'tagOut', 'reason']),
        additional: maybe(out.additional, [...at, 'tagOut', 'additional']),
        proof: maybe(out.proof, [...at, 'tagOut', 'proof']),
        fasteningN: { value: out.fasteningN, place: yaml.placeOf([...at, 'tagOut', 'fasteningN']) },
      },
      fits: texts(it.fits ?? [], [...at, 'fits']),
    }
    references.push({ kind: 'tag', id: point.tag.value, place: point.tag.place, fits: it.fits ?? [] })
    for (const { value, place } of point.fits) references.push({ kind: 'option', id: value, place, fits: [] })
    return point
  })
  const sources = file.sources.map((it, index): EnergySource => {
    const at: Path = ['sources', index]
    const fits = it.fits ?? []
    const name = (kind: Reference['kind'], { value, place }: Located<string>) => references.push({ kind, id: value, place, fits })
    const source: EnergySource = {
      id: text(it.id, [...at, 'id']),
      form: it.form,
      name: words(it.name, [...at, 'name']),
      magnitude: it.magnitude.map(({ value, unit }, n) => ({ value, unit: text(unit, [...at, 'magnitude', n, 'unit']) })),
      areas: texts(it.areas, [...at, 'areas']),
      hazard: words(it.hazard, [...at, 'hazard']),
      hazards: texts(it.hazards ?? [], [...at, 'hazards']),
      from: it.from === undefined ? undefined : text(it.from, [...at, 'from']),
      pointNames: texts(it.isolation, [...at, 'isolation']),
      // The first of two with one number counts.
      isolation: it.isolation.flatMap((number) => points.find(({ point }) => point.value === number) ?? []),
      stored: it.stored,
      stores: (it.store ?? []).map((store, n) => storeFrom(store, [...at, 'store', n], yaml)),
      delayNoticeS: it.delayNoticeS === undefined ? undefined : { value: it.delayNoticeS, place: yaml.placeOf([...at, 'delayNoticeS']) },
      reaccumulates: it.reaccumulates ?? false,
      watch: maybe(it.watch, [...at, 'watch']),
      dissipate: maybe(it.dissipate, [...at, 'dissipate']),
      waitS: it.waitS,
      waitBasis: maybe(it.waitBasis, [...at, 'waitBasis']),
      verify: {
        by: it.verify.by,
        method: words(it.verify.method, [...at, 'verify', 'method']),
        expect: words(it.verify.expect, [...at, 'verify', 'expect']),
        noVoltageTest: maybe(it.verify.noVoltageTest, [...at, 'verify', 'noVoltageTest']),
        tags: texts(it.verify.tags ?? [], [...at, 'verify', 'tags']),
      },
      fits: texts(fits, [...at, 'fits']),
      placeOf: (key) => yaml.placeOf([...at, key]),
    }
    for (const { of } of source.stores) if (of) name('tag', of)
    for (const area of source.areas) name('area', area)
    for (const point of source.pointNames) name('point', point)
    if (source.from) name('energy', source.from)
    for (const { value, place } of source.hazards) references.push({ kind: 'hazard', id: value, place, fits, listed: true })
    for (const tag of source.verify.tags) name('tag', tag)
    for (const { value, place } of source.fits) references.push({ kind: 'option', id: value, place, fits: [] })
    return source
  })
  return { points, sources, references, readable: true }
}

interface LoadedTraining {
  training: Training
  references: Named[]
  readable: boolean
}

export const noTraining: LoadedTraining = {
  training: { roles: [], skills: [], sequences: [], placeOf: () => startOfFile('training.yaml') },
  references: [],
  readable: false,
}

/** Roles, skills and sequences of `training.yaml` and the lessons they name. */
export function loadTraining(source: SourceText, sink: Sink): LoadedTraining {
  const yaml = parseYaml(source, sink)
  const training = yaml && checkShape(trainingFile, yaml, sink, 'the file')
  if (!yaml || !training) return noTraining
  const named = (kind: Named['kind'], id: string, path: readonly (string | number)[]): Named => ({ kind, id, place: inQuotes(yaml, path), fits: [] })
  const references = [
    ...training.roles.flatMap(({ needs = {} }, index) =>
      Object.keys(needs).map((id): Named => ({ kind: 'skill', id, place: yaml.placeOfKey(['roles', index, 'needs'], id), fits: [] })),
    ),
    ...(training.skills ?? []).flatMap(({ lessons }, index) => lessons.map((id, n) => named('lesson', id, ['skills', index, 'lessons', n]))),
    ...training.sequences.flatMap(({ role, lessons }, index) => [
      named('role', role, ['sequences', index, 'role']),
      ...lessons.map((id, n) => named('lesson', id, ['sequences', index, 'lessons', n])),
    ]),
  ]
  return { training: { ...training, skills: training.skills ?? [], placeOf: (path) => inQuotes(yaml, path) }, references, readable: true }
}

/** The terms of a `glossary.yaml`. */
export function loadGlossary(source: SourceText, sink: Sink): { terms: Term[]; readable: boolean } {
  const yaml = parseYaml(source, sink)
  const file = yaml && checkShape(glossaryFile, yaml, sink, 'the glossary')
  if (!yaml || !file) return { terms: [], readable: false }
  const terms = Object.entries(file).map(([id, byLanguage]) => ({
    id,
    byLanguage: Object.fromEntries(
      Object.entries(byLanguage).map(([language, it]) => [language, { ...it, synonyms: it.synonyms ?? [], instead: it.instead ?? [] }]),
    ),
    place: yaml.placeOfKey([], id),
  }))
  return { terms, readable: true }
}

/** Name, options and areas of `machine.yaml` with their places, and what the file itself names. */
export function loadOwn(file: MachineFile, yaml: YamlValue): { name: Words; options: Map<string, Words>; areas: Area[]; references: Named[] } {
  const { text, words } = locator(yaml, file.languages.source)
  const areas = (file.areas ?? []).map(
    (area, index): Area => ({
      id: text(area.id, ['areas', index, 'id']),
      name: words(area.name, ['areas', index, 'name']),
      ...(area.outline ? { outline: area.outline } : {}),
    }),
  )
  const references = file.units.flatMap(({ fitted }, index) =>
    fitted.map((id, n): Named => ({ kind: 'option', id, place: inQuotes(yaml, ['units', index, 'fitted', n]), fits: [] })),
  )
  if (file.plan) {
    references.push({
      kind: 'drawing',
      id: file.plan.drawing,
      place: inQuotes(yaml, ['plan', 'drawing']),
      fits: [],
      ...(file.plan.sheet ? { sheet: { value: file.plan.sheet, place: yaml.placeOf(['plan', 'sheet']) } } : {}),
    })
  }
  for (const [chapter, id] of Object.entries(file.manual?.chapters ?? {}))
    if (id !== undefined) references.push({ kind: 'page', id, place: inQuotes(yaml, ['manual', 'chapters', chapter]), fits: [] })
  const options = new Map(Object.entries(file.options ?? {}).map(([id, it]) => [id, words(it, ['options', id])]))
  return { name: words(file.name, ['name']), options, areas, references }
}

import type { Hazard, Safeguard } from '../model/hazard.ts'
import type { Reference } from '../model/machine.ts'
import { type HazardInput, hazardsFile, type SafeguardInput } from '../model/schema/hazards-file.ts'
import type { Words } from '../model/words.ts'
import type { Located } from '../source/place.ts'
import type { SourceText } from '../source/source-text.ts'
import type { Sink } from './load-rules.ts'
import { locator } from './records.ts'
import { checkShape } from './shape.ts'
import { type Path, parseYaml, type YamlValue } from './yaml.ts'

type Named = Omit<Reference, 'page'>

interface LoadedHazards {
  hazards: Hazard[]
  safeguards: Safeguard[]
  references: Named[]
  readable: boolean
}

export const noHazards: LoadedHazards = { hazards: [], safeguards: [], references: [], readable: false }

/** The hazards of `hazards.yaml` and what they name. */
export function loadHazards(source: SourceText, sourceLanguage: string, sink: Sink): LoadedHazards {
  const yaml = parseYaml(source, sink)
  const file = yaml && checkShape(hazardsFile, yaml, sink, 'the file')
  if (!yaml || !file) return noHazards
  const hazards = file.hazards.map((it, index) => hazardOf(it, ['hazards', index], yaml, sourceLanguage))
  const safeguards = (file.safeguards ?? []).map((it, index) => safeguardOf(it, ['safeguards', index], yaml, sourceLanguage))
  return { hazards, safeguards, references: [...hazards.flatMap(namedBy), ...safeguards.flatMap(namedBySafeguard)], readable: true }
}

function safeguardOf(it: SafeguardInput, at: Path, yaml: YamlValue, sourceLanguage: string): Safeguard {
  const { text, texts } = locator(yaml, sourceLanguage)
  return {
    tag: text(it.tag, [...at, 'tag']),
    stopTimeS: it.stopTimeS,
    distanceMm: { value: it.distanceMm, place: yaml.placeOf([...at, 'distanceMm']) },
    device: deviceOf(it),
    fits: texts(it.fits ?? [], [...at, 'fits']),
  }
}

function deviceOf(it: SafeguardInput): Safeguard['device'] {
  if (it.kind === 'light-curtain') return { kind: it.kind, resolutionMm: it.resolutionMm }
  return it.kind === 'two-hand-control' ? { kind: it.kind, covered: it.covered ?? false } : { kind: it.kind }
}

function hazardOf(it: HazardInput, at: Path, yaml: YamlValue, sourceLanguage: string): Hazard {
  const { text, texts, words } = locator(yaml, sourceLanguage)
  const each = (list: HazardInput['user'], key: string): Words[] => list.map((input, n) => words(input, [...at, key, n]))
  const { severity, accident, injury } = it.residual
  return {
    id: text(it.id, [...at, 'id']),
    name: words(it.name, [...at, 'name']),
    group: it.group,
    origin: words(it.origin, [...at, 'origin']),
    areas: texts(it.areas, [...at, 'areas']),
    tags: texts(it.tags ?? [], [...at, 'tags']),
    phases: it.phases,
    tasks: texts(it.tasks ?? [], [...at, 'tasks']),
    message: it.message && {
      hazard: words(it.message.hazard, [...at, 'message', 'hazard']),
      consequence: words(it.message.consequence, [...at, 'message', 'consequence']),
      avoid: words(it.message.avoid, [...at, 'message', 'avoid']),
    },
    caution: it.caution === undefined ? undefined : text(it.caution, [...at, 'caution']),
    residual: { severity, accident, injury },
    residualPlace: yaml.placeOf([...at, 'residual']),
    builtIn: each(it.builtIn, 'builtIn'),
    user: each(it.user, 'user'),
    gap: it.gap && { part: it.gap.part, mm: { value: it.gap.mm, place: yaml.placeOf([...at, 'gap', 'mm']) } },
    assessment: text(it.assessment, [...at, 'assessment']),
    symbols: texts(it.symbols ?? [], [...at, 'symbols']),
    fits: texts(it.fits ?? [], [...at, 'fits']),
  }
}

function namedBySafeguard({ tag, fits }: Safeguard): Named[] {
  return [
    { kind: 'tag', id: tag.value, place: tag.place, fits: fits.map(({ value }) => value), listed: true },
    ...fits.map(({ value, place }): Named => ({ kind: 'option', id: value, place, fits: [] })),
  ]
}

function namedBy({ areas, tags, tasks, caution, fits }: Hazard): Named[] {
  const under = fits.map(({ value }) => value)
  const names = (kind: Reference['kind'], all: readonly Located<string>[], listed: { listed?: true } = {}) =>
    all.map(({ value, place }): Named => ({ kind, id: value, place, fits: under, ...listed }))
  return [
    ...names('area', areas),
    // A hazard is declared for every unit: one that does not have the device or the task leaves it out.
    ...names('tag', tags, { listed: true }),
    ...names('page', tasks, { listed: true }),
    ...names('caution', caution ? [caution] : []),
    ...fits.map(({ value, place }): Named => ({ kind: 'option', id: value, place, fits: [] })),
  ]
}

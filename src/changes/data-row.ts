import { greatestWord } from '../hazard/signal-word.ts'
import type { EnergyStore } from '../model/energy-store.ts'
import { type Hazard, statedHarm } from '../model/hazard.ts'
import type { EnergySource } from '../model/machine.ts'
import { type TableName, tables } from '../model/schema/tables.ts'
import { type SheetCell, writtenSheet } from '../model/sheet-reference.ts'
import type { Words } from '../model/words.ts'
import { compare, type Located, type Place } from '../source/place.ts'
import type { DataRow } from './records.ts'

/** A row of a list as plain text. */
export function rowOf(table: TableName, row: object, sourceLanguage: string): DataRow {
  const cells = new Map<string, unknown>(Object.entries(row))
  const [key = ''] = Object.keys(tables[table])
  const place = (cells.get(key) as Located<string> | undefined)?.place
  return dataRow(
    Object.keys(tables[table]).map((column) => [column, cells.get(column)]),
    place,
    sourceLanguage,
  )
}

/** An energy source as plain text. */
export function energyRow(source: EnergySource, sourceLanguage: string): DataRow {
  const { isolation, verify } = source
  const each = (words: (point: EnergySource['isolation'][number]) => Words): Words => {
    const languages = new Set(isolation.flatMap((point) => Object.keys(words(point))))
    const place = source.id.place
    return Object.fromEntries(
      [...languages].map((language) => [
        language,
        { value: isolation.map((point) => `${point.point.value}: ${words(point)[language]?.value ?? ''}`).join('; '), place },
      ]),
    )
  }
  return dataRow(
    [
      ['id', source.id],
      ['form', source.form],
      ['name', source.name],
      ['magnitude', source.magnitude.map(({ value, unit }) => `${value} ${unit.value}`).join(', ')],
      ['areas', source.areas],
      ['hazard', source.hazard],
      ['hazards', source.hazards],
      ['isolation', isolation.map(({ tag }) => tag)],
      ['points', isolation.map(({ point }) => point)],
      ['lockable', isolation.map(({ point, lockable }) => `${point.value}: ${lockable ? 'yes' : 'no'}`).join('; ')],
      ['devices', isolation.map(({ point, device }) => `${point.value}: ${device}`).join('; ')],
      ['safe', each(({ safe }) => safe)],
      ['service', each(({ service }) => service)],
      ['place', each(({ place }) => place)],
      ['hardware', each(({ hardware }) => hardware)],
      ['taggedAt', each(({ tagOut }) => tagOut?.at ?? {})],
      ['from', source.from],
      ['stored', source.stored ? 'yes' : 'no'],
      ['reaccumulates', source.reaccumulates ? 'yes' : 'no'],
      ['dissipate', source.dissipate],
      ['waitS', source.waitS],
      ['waitBasis', source.waitBasis],
      ['store', source.stores.map(storeText).join('; ')],
      ['delayNoticeS', source.delayNoticeS],
      ['watch', source.watch],
      ['proofs', verify.by.join(', ')],
      ['method', verify.method],
      ['expect', verify.expect],
      ['noVoltageTest', verify.noVoltageTest],
      ['verifyTags', verify.tags],
      ['fits', source.fits],
    ],
    source.id.place,
    sourceLanguage,
  )
}

/** A hazard of the risk assessment as plain text, with the signal word that follows from the risk that is left. */
export function hazardRow(hazard: Hazard, sourceLanguage: string): DataRow {
  const { residual, message, id } = hazard
  const harm = statedHarm(residual)
  const all = (list: readonly Words[]): Words => {
    const languages = new Set(list.flatMap((words) => Object.keys(words)))
    return Object.fromEntries(
      [...languages].map((language) => [language, { value: list.flatMap((words) => words[language]?.value ?? []).join('; '), place: id.place }]),
    )
  }
  return dataRow(
    [
      ['id', id],
      ['name', hazard.name],
      ['group', hazard.group],
      ['origin', hazard.origin],
      ['areas', hazard.areas],
      ['tags', hazard.tags],
      ['phases', hazard.phases.join(' ')],
      ['tasks', hazard.tasks],
      ['nature', message?.hazard],
      ['consequence', message?.consequence],
      ['avoidance', message?.avoid],
      ['caution', hazard.caution],
      ['severity', residual.severity],
      ['accident', residual.accident],
      ['injury', residual.injury],
      ['signalWord', harm && greatestWord([harm])],
      ['builtIn', all(hazard.builtIn)],
      ['user', all(hazard.user)],
      ['gap', hazard.gap && `${hazard.gap.part} ${hazard.gap.mm.value} mm`],
      ['assessment', hazard.assessment],
      ['symbols', hazard.symbols],
      ['fits', hazard.fits],
    ],
    id.place,
    sourceLanguage,
  )
}

function dataRow(cells: readonly (readonly [string, unknown])[], place: Place | undefined, sourceLanguage: string): DataRow {
  const values: Record<string, string> = {}
  for (const [column, cell] of cells) for (const [name, text] of textsOf(column, cell, sourceLanguage)) if (text !== '') values[name] = text
  return place ? { values, place } : { values }
}

/** A store with what its author gave: `capacitor DR101, capacitance 470 µF`. */
function storeText({ kind, of, quantities, given, surface, liquid, type, makersRatio }: EnergyStore): string {
  const measured = Object.entries(quantities).map(([name, { value, unit }]) => `${name} ${value} ${unit.value}`)
  const other = {
    type,
    surface,
    liquid,
    exponent: given.adiabaticExponent ?? given.polytropicExponent,
    'critical ratio': given.criticalRatio,
    'discharge coefficient': given.dischargeCoefficient,
    ratio: makersRatio,
  }
  const rest = Object.entries(other).flatMap(([name, value]) => (value === undefined ? [] : [`${name} ${value}`]))
  return [of ? `${kind} ${of.value}` : kind, ...measured, ...rest].join(', ')
}

/** Lists in which the order says nothing. */
const unordered = new Set(['fits', 'tags', 'hazards', 'tasks', 'symbols'])

/** A cell as text; words in several languages give one each, those of the source language under the name of the column itself. */
function textsOf(column: string, cell: unknown, sourceLanguage: string): [string, string][] {
  if (cell === undefined || cell === null) return []
  if (typeof cell !== 'object') return [[column, String(cell)]]
  if (Array.isArray(cell)) {
    const items = cell.map(({ value }: Located<string>) => value)
    return [[column, (unordered.has(column) ? items.sort(compare) : items).join(' ')]]
  }
  if ('value' in cell && 'zone' in cell) return [[column, writtenSheet(cell as SheetCell)]]
  if ('value' in cell && 'place' in cell) return [[column, String(cell.value)]]
  return Object.entries(cell as Words).map(([language, { value }]) => [language === sourceLanguage ? column : `${column}.${language}`, value])
}

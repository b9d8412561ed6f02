import type { Machine } from '../model/machine.ts'
import { hazardWords } from '../model/prose/data-words.ts'
import { type Column, tables } from '../model/schema/tables.ts'
import type { Words } from '../model/words.ts'
import type { Place } from '../source/place.ts'

export interface UntranslatedTexts {
  /** In the plural: `descriptions of devices`. */
  what: string
  /** Where the texts stand in the source language. */
  missing: readonly Place[]
  all: number
}

/**
 * Texts of the lists without a translation: the columns that every row must fill, and what the energies and
 * the machine itself say. Remarks, such as a place in words, are left to the writer.
 */
export function untranslatedTexts(machine: Machine, language: string): UntranslatedTexts[] {
  const { areas, energy, hazards = [], options, name, points, sourceLanguage } = machine
  const group = (what: string, texts: readonly (Words | undefined)[]): UntranslatedTexts => {
    const written = texts.flatMap((words) => (words?.[sourceLanguage] ? [words] : []))
    const missing = written.flatMap((words) => (words[language] ? [] : (words[sourceLanguage]?.place ?? [])))
    return { what, missing, all: written.length }
  }
  const columns = (['devices', 'cards', 'drawings', 'alarms', 'parts', 'formats'] as const).flatMap((table) =>
    Object.entries<Column>(tables[table]).flatMap(([column, { type, required }]) =>
      // A column of this type holds words in every row of its table.
      type === 'words' && required
        ? [
            group(
              `${plural[column] ?? column} of ${table}`,
              machine[table].map((row) => Reflect.get(row, column) as Words),
            ),
          ]
        : [],
    ),
  )
  return [
    ...columns,
    group(
      'names of areas',
      areas.map((area) => area.name),
    ),
    group('names of options', [...options.values()]),
    group('names of the machine', [name]),
    group(
      'texts of isolation points',
      points.flatMap(({ safe, service, place, hardware, tagOut }) => [
        safe,
        service,
        place,
        hardware,
        tagOut?.at,
        tagOut?.reason,
        tagOut?.additional,
        tagOut?.proof,
      ]),
    ),
    group(
      'texts of energy sources',
      energy.flatMap(({ name, hazard, dissipate, waitBasis, watch, verify }) => [
        name,
        hazard,
        dissipate,
        waitBasis,
        watch,
        verify.method,
        verify.expect,
      ]),
    ),
    group('texts of hazards', hazards.flatMap(hazardWords)),
  ]
}

const plural: Readonly<Record<string, string>> = { kind: 'kinds', description: 'descriptions', title: 'titles', text: 'texts' }

import { isaLegendOf } from '../model/designation.ts'
import type { AnyPage, Machine } from '../model/machine.ts'
import { energyWords, hazardWords, pointWords } from '../model/prose/data-words.ts'
import type { WordsInput } from '../model/schema/common.ts'
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

/** A text in the source language. */
interface Text {
  place: Place
  isTranslated: boolean
}

/** Texts that are no pages and have no translation: every column of words but names, and what the files beside the tables say. */
export function untranslatedTexts(machine: Machine, language: string): UntranslatedTexts[] {
  const { areas, energy, hazards = [], name, options, points, sourceLanguage, training } = machine
  const group = (what: string, texts: readonly Text[]): UntranslatedTexts => ({
    what,
    missing: texts.flatMap(({ place, isTranslated }) => (isTranslated ? [] : [place])),
    all: texts.length,
  })
  const located = (what: string, texts: readonly (Words | undefined)[]) =>
    group(
      what,
      texts.flatMap((words) => {
        const source = words?.[sourceLanguage]
        return source ? [{ place: source.place, isTranslated: words[language] !== undefined }] : []
      }),
    )
  const inTraining = (list: 'roles' | 'skills' | 'sequences') =>
    group(
      `names of ${list}`,
      training[list].map(({ name }, index) => ({ place: training.placeOf([list, index, 'name']), isTranslated: isSaidIn(name, language) })),
    )
  return [
    ...columnsOfWords.map(([table, column]) =>
      located(
        `${plural[column] ?? column} of ${table}`,
        // A column of this type holds words in every row of its table.
        machine[table].map((row) => Reflect.get(row, column) as Words | undefined),
      ),
    ),
    located(
      'names of areas',
      areas.map((area) => area.name),
    ),
    located('names of options', [...options.values()]),
    located('names of the machine', [name]),
    group(
      'meanings of letters',
      ownLetters(machine).map(({ place, means }) => ({ place, isTranslated: isSaidIn(means, language) })),
    ),
    located('texts of isolation points', points.flatMap(pointWords)),
    located('texts of energy sources', energy.flatMap(energyWords)),
    located('texts of hazards', hazards.flatMap(hazardWords)),
    ...(['roles', 'skills', 'sequences'] as const).map(inTraining),
  ]
}

/** Where the words stand of what has to hold before an output is switched, of a page that is in the language while they are not. */
export function untranslatedOutputs(page: AnyPage, language: string): Place[] {
  if (!page.translations.has(language) || !('outputs' in page.frontmatter)) return []
  const { mode, login, clear } = page.frontmatter.outputs ?? {}
  return Object.entries({ mode, login, clear }).flatMap(([key, words]) =>
    words === undefined || isSaidIn(words, language) ? [] : [page.placeOf(['outputs', key])],
  )
}

const isSaidIn = (words: WordsInput, language: string) => typeof words !== 'string' && Object.hasOwn(words, language)

const tablesOfWords = ['devices', 'signals', 'cards', 'drawings', 'alarms', 'parts', 'formats'] as const

/** Columns whose words are the same in every language. */
const names: ReadonlySet<string> = new Set(['maker'])

const columnsOfWords = tablesOfWords.flatMap((table) =>
  Object.entries<Column>(tables[table]).flatMap(([column, { type }]) => (type === 'words' && !names.has(column) ? [[table, column] as const] : [])),
)

const plural: Readonly<Record<string, string>> = {
  ...{ kind: 'kinds', description: 'descriptions', title: 'titles', text: 'texts' },
  ...{ place: 'places', meaning: 'meanings', trigger: 'triggers' },
}

/** What the builder's own letters of loop tags mean. */
function ownLetters({ file: { designation }, placeOf }: Machine): { place: Place; means: WordsInput }[] {
  return Object.entries(isaLegendOf(designation) ?? {}).flatMap(([kind, letters]) =>
    Object.entries<WordsInput | undefined>(letters ?? {}).flatMap(([letter, means]) =>
      means === undefined ? [] : [{ place: placeOf(['designation', 'isa51', kind, letter]), means }],
    ),
  )
}

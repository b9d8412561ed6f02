import type { Counts } from './counts.ts'
import * as english from './formulas/english.ts'
import type { Formula, FormulaCounts } from './formulas/formula.ts'
import * as other from './formulas/other-languages.ts'
import { ofLanguage } from './language/of-language.ts'

const general = { lix: other.lix, rix: other.rix }
const ofEnglish = {
  fleschKincaidGrade: english.fleschKincaidGrade,
  forcast: english.forcast,
  fleschEase: english.fleschEase,
  gunningFog: english.gunningFog,
  smog: english.smog,
  colemanLiau: english.colemanLiau,
  ari: english.automatedReadability,
  ...general,
}
const ofSpanish = { szigrisztPazos: other.szigrisztPazos, fernandezHuerta: other.fernandezHuerta, ...general }
const ofGerman = { wiener1: other.wiener1, wiener2: other.wiener2, wiener3: other.wiener3, wiener4: other.wiener4, amstad: other.amstad, ...general }
const ofFrench = { kandelMoles: other.kandelMoles207, ...general }
const ofItalian = { gulpease: other.gulpease, ...general }

export type MeasureName = keyof (typeof ofEnglish & typeof ofSpanish & typeof ofGerman & typeof ofFrench & typeof ofItalian)

type MeasureFormulas = Readonly<Partial<Record<MeasureName, Formula>>>

const formulasByLanguage: Readonly<Record<string, MeasureFormulas>> = { en: ofEnglish, es: ofSpanish, de: ofGerman, fr: ofFrench, it: ofItalian }

/** Unrounded values. A measure that the language does not have is not there. */
export type Measures = Readonly<Partial<Record<MeasureName, number>>>

export interface NoProse {
  none: 'no prose'
}

/** All measures of a text in a language (`en`, `es-MX`); LIX and RIX for one that has none of its own. */
export function measuresOf(counts: Counts, language: string): Measures | NoProse {
  if (counts.words === 0 || counts.sentences === 0) return { none: 'no prose' }
  const measures: Partial<Record<MeasureName, number>> = {}
  const formulas = ofLanguage(formulasByLanguage, language) ?? general
  for (const [name, formula] of Object.entries(formulas) as [MeasureName, Formula][]) {
    const value = valueOfFormula(formula, counts)
    if (value !== undefined) measures[name] = value
  }
  return measures
}

/** The measures that are scaled up from a text shorter than their method asks for: FORCAST 150 words, SMOG 30 sentences. */
export function scaledMeasures({ wordTokens, sentences }: Counts): MeasureName[] {
  return [...(wordTokens < 150 ? ['forcast' as const] : []), ...(sentences < 30 ? ['smog' as const] : [])]
}

/** `undefined` where a count is missing, or where all words are numbers and tags and a share of words has nothing to stand on. */
function valueOfFormula(formula: Formula, counts: Counts): number | undefined {
  const known = counts as Partial<FormulaCounts>
  if (formula.needs.some((need) => known[need] === undefined)) return undefined
  const value = formula.value(known as FormulaCounts)
  return Number.isFinite(value) ? value : undefined
}

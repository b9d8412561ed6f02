import { type Hazard, type StatedHarm, statedHarm, type WrittenHarm } from './hazard.ts'
import { attributeOf, type JsxElement } from './mdx-elements.ts'
import { probabilities, severities } from './schema/hazards-file.ts'

/** What a `<Safety>` element says besides its text. */
export interface SafetyMessage {
  kind: string | undefined
  /** Ids of hazards as written. */
  names: readonly string[]
  /** Those of them that this unit has. */
  hazards: readonly Hazard[]
  written: WrittenHarm
  /** What it warns of: what it states itself, or the risks of its hazards. Empty where that is not complete. */
  harms: readonly StatedHarm[]
  /** The signal word that the author wrote. */
  word: string | undefined
  /** ISO 7010 codes, as written. */
  symbols: readonly string[]
}

/** Reads the attributes of a `<Safety>` element, by name and value as on a page. */
export function safetyMessage(attribute: (name: string) => string | undefined, hazardOf: (id: string) => Hazard | undefined): SafetyMessage {
  const names = listed(attribute('hazard'))
  const hazards = names.flatMap((name) => hazardOf(name) ?? [])
  const written: WrittenHarm = {
    severity: severities.find((it) => it === attribute('severity')),
    accident: probabilities.find((it) => it === attribute('accident')),
    injury: probabilities.find((it) => it === attribute('injury')),
  }
  const own = statedHarm(written)
  const risks = hazards.flatMap(({ residual }) => statedHarm(residual) ?? [])
  return {
    kind: attribute('kind'),
    names,
    hazards,
    written,
    harms: names.length === 0 ? (own ? [own] : []) : risks.length === names.length ? risks : [],
    word: attribute('word'),
    symbols: listed(attribute('symbols')),
  }
}

export const messageOf = (element: JsxElement, hazardOf: (id: string) => Hazard | undefined) =>
  safetyMessage((name) => attributeOf(element, name), hazardOf)

/** The names in an attribute that takes several, with spaces between them. */
export function listed(value: string | undefined): string[] {
  return (value ?? '').split(/\s+/).filter((name) => name !== '')
}

import { inputKinds } from '../../energy/inputs.ts'
import type { Result } from '../../energy/law.ts'
import { scaldWithinS } from '../../energy/scald.ts'
import { energyOfStore, furtherOfStore, waitOfStore } from '../../energy/store.ts'
import { inTradeUnits } from '../../energy/trade-units.ts'
import { waitOfSource } from '../../energy/wait-of-source.ts'
import { isComputed } from '../../law/law.ts'
import type { EnergySource } from '../../model/machine.ts'
import type { Words } from '../../model/words.ts'
import { fill } from '../words/fill.ts'
import type { Labels } from '../words/labels.ts'
import { quantityName } from '../words/quantities.ts'
import { waitLabel } from './said.ts'

/** What is computed of one store, as a reader can follow it. */
export interface Working {
  /** The device that holds the energy, where the author names one. */
  of: string | undefined
  /** `E = C·V₀²/2 = 90.92 J`, `t = R·C·ln(V₀/V) = 241.8 s` */
  results: readonly string[]
  /** `C = 470 µF (capacitance)`, each once. */
  inputs: readonly string[]
}

/** The energy of all stores together, or what is missing for it. Undefined where it is of no use: a hot body is judged by its temperature. */
export function energyText({ stored, stores }: EnergySource, labels: Labels, language: string): string | undefined {
  if (stored && stores.some(({ kind }) => kind === 'chemical')) return labels.noLaw
  const results = stored ? stores.flatMap((store) => energyOfStore(store) ?? []) : []
  if (results.length === 0) return undefined
  const missing = results.flatMap((result) => (isComputed(result) ? [] : namesIn(result)))
  if (missing.length > 0) return missingText(missing, labels, language)
  return said(
    results.reduce((total, result) => total + (isComputed(result) ? result.value : 0), 0),
    'J',
  )
}

export interface WaitText {
  text: string
  /** The author's own words for where a stated time comes from. */
  basis: Words | undefined
}

/** How long to wait, or what is missing for it. Undefined where there is nothing to wait for. */
export function waitText(source: EnergySource, labels: Labels, language: string): WaitText | undefined {
  const wait = waitOfSource(source)
  if (!wait) return undefined
  if ('notComputed' in wait) return { text: `${labels.waitingTime}: ${missingText(wait.notComputed, labels, language)}`, basis: undefined }
  const time = waitLabel(labels, wait.seconds)
  const isStated = wait.basis === 'stated'
  return {
    text: fill(wait.of === 'hot-body' && !isStated ? labels.leftToCool : labels.waitFor, { time }),
    basis: isStated ? source.waitBasis : undefined,
  }
}

/** How the figures come about, store by store. */
export function workings({ stored, stores }: EnergySource, language: string): Working[] {
  if (!stored) return []
  return stores.flatMap((store): Working[] => {
    const computed = [furtherOfStore(store), energyOfStore(store), waitOfStore(store)].flatMap((result) =>
      result && isComputed(result) ? [result] : [],
    )
    if (computed.length === 0) return []
    const inputs = new Map(computed.flatMap((result) => result.inputs.map((input) => [input.name, input] as const)))
    return [
      {
        of: store.of?.value,
        results: computed.map(({ formula, value, unit }) => `${formula} = ${said(value, unit)}`),
        inputs: [...inputs.values()].map(
          ({ letter, value, unit, name }) => `${letter} = ${said(value, unit)} (${quantityName(language, inputKinds[name].quantity)})`,
        ),
      },
    ]
  })
}

/** In how many seconds a hot liquid of the source scalds; undefined where it has none, or the table gives no time for it. */
export function scaldText({ stored, stores }: EnergySource, labels: Labels): string | undefined {
  const temperatures = stored
    ? stores.flatMap(({ liquid, given: { temperatureK } }) => (liquid && temperatureK !== undefined ? [temperatureK] : []))
    : []
  const seconds = temperatures.length > 0 ? scaldWithinS(Math.max(...temperatures) - 273.15) : undefined
  return seconds === undefined ? undefined : fill(labels.scalds, { seconds })
}

function said(value: number, unit: string): string {
  const quantity = inTradeUnits({ value, unit })
  return quantity.unit === '' ? `${quantity.value}` : `${quantity.value}\u202f${quantity.unit}`
}

const namesIn = (result: Exclude<Result, { value: number }>) => ('notComputed' in result ? result.notComputed : result.of)

function missingText(names: readonly string[], labels: Labels, language: string): string {
  return fill(labels.notComputed, { missing: [...new Set(names)].map((name) => quantityName(language, name)).join(', ') })
}

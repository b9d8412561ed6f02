import type { EnergyStore } from '../model/energy-store.ts'
import { type StoreInput, type StoreValue, storeQuantities } from '../model/schema/store.ts'
import { converted } from '../model/unit-scale.ts'
import { inQuotes } from './pages.ts'
import type { Path, YamlValue } from './yaml.ts'

/** The exponent of air and of nitrogen. */
const diatomicExponent = 1.4

/** A store with its quantities in SI units. */
export function storeFrom(input: StoreInput, at: Path, yaml: YamlValue): EnergyStore {
  const written = Object.entries<readonly [string, string, string]>(storeQuantities[input.kind]).flatMap(([key, [name, siUnit]]) => {
    const quantity = (input as Record<string, unknown>)[key] as { value: number; unit: string } | undefined
    return quantity ? [{ key, name: name as StoreValue, siUnit, ...quantity }] : []
  })
  const values = written.flatMap(({ name, value, unit, siUnit }) => {
    const inSi = converted(value, unit, siUnit)
    return inSi === undefined ? [] : [[name, inSi] as const]
  })
  const given: Partial<Record<StoreValue, number>> = Object.fromEntries(values)
  if (input.kind === 'receiver') {
    const exponent = input.adiabaticExponent ?? (input.gas === undefined ? undefined : diatomicExponent)
    if (exponent !== undefined) given.adiabaticExponent = exponent
  }
  if (input.kind === 'receiver' && input.criticalRatio !== undefined) given.criticalRatio = input.criticalRatio
  if (input.kind === 'accumulator' && input.dischargeCoefficient !== undefined) given.dischargeCoefficient = input.dischargeCoefficient
  if (input.kind === 'accumulator' && input.exponent !== undefined) given.polytropicExponent = input.exponent
  return {
    kind: input.kind,
    place: inQuotes(yaml, [...at, 'kind']),
    of: input.of === undefined ? undefined : { value: input.of, place: inQuotes(yaml, [...at, 'of']) },
    given,
    quantities: Object.fromEntries(
      written.map(({ key, value, unit }) => [key, { value, unit: { value: unit, place: inQuotes(yaml, [...at, key, 'unit']) } }]),
    ),
    surface: input.kind === 'hot-body' ? input.surface : undefined,
    contactS: given.contactS,
    liquid: input.kind === 'hot-body' ? input.liquid : undefined,
    type: input.kind === 'accumulator' ? input.type : undefined,
    makersRatio: input.kind === 'accumulator' ? input.makersRatio : undefined,
  }
}

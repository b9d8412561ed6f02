import { checkoutNumbers } from '../model/schema/checkout-values.ts'
import { inputKinds, type QuantityName } from '../signals/inputs.ts'

/** What a law asks for and checkout.yaml gives in another form. */
const otherwise: Readonly<Partial<Record<QuantityName, readonly string[]>>> = {
  supply: ['supply'],
  resistancePerLength: ['cableAreaMm2'],
  supplyWire: ['cableLengthM', 'cableAreaMm2'],
  signalWire: ['cableLengthM', 'cableAreaMm2'],
  length: ['cableLengthM'],
  lead: ['cableLengthM', 'cableAreaMm2'],
  cardResistance: ['cardOhm'],
  load: ['cardOhm', 'cableLengthM', 'cableAreaMm2'],
  coilFeed: ['coilFeed'],
  coilElectronics: ['coilElectronics'],
}

const byQuantity = new Map<string, string>(
  Object.entries(inputKinds).flatMap(([name, { quantity }]) => (Object.hasOwn(checkoutNumbers, name) ? [[quantity, name] as const] : [])),
)

/** The names that checkout.yaml has for quantities that are missing, each once. */
export function dataNames(quantities: readonly QuantityName[]): string[] {
  return [...new Set(quantities.flatMap((quantity) => otherwise[quantity] ?? [byQuantity.get(quantity) ?? quantity]))]
}

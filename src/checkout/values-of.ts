import type { Stated } from '../law/law.ts'
import type { CheckoutData, CheckoutEntry, CheckoutNumber } from '../model/checkout-data.ts'
import type { Card, Device, Machine } from '../model/machine.ts'
import type { CheckoutChoice, CheckoutChoiceName, CheckoutNumberName, CheckoutTextName } from '../model/schema/checkout-values.ts'
import { rememberedOf } from '../source/once.ts'
import type { Located } from '../source/place.ts'

/** What is given of one device or card: the first of its entries that has a value counts. */
export interface Values {
  number(name: CheckoutNumberName): Stated | undefined
  choice<K extends CheckoutChoiceName>(name: K): CheckoutChoice<K> | undefined
  text(name: CheckoutTextName): string | undefined
  /** A number with its place, for the rules. */
  placed(name: CheckoutNumberName): CheckoutNumber | undefined
  placedChoice<K extends CheckoutChoiceName>(name: K): Located<CheckoutChoice<K>> | undefined
  placedText(name: CheckoutTextName): Located<string> | undefined
  /** The entries, the one that wins first. */
  entries: readonly CheckoutEntry[]
}

/** A number with what it rests on, as the laws take it. */
export const statedFrom = ({ value, from, source }: CheckoutNumber): Stated => ({ value, basis: from, ...(source === undefined ? {} : { source }) })

export function valuesIn(entries: readonly CheckoutEntry[]): Values {
  const placed = (name: CheckoutNumberName) => first(entries, ({ numbers }) => numbers[name])
  const placedChoice = <K extends CheckoutChoiceName>(name: K) =>
    first(entries, ({ choices }) => choices[name] as Located<CheckoutChoice<K>> | undefined)
  const placedText = (name: CheckoutTextName) => first(entries, ({ texts }) => texts[name])
  return {
    entries,
    placed,
    placedChoice,
    placedText,
    number(name) {
      const found = placed(name)
      return found && statedFrom(found)
    },
    choice: (name) => placedChoice(name)?.value,
    text: (name) => placedText(name)?.value,
  }
}

function first<E, T>(entries: readonly E[], of: (entry: E) => T | undefined): T | undefined {
  for (const entry of entries) {
    const found = of(entry)
    if (found !== undefined) return found
  }
  return undefined
}

interface EntriesByName {
  cards: ReadonlyMap<string, CheckoutEntry>
  parts: ReadonlyMap<string, CheckoutEntry>
  devices: ReadonlyMap<string, CheckoutEntry>
}

const noEntries: EntriesByName = { cards: new Map(), parts: new Map(), devices: new Map() }
const byName = (entries: readonly CheckoutEntry[]) => new Map(entries.map((entry) => [entry.name.value, entry]))
const indexed = rememberedOf(
  ({ cards, parts, devices }: CheckoutData): EntriesByName => ({ cards: byName(cards), parts: byName(parts), devices: byName(devices) }),
)
const entriesOf = ({ checkout }: Machine) => (checkout ? indexed(checkout) : noEntries)

/** What is given of a device: by its tag, then by its part. */
export function valuesOfDevice(device: Device, machine: Machine): Values {
  const { parts, devices } = entriesOf(machine)
  return valuesIn([devices.get(device.tag.value), parts.get(device.part?.value ?? '')].filter((it) => it !== undefined))
}

/** What is given of a card: by its designation, then by its part number. */
export function valuesOfCard(card: Card | undefined, machine: Machine): Values {
  const { cards } = entriesOf(machine)
  return valuesIn([cards.get(card?.card.value ?? ''), cards.get(card?.part?.value ?? '')].filter((it) => it !== undefined))
}

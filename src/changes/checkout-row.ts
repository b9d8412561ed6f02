import type { CheckoutData, CheckoutEntry, CheckoutNumber } from '../model/checkout-data.ts'
import type { DataRow } from './records.ts'

/** What checkout.yaml says, as plain text: one row a supply, card, part or device, named `part 4410-0112`. */
export function checkoutRows(data: CheckoutData | undefined): DataRow[] {
  if (!data) return []
  return [
    ...data.supplies.map(({ name, nominalV, lowestV, highestV }) => row('supply', name, { nominalV, lowestV, highestV })),
    ...data.cards.map((entry) => entryRow('card', entry)),
    ...data.parts.map((entry) => entryRow('part', entry)),
    ...data.devices.map((entry) => entryRow('device', entry)),
  ]
}

type Kind = 'supply' | 'card' | 'part' | 'device'

function entryRow(kind: Kind, { name, technology, numbers, choices, texts }: CheckoutEntry): DataRow {
  const words = Object.entries({ technology, ...choices, ...texts }).flatMap(([key, it]) => (it ? [[key, it.value] as const] : []))
  const own = row(kind, name, numbers)
  return { ...own, values: { ...own.values, ...Object.fromEntries(words) } }
}

function row(kind: Kind, name: CheckoutEntry['name'], numbers: Readonly<Partial<Record<string, CheckoutNumber>>>): DataRow {
  const values = Object.entries(numbers).flatMap(([key, it]) => (it ? [[key, numberText(it)] as const] : []))
  return { values: { id: `${kind} ${name.value}`, kind, ...Object.fromEntries(values) }, place: name.place }
}

/** What it rests on belongs to a value: `32 (measured, cabinet after one hour of work)`. */
const numberText = ({ value, from, source }: CheckoutNumber) => `${value} (${[from, ...(source === undefined ? [] : [source])].join(', ')})`

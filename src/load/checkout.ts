import type { CheckoutData, CheckoutEntry, CheckoutNumber, CheckoutSupply } from '../model/checkout-data.ts'
import type { Reference } from '../model/machine.ts'
import { checkoutFile, type Origin } from '../model/schema/checkout-file.ts'
import { type CheckoutName, checkoutChoices, checkoutNumbers } from '../model/schema/checkout-values.ts'
import type { Located } from '../source/place.ts'
import type { SourceText } from '../source/source-text.ts'
import type { Sink } from './load-rules.ts'
import { inQuotes } from './pages.ts'
import { checkShape } from './shape.ts'
import { type Path, parseYaml, type YamlValue } from './yaml.ts'

interface LoadedCheckout {
  /** Undefined where the file is absent or cannot be read. */
  data: CheckoutData | undefined
  references: Omit<Reference, 'page'>[]
  readable: boolean
}

export const noCheckout: LoadedCheckout = { data: undefined, references: [], readable: false }

type Written = number | { value: number; from: Origin; source?: string | undefined }
interface EntryInput {
  from: Origin
  source?: string | undefined
  [name: string]: unknown
}

/** What `checkout.yaml` says of supplies, cards, parts and devices. */
export function loadCheckout(source: SourceText, sink: Sink): LoadedCheckout {
  const yaml = parseYaml(source, sink)
  const file = yaml && checkShape(checkoutFile, yaml, sink, 'the file')
  if (!yaml || !file) return noCheckout
  const entries = (section: 'cards' | 'parts' | 'devices') =>
    Object.entries((file[section] ?? {}) as Readonly<Record<string, EntryInput>>).map(([name, input]) => entryOf(name, input, section, yaml))
  const data: CheckoutData = {
    supplies: Object.entries(file.supplies ?? {}).map(([name, { from, source, ...voltages }]): CheckoutSupply => {
      const at: Path = ['supplies', name]
      const volts = (key: keyof typeof voltages) =>
        voltages[key] === undefined ? undefined : numberOf(voltages[key], { from, source }, [...at, key], yaml)
      return {
        name: { value: name, place: yaml.placeOfKey(['supplies'], name) },
        nominalV: numberOf(voltages.nominalV, { from, source }, [...at, 'nominalV'], yaml),
        lowestV: volts('lowestV'),
        highestV: volts('highestV'),
      }
    }),
    cards: entries('cards'),
    parts: entries('parts'),
    devices: entries('devices'),
  }
  const named = (kind: Reference['kind'], { value, place }: Located<string>): Omit<Reference, 'page'> => ({
    kind,
    id: value,
    place,
    fits: [],
    listed: true,
  })
  // A card is named by its id or by a part number: a rule of its own looks in both lists.
  const tags = data.devices.flatMap(({ name, texts }) => [name, ...(texts.amplifier ? [texts.amplifier] : [])])
  return { data, references: [...data.parts.map(({ name }) => named('part', name)), ...tags.map((tag) => named('tag', tag))], readable: true }
}

function entryOf(name: string, input: EntryInput, section: string, yaml: YamlValue): CheckoutEntry {
  const at: Path = [section, name]
  const { from, source, technology, ...values } = input
  const given = Object.entries(values) as [CheckoutName, unknown][]
  const located = <T>(key: string, value: T): [string, Located<T>] => [key, { value, place: inQuotes(yaml, [...at, key]) }]
  const those = <T>(test: (key: CheckoutName) => boolean, make: (key: CheckoutName, value: unknown) => [string, T]) =>
    Object.fromEntries(given.filter(([key]) => test(key)).map(([key, value]) => make(key, value)))
  return {
    name: { value: name, place: yaml.placeOfKey([section], name) },
    technology: technology === undefined ? undefined : (located('technology', technology)[1] as NonNullable<CheckoutEntry['technology']>),
    numbers: those(isNumber, (key, value) => [key, numberOf(value as Written, { from, source }, [...at, key], yaml)]),
    choices: those(isChoice, located) as CheckoutEntry['choices'],
    texts: those(
      (key) => !isNumber(key) && !isChoice(key),
      (key, value) => located(key, value as string),
    ),
    keys: given.map(([key]) => ({ value: key, place: yaml.placeOfKey(at, key) })),
  }
}

const isNumber = (key: string) => Object.hasOwn(checkoutNumbers, key)
const isChoice = (key: string) => Object.hasOwn(checkoutChoices, key)

function numberOf(written: Written, entry: { from: Origin; source?: string | undefined }, at: Path, yaml: YamlValue): CheckoutNumber {
  if (typeof written === 'number') return { value: written, from: entry.from, source: entry.source, place: yaml.placeOf(at) }
  return { value: written.value, from: written.from, source: written.source, place: yaml.placeOf([...at, 'value']) }
}

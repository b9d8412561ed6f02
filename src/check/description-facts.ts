import type { CheckoutEntry } from '../model/checkout-data.ts'
import type { CheckoutChoiceName, CheckoutNumberName } from '../model/schema/checkout-values.ts'
import type { Place } from '../source/place.ts'

interface NumberFact {
  name: CheckoutNumberName
  pattern: RegExp
}
interface WordFact {
  name: CheckoutChoiceName
  pattern: RegExp
  /** What is found, as checkout.yaml writes it. */
  written?: (found: string) => string
}

const decimal = '(\\d+(?:[.,]\\d+)?)'

/** What lists of parts write of a device: the trade's own signs, which stand in every language. */
const factsOf: Readonly<Record<string, { numbers?: readonly NumberFact[]; words?: readonly WordFact[] }>> = {
  proximity: {
    numbers: [{ name: 'ratedDistanceMm', pattern: new RegExp(`\\bSn ?=? ?${decimal} ?mm\\b`, 'g') }],
    words: [{ name: 'mounting', pattern: /(?<![\w-])(non-flush|flush)(?![\w-])/g }],
  },
  switched: {
    words: [
      { name: 'output', pattern: /\b(PNP|NPN|NAMUR)\b/g, written: (found) => found.toLowerCase() },
      { name: 'contact', pattern: /\b[PN]NP,? (NO|NC)\b/g },
    ],
  },
  coil: {
    numbers: [
      { name: 'coilV', pattern: new RegExp(`${decimal} ?V ?(?:d\\.c\\.|a\\.c\\.|DC|AC)`, 'g') },
      { name: 'coilW', pattern: new RegExp(`${decimal} ?W\\b`, 'g') },
    ],
  },
  pt100: {
    numbers: [{ name: 'iceResistanceOhm', pattern: /\bPt ?(\d{3,4})\b/g }],
    words: [
      { name: 'platinumClass', pattern: /\b(?:class|clase) (AA|A|B|C)\b/gi, written: (found) => found.toUpperCase() },
      { name: 'wiring', pattern: /\b([234]-wire)\b/g },
    ],
  },
  thermocouple: {
    words: [
      { name: 'thermocouple', pattern: /\b(?:type|tipo) ([JKT])\b/gi, written: (found) => found.toUpperCase() },
      { name: 'thermocoupleClass', pattern: /\b(?:class|clase) ([123])\b/gi, written: (found) => `class ${found}` },
    ],
  },
  analogue: {
    words: [{ name: 'signal', pattern: /\b([024][-–](?:20 mA|10 V))/g, written: (found) => found.replace('–', '-') }],
  },
  encoder: { numbers: [{ name: 'pulsesPerTurn', pattern: /\b(\d{2,5}) (?:pulses|ppr|PPR|impulsos|pulsos)(?! (?:a|per|por) l)/g }] },
  flow: { numbers: [{ name: 'pulsesPerLitre', pattern: new RegExp(`${decimal} (?:pulses|impulsos|pulsos) ?(?:a|per|por|/) ?l`, 'g') }] },
  card: { words: [{ name: 'inputType', pattern: /\bType ([123])\b/g, written: (found) => `Type ${found}` }] },
}

const kindsOf: Readonly<Record<string, readonly string[]>> = {
  inductive: ['proximity', 'switched'],
  capacitive: ['proximity', 'switched'],
  namur: ['proximity', 'switched'],
  'solenoid-valve': ['coil'],
  contactor: ['coil'],
  pt100: ['pt100'],
  thermocouple: ['thermocouple'],
  'current-loop': ['analogue'],
  'voltage-signal': ['analogue'],
  encoder: ['encoder'],
  'pulse-flow': ['flow', 'switched'],
  card: ['card', 'analogue'],
}

/** A value of checkout.yaml that a description of the same thing says otherwise. */
interface Contradiction {
  key: string
  written: string
  says: string
  place: Place
}

/** What `text` says otherwise than the data of a part, or of a card. What it says twice in two ways is not counted. */
export function contradictions({ technology, numbers, choices }: CheckoutEntry, text: string): Contradiction[] {
  const kinds = kindsOf[technology?.value ?? 'card'] ?? (technology ? ['switched'] : [])
  const facts = kinds.flatMap((kind) => factsOf[kind] ?? [])
  const ofNumbers = facts
    .flatMap(({ numbers: own = [] }) => own)
    .flatMap(({ name, pattern }): Contradiction[] => {
      const [given, found] = [numbers[name], single(text, pattern)]
      if (!given || !found || Number(found.value.replace(',', '.')) === given.value) return []
      return [{ key: name, written: String(given.value), says: found.says, place: given.place }]
    })
  const ofWords = facts
    .flatMap(({ words = [] }) => words)
    .flatMap(({ name, pattern, written = (it) => it }): Contradiction[] => {
      const [given, found] = [choices[name], single(text, pattern)]
      if (!given || !found || written(found.value) === given.value) return []
      return [{ key: name, written: given.value, says: found.says, place: given.place }]
    })
  return [...ofNumbers, ...ofWords]
}

function single(text: string, pattern: RegExp): { value: string; says: string } | undefined {
  const found = [...text.matchAll(pattern)].map(([says, value = '']) => ({ value, says }))
  const [first] = found
  return first && found.every(({ value }) => value === first.value) ? first : undefined
}

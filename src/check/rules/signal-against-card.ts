import type { Signal } from '../../model/machine.ts'
import { ioPoints } from '../io-points.ts'
import type { Rule } from '../rule.ts'

type SignalType = Signal['type']['value']

/**
 * What a card also takes besides its own type. Common practice: safety cards take standard signals, a counter
 * counts on a digital input, temperature and analogue inputs share universal cards.
 */
const alsoTakes: Readonly<Record<SignalType, readonly SignalType[]>> = {
  DI: ['CNT', 'ENC'],
  DO: [],
  AI: ['RTD', 'TC'],
  AO: [],
  RTD: ['TC', 'AI'],
  TC: ['RTD', 'AI'],
  CNT: ['ENC', 'DI'],
  ENC: ['CNT', 'DI'],
  SDI: ['DI'],
  SDO: ['DO'],
}

export const signalAgainstCard: Rule = {
  id: 'signal-against-card',
  severity: 'error',
  summary: 'A signal is on a card that does not take its type.',
  why: 'Card or type is wrong, and the technician opens the wrong card.',
  source: 'house rule; what cards take besides their type is common practice',

  *check(machine) {
    const cards = new Map(machine.cards.map((row) => [row.card.value, row]))
    for (const { type, card } of ioPoints(machine)) {
      const row = card && cards.get(card.value)
      if (!row || row.type.value === type.value || alsoTakes[row.type.value].includes(type.value)) continue
      yield {
        message: `card \`${row.card.value}\` takes ${row.type.value}, and the signal is ${type.value}`,
        place: card.place,
        related: [{ label: 'the type of the card', place: row.type.place }],
        help: 'correct the card or the type; give each part of a mixed card a row of its own',
      }
    }
  },
}

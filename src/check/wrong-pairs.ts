import type { Problem } from '../source/finding.ts'
import type { Place } from '../source/place.ts'

/** A signal whose device and card do not go together. */
export interface WrongPair {
  tag: string
  card: string
  /** Of the signal in the I/O list. */
  place: Place
  /** `has a PNP output`; of several signals: `come from a PNP output`. */
  device: { has: string; several: string; place: Place | undefined }
  /** `is sourcing` */
  onCard: { is: string; place: Place }
  /** For this signal, and what to do at each of several besides correcting the data. */
  help: string
  each: string
}

/**
 * One problem for each wrong value: that of a card with several wrong signals, that of a part with several wrong
 * devices. Of both the one with more signals is taken for the cause, the card where they are as many.
 */
export function problemsOfPairs(pairs: readonly WrongPair[]): Problem[] {
  const cardKey = (it: WrongPair) => `card ${keyOf(it.onCard.place)} ${it.device.has} ${it.onCard.is}`
  const deviceKey = (it: WrongPair) => `device ${it.device.place ? keyOf(it.device.place) : keyOf(it.place)} ${it.onCard.is}`
  const [ofCard, ofDevice] = [Map.groupBy(pairs, cardKey), Map.groupBy(pairs, deviceKey)]
  const size = (groups: ReadonlyMap<string, readonly WrongPair[]>, key: string) => groups.get(key)?.length ?? 0
  const byCause = Map.groupBy(pairs, (it) => (size(ofDevice, deviceKey(it)) > size(ofCard, cardKey(it)) ? deviceKey(it) : cardKey(it)))
  return [...byCause].flatMap(([cause, group]) => {
    const [first, second] = group
    if (!first) return []
    if (!second) return [ofOne(first)]
    return [cause.startsWith('card') ? ofOneCard(first, group) : ofOnePart(first, group)]
  })
}

const keyOf = ({ file, line, column, cell }: Place) => `${file}:${cell ?? `${line}:${column}`}`

function ofOne({ tag, card, place, device, onCard, help }: WrongPair): Problem {
  const halves = [...(device.place ? [{ label: 'the device', place: device.place }] : []), { label: 'the card', place: onCard.place }]
  return { message: `\`${tag}\` ${device.has}, and card \`${card}\` ${onCard.is}`, place, related: halves, help }
}

function ofOneCard({ device, onCard, each }: WrongPair, group: readonly WrongPair[]): Problem {
  const cards = [...new Set(group.map(({ card }) => `\`${card}\``))]
  const named = cards.length === 1 ? `card ${cards[0]} ${onCard.is}` : `cards ${listed(cards)} each ${onCard.is}`
  return {
    message: `${named}, and ${group.length} signals on ${cards.length === 1 ? 'it' : 'them'} ${device.several}`,
    place: onCard.place,
    related: signalsOf(group),
    help: `correct the data of the card if they are wrong, else ${each}`,
  }
}

function ofOnePart({ device, onCard, place, each }: WrongPair, group: readonly WrongPair[]): Problem {
  return {
    message: `${group.length} signals ${device.several}, and each of their cards ${onCard.is}`,
    place: device.place ?? place,
    related: signalsOf(group),
    help: `correct the data of the devices if they are wrong, else ${each}`,
  }
}

const shown = 3
const signalsOf = (group: readonly WrongPair[]) =>
  group.slice(0, shown).map(({ tag, place }, index) => ({
    label: index === shown - 1 && group.length > shown ? `\`${tag}\`, and ${group.length - shown} more` : `\`${tag}\``,
    place,
  }))

const listed = (names: readonly string[]) =>
  names.length > shown ? `${names.slice(0, shown).join(', ')} and ${names.length - shown} more` : names.join(', ')

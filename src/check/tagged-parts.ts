import type { Card, Device, Part } from '../model/machine.ts'
import type { Located } from '../source/place.ts'
import { tagNumber } from './tag-number.ts'

/** A device or a card, as far as the bill of materials counts it. */
export interface Tagged {
  tag: Located<string>
  part: Device['part']
  technology: Device['technology']
}

/** Part number -> the devices and cards that have it, as written in their lists. */
export function taggedByPart(devices: readonly Device[], cards: readonly Card[]): Map<string | undefined, Tagged[]> {
  const all: Tagged[] = [...devices, ...cards.map(({ card, part }) => ({ tag: card, part, technology: undefined }))]
  return Map.groupBy(all, ({ part }) => part?.value)
}

/** Tells whether a number has one row of the bill; two rows of it are reported as such. */
export function inOneRow(parts: readonly Part[]): (number: string) => boolean {
  const rows = Map.groupBy(parts, ({ number }) => number.value.toUpperCase())
  return (number) => rows.get(number.toUpperCase())?.length === 1
}

/** Where the first devices and cards name their part. */
export const placesNamed = (named: readonly Tagged[]) =>
  named.slice(0, 4).map(({ tag, part }) => ({ label: `\`${tag.value}\` has it`, place: part?.place ?? tag.place }))

/** The numbers of the tags: those with the same number may be one part. */
export const numbersOf = (named: readonly Tagged[]) => new Set(named.map(({ tag }) => tagNumber(tag.value)))

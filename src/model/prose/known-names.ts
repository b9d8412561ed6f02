import type { LinkedMachine } from '../machine.ts'

/** What carries a name in a machine folder, whatever the unit. `absent` has the names of what is there and not in these lists. */
export interface Named
  extends Pick<
    LinkedMachine,
    'file' | 'devices' | 'cards' | 'parts' | 'drawings' | 'alarms' | 'formats' | 'signals' | 'points' | 'pages' | 'terms' | 'unread'
  > {
  absent: ReadonlyMap<string, unknown>
}

/** Every other name of the machine that a reader may meet, so that no text is taken for a tag that is one of them. */
export function otherNames(machine: Named): Set<string> {
  const { file, cards, parts, drawings, alarms, formats, signals, points, pages, terms, absent } = machine
  const names = new Set<string>([file.model, file.document, file.revision])
  const add = (...values: readonly ({ value: string } | undefined)[]) => {
    for (const value of values) if (value) names.add(value.value)
  }
  for (const it of file.units) names.add(it.serial)
  for (const { card, slot } of cards) add(card, slot)
  for (const { number, makerNumber, supersededBy, alternatives } of parts) add(number, makerNumber, supersededBy, ...alternatives)
  for (const { number, revision } of drawings) add(number, revision)
  for (const { number } of alarms) add(number)
  for (const { format, setting } of formats) add(format, setting)
  for (const { signal, address, symbol, terminal, wire, pin } of signals) {
    add(signal, address, symbol, terminal, wire, pin)
    // X2 of X2:14 is the strip.
    if (terminal) names.add(terminal.value.replace(/:.*$/, ''))
  }
  for (const { point } of points) add(point)
  for (const { frontmatter } of pages) if ('number' in frontmatter) names.add(frontmatter.number)
  for (const { byLanguage } of terms)
    for (const { term, synonyms } of Object.values(byLanguage)) for (const name of [term, ...synonyms]) names.add(name)
  for (const name of absent.keys()) names.add(name.slice(name.indexOf(':') + 1))
  return names
}

import type { Graph } from '../../model/graph.ts'
import type { Machine, Signal } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'

const fields = ['address', 'terminal', 'wire'] as const
type Field = (typeof fields)[number]

/** So many signals of a card at least must stand on the sheets, and so many for each one that does not. */
const habit = { least: 4, forEach: 4 }

export const signalNotOnSheet: Rule = {
  id: 'signal-not-on-sheet',
  severity: 'warning',
  summary: 'The drawings show the addresses, terminals or wires of a card, and not those of one of its signals.',
  why: 'The technician who follows the wire on the drawing ends at another terminal than the manual names.',
  source: 'house rule',

  *check(machine, graph) {
    const texts = textsOn(machine)
    const isShown = (value: string) => texts.has(keyOf(value))
    const sheets = sheetsByTag(machine, graph)
    const missing = new Map<Signal, Field[]>()
    for (const ofCard of Map.groupBy(machine.signals, ({ card }) => card?.value ?? '').values())
      for (const field of fields) {
        const listed = ofCard.filter((signal) => signal[field])
        const off = listed.filter((signal) => !isShown(signal[field]?.value ?? ''))
        const onSheets = listed.length - off.length
        if (onSheets < habit.least || off.length * habit.forEach > onSheets) continue
        for (const signal of off) missing.set(signal, [...(missing.get(signal) ?? []), field])
      }
    for (const [signal, lacking] of missing) {
      const sheet = sheets.get(signal.tag.value)
      const [first] = lacking
      const place = first && signal[first]?.place
      // A device that stands on no sheet is reported as such.
      if (!sheet || !place) continue
      yield {
        message: `no sheet shows the ${lacking.map((field) => `${field} \`${signal[field]?.value}\``).join(' and the ')} of \`${signal.tag.value}\``,
        place,
        note: signal.card
          ? `those of the other signals of \`${signal.card.value}\` stand on the sheets`
          : 'those of the other signals stand on the sheets',
        help: `compare with ${sheet}, which shows \`${signal.tag.value}\``,
      }
    }
  },
}

const keyOf = (text: string) => text.replace(/^%/, '').toUpperCase()

/** Every text of the sheets that are in force, and its words. */
function textsOn({ drawings }: Machine): Set<string> {
  const texts = drawings.flatMap(({ supersededBy, sheetList }) => (supersededBy ? [] : sheetList.flatMap(({ texts }) => texts)))
  return new Set(texts.flatMap(({ text }) => [text, ...text.split(/\s+/)]).map(keyOf))
}

/** Tag -> the first sheet that shows it, in words. */
function sheetsByTag({ drawings }: Machine, graph: Graph): Map<string, string> {
  const sheets = new Map<string, string>()
  for (const { number, sheetList } of drawings)
    for (const sheet of sheetList)
      for (const tag of graph.mentionsOn(sheet).flatMap(({ tags }) => tags))
        if (!sheets.has(tag)) sheets.set(tag, `sheet ${sheet.number} of drawing \`${number.value}\``)
  return sheets
}

import { readAddress } from '../../model/controller-address.ts'
import { normalise } from '../../model/designation.ts'
import type { Device, Signal } from '../../model/machine.ts'
import type { Row } from '../../model/schema/tables.ts'
import { type Located, partOf } from '../../source/place.ts'
import { loadRules, type Sink } from '../load-rules.ts'

/**
 * The signals of a machine without an I/O list: each variable of the controller with an address of an input or
 * output. Its device is what `pattern` captures in the name or else the comment; without a pattern the longest
 * known tag in them. A bit is DI or DO, anything wider AI or AO.
 */
export function signalsOfSymbols(symbols: readonly Row<'symbols'>[], devices: readonly Device[], pattern: RegExp | undefined, sink: Sink): Signal[] {
  const tags = new Map(devices.map(({ tag }) => [normalise(tag.value), tag.value]))
  return symbols.flatMap((symbol): Signal[] => {
    const { name, address, comment, place } = symbol
    const read = address && readAddress(address.value)
    if (!address || read?.area === 'memory') return []
    if (!read) {
      sink(loadRules.variableWithoutTag, {
        message: `the address \`${address.value}\` of \`${name.value}\` has no form that is known`,
        place: address.place,
        note: 'without it nothing says whether the variable is an input; it is no signal of the manual',
        help: 'list the signals in an I/O list, with their types',
      })
      return []
    }
    const tag = pattern ? (captured(name, pattern) ?? captured(comment, pattern)) : (tagIn(comment, tags) ?? tagIn(name, tags))
    if (!tag) {
      sink(loadRules.variableWithoutTag, {
        message: `no device tag is in the name or comment of the variable \`${name.value}\``,
        place: name.place,
        note: `its address is \`${address.value}\`; it is no signal of the manual`,
        help: pattern ? 'write the tag so that `data.symbols.tag` finds it' : 'write the tag of the device in the comment of the variable',
      })
      return []
    }
    const digital = read.widthBit === 1
    const value = read.area === 'input' ? (digital ? 'DI' : 'AI') : digital ? 'DO' : 'AO'
    return [{ ...empty, tag, symbol: name, address, type: { value, place: address.place }, place }]
  })
}

/** What a row of the I/O list may say and a variable does not. */
const empty = {
  signal: undefined,
  card: undefined,
  channel: undefined,
  terminal: undefined,
  wire: undefined,
  pin: undefined,
  meaning: undefined,
  contact: undefined,
  low: undefined,
  high: undefined,
  unit: undefined,
  drawing: undefined,
  sheet: undefined,
  fits: [],
} as const

function captured(text: Located<string> | undefined, pattern: RegExp): Located<string> | undefined {
  const found = text && pattern.exec(text.value)
  const tag = found?.groups?.tag
  return text && tag ? { value: tag, place: text.place } : undefined
}

/** Most parts between separators that a tag may have: `=A1+B2-BG3` has three. */
const mostParts = 6

/** The longest known tag in a text, in any spelling that is the same tag. */
function tagIn(text: Located<string> | undefined, tags: ReadonlyMap<string, string>): Located<string> | undefined {
  if (!text) return undefined
  const parts = [...text.value.matchAll(/[\p{L}\p{N}]+/gu)]
  let best: { tag: string; from: number; to: number } | undefined
  for (const [index, first] of parts.entries()) {
    for (const last of parts.slice(index, index + mostParts)) {
      const to = last.index + last[0].length
      const tag = tags.get(normalise(text.value.slice(first.index, to))) ?? tags.get(normalise(text.value.slice(Math.max(0, first.index - 1), to)))
      if (tag && (!best || to - first.index > best.to - best.from)) best = { tag, from: first.index, to }
    }
  }
  return best && { value: best.tag, place: partOf(text.place, best.from, best.to) }
}

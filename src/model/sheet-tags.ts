import { isaLegendOf, parseIec81346, resolveIec81346 } from './designation.ts'
import { balloonsOf } from './instrument-balloons.ts'
import { type IsaLegend, parseIsa51 } from './isa51.ts'
import type { Machine, Sheet, SheetText } from './machine.ts'
import { plainCharacters } from './prose/look-alikes.ts'
import type { Mention } from './prose/tag-reader.ts'

/** A text of a sheet that has the form of a tag, or is one. */
export interface SheetMention extends Pick<Mention, 'is' | 'written' | 'meant'> {
  /** The text alone, with the middle of its place on the sheet. */
  text: SheetText
  /** Devices that it means: one; several where a short designation fits more of them; none where it is not a tag of the list. */
  tags: readonly string[]
  /** Joined from the texts of a balloon: no text of the sheet is it. */
  joined?: true
}

/**
 * Prepares the reading of tags on sheets. Any dash counts as a hyphen. A short designation of IEC 81346 (`-B12`) is
 * read in the function and the location that the sheet names (`=A1`, `+C2`), a loop tag in its balloon too. Sentences
 * of a note are not read.
 */
export function sheetReader(machine: Machine): (sheet: Sheet) => SheetMention[] {
  const devices = new Set(machine.devices.map(({ tag }) => tag.value))
  const signed = machine.file.designation === 'iec81346'
  const loops = isaLegendOf(machine.file.designation)
  const byLetters = new Map(loops ? [...devices, ...tagsAbsent(machine)].map((tag) => [tag.replaceAll('-', ''), tag] as const) : [])
  return (sheet) => {
    const around = signed ? contextsOf(sheet) : []
    const ofTexts = sheet.texts.flatMap((text): SheetMention[] => {
      if (devices.has(text.text)) return [{ is: 'known', written: text.text, text, tags: [text.text] }]
      const plain = plainCharacters(text.text)
      if (!/\d/.test(plain) || isSentence(plain)) return []
      return machine.readTags(plain).map(({ is, written, meant, tag, start, end }) => ({
        is,
        written,
        ...(meant === undefined ? {} : { meant }),
        text: start === 0 && end === plain.length ? text : partOf(text, written, (start + end) / 2 / plain.length),
        tags: is === 'known' ? meantBy(written, tag, around, devices) : [],
      }))
    })
    return loops ? [...ofTexts, ...inBalloons(sheet, loops, byLetters, devices)] : ofTexts
  }
}

/** Tags of devices that are not fitted to this unit, or whose row is broken. */
const tagsAbsent = ({ absent }: Machine) => [...absent.keys()].flatMap((name) => (name.startsWith('tag:') ? [name.slice(4)] : []))

/** The loop tags in the balloons of a sheet; a balloon whose letters are those of no loop tag is another symbol. */
function inBalloons(sheet: Sheet, legend: IsaLegend, byLetters: ReadonlyMap<string, string>, devices: ReadonlySet<string>): SheetMention[] {
  return balloonsOf(sheet.texts).flatMap((text): SheetMention[] => {
    const tag = byLetters.get(text.text.replaceAll('-', ''))
    if (tag !== undefined) return [{ is: 'known', written: tag, text: { ...text, text: tag }, tags: devices.has(tag) ? [tag] : [], joined: true }]
    return 'reason' in parseIsa51(text.text, legend) ? [] : [{ is: 'unknown', written: text.text, text, tags: [], joined: true }]
  })
}

/** Three small letters in a row are a word, and what holds words is a note or a title. */
const isSentence = (text: string) => /\p{Ll}{3}/u.test(text)

/** A part of a text, with its middle at a share of the text's length. */
function partOf(text: SheetText, written: string, share: number): SheetText {
  const radians = (text.angleDeg * Math.PI) / 180
  const along = (share - 0.5) * text.text.length * text.fontSize * 0.6
  return { ...text, text: written, x: text.x + along * Math.cos(radians), y: text.y + along * Math.sin(radians) }
}

/** The functions and locations that stand on the sheet by themselves, alone and in pairs. */
function contextsOf({ texts }: Sheet): string[] {
  const alone = [...new Set(texts.map(({ text }) => text))].filter((text) => {
    const parsed = parseIec81346(text)
    return !('reason' in parsed) && !parsed.terminal && parsed.aspects.every(({ prefix }) => prefix.startsWith('=') || prefix.startsWith('+'))
  })
  const [functions, locations] = [alone.filter((text) => /^=[^+]*$/.test(text)), alone.filter((text) => text.startsWith('+'))]
  return [...alone, ...functions.flatMap((its) => locations.map((location) => its + location))]
}

function meantBy(written: string, tag: string | undefined, around: readonly string[], devices: ReadonlySet<string>): string[] {
  const inContext = [...new Set(around.map((context) => resolveIec81346(written, context)))].filter((whole) => devices.has(whole))
  if (inContext.length > 0) return inContext
  // A device that is not fitted to this unit has no page.
  return tag !== undefined && devices.has(tag) ? [tag] : []
}

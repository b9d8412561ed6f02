import { type DesignationFault, misfit } from './designation-fault.ts'
import { type IsaLegend, parseIsa51 } from './isa51.ts'

/**
 * The one spelling of a name that check, suggestions and search compare: upper case, every dash the same, a
 * letter O after a digit or a separator read as a zero, no leading zeros, no separators beside letters. A
 * separator between two digits stays, in one form: `10-001` is not `100-01`.
 */
export function normalise(name: string): string {
  return name
    .normalize('NFKC')
    .toUpperCase()
    .normalize('NFKC')
    .replace(/\p{Cf}/gu, '')
    .replace(/[\p{Pd}\u2212]/gu, '-')
    .replace(/(?<=[\d\s_./-])O+(?![A-Z])/g, (letters) => '0'.repeat(letters.length))
    .replace(/(?<=\d)[\s_./-]+(?=\d)/g, '.')
    .replace(/[\s_/-]|\.(?!\d)|(?<!\d)\./g, '')
    .replace(/(?<![0-9])0+(?=\d)/g, '')
}

export type Designation = 'nfpa79' | 'iec81346' | 'isa51' | { isa51?: IsaLegend | undefined; pattern?: string | undefined }

/** What is wrong with a tag in the designation system of the machine; undefined when it fits or the system is a broken pattern. */
export function checkDesignation(tag: string, system: Designation): DesignationFault | undefined {
  if (system === 'nfpa79') return checkNfpa79(tag)
  if (system === 'iec81346') {
    const read = parseIec81346(tag)
    return 'reason' in read ? read : undefined
  }
  const legend = isaLegendOf(system)
  if (legend) {
    const read = parseIsa51(tag, legend)
    return 'reason' in read ? read : undefined
  }
  const form = ownPatternOf(system)
  if (form === undefined || form instanceof Error || form.test(tag)) return undefined
  return { offset: 0, reason: `it does not have the form \`${typeof system === 'object' ? system.pattern : ''}\`` }
}

/** The legend of a machine whose tags are loop tags; undefined where they are not. */
export function isaLegendOf(system: Designation): IsaLegend | undefined {
  if (system === 'isa51') return {}
  return typeof system === 'object' ? system.isa51 : undefined
}

/** The pattern of a machine with tags of its own, or why it is none; undefined in a system of a standard. */
export const ownPatternOf = (system: Designation) =>
  typeof system === 'object' && system.pattern !== undefined ? patternOf(system.pattern) : undefined

/** The pattern of a builder as a regular expression over the whole tag, or why it is none. */
export function patternOf(pattern: string): RegExp | Error {
  try {
    // Alone first: brackets that do not match could match with ours around them.
    new RegExp(pattern, 'u')
    return new RegExp(`^(?:${pattern})$`, 'u')
  } catch (error) {
    return error instanceof Error ? error : new Error(String(error))
  }
}

/** Letters and numbers of a tag: `LS` and 1203 of `1203LS` and of `LS1203`, `LS` and 12, 3 of `12LS3`. */
export interface Nfpa79Tag {
  letters: string
  /** Before the letters, then after them: the line of the diagram, or its sheet and the number on it. Which is for the builder to say. */
  numbers: string[]
  suffix?: string
}

export function parseNfpa79(tag: string): Nfpa79Tag | DesignationFault {
  const fault = checkNfpa79(tag)
  if (fault) return fault
  const [, before = '', letters = '', after = '', suffix = ''] = /^(\d*)([A-Z]+)-?(\d*)-?([A-Z0-9-]*)$/.exec(tag) ?? []
  return { letters, numbers: [before, after].filter((number) => number !== ''), ...(suffix === '' ? {} : { suffix }) }
}

/**
 * Letters and numbers in the manner of NFPA 79: `LS12`, `12LS`, `PE-210`, `MTR5A`, `1203LS-A`. Common practice:
 * `tag = [digits] LETTERS [digits [LETTERS]] { "-" letters or digits }`, with a number somewhere in it.
 */
function checkNfpa79(tag: string): DesignationFault | undefined {
  const [fitting] = /^\d*(?:[A-Z]+(?:\d+[A-Z]*)?(?:-[A-Z0-9]+)*)?/.exec(tag) ?? ['']
  if (fitting.length < tag.length) return misfit(tag, fitting.length)
  if (tag === '') return { offset: 0, reason: 'it is empty' }
  if (!/[A-Z]/.test(tag)) return { offset: tag.length, reason: 'it has no letters' }
  return /\d/.test(tag) ? undefined : { offset: tag.length, reason: 'it has no number' }
}

/** A designation of IEC 81346-1, cut at its aspects: `=W1+C2-A1.B12:4`. */
export interface IecDesignation {
  /** In the order written; the parts of one aspect from the whole to the part of it. */
  aspects: { prefix: string; parts: string[] }[]
  terminal?: string
}

/**
 * Reads a reference designation. An aspect begins with `=` (function), `+` (location), `-` (product) or `#`
 * (other), doubled for a second aspect of the same kind. Inside it `.` or the same prefix again goes one level
 * down: `-A1-B2` and `-A1.B2` are the same. `:` begins the terminal. Source: IEC 81346-1.
 */
export function parseIec81346(tag: string): IecDesignation | DesignationFault {
  const aspects: IecDesignation['aspects'] = []
  const step = /(==?|\+\+?|--?|#|\.)([A-Z]+\d*|\d+)/y
  let offset = 0
  for (let match = step.exec(tag); match; match = step.exec(tag)) {
    const [, sign = '', part = ''] = match
    const last = aspects.at(-1)
    if (sign === '.' && !last) break
    if (last && (sign === '.' || sign === last.prefix)) last.parts.push(part)
    else aspects.push({ prefix: sign, parts: [part] })
    offset = step.lastIndex
  }
  if (aspects.length === 0)
    return /^[=+#-]/.test(tag) ? misfit(tag, afterSigns(tag, 0)) : { offset: 0, reason: 'it does not begin with `=`, `+` or `-`' }
  if (offset === tag.length) return { aspects }
  if (tag[offset] !== ':') return misfit(tag, afterSigns(tag, offset))
  const [terminal = ''] = /^[A-Za-z0-9.+-]*/.exec(tag.slice(offset + 1)) ?? []
  const end = offset + 1 + terminal.length
  return terminal !== '' && end === tag.length ? { aspects, terminal } : misfit(tag, end)
}

/**
 * A designation in the context that it is written in: `-B12` on a page about `=W1+C2` is `=W1+C2-B12`. What
 * the context says of an aspect holds unless the tag says it itself. A text that is no designation stays.
 */
export function resolveIec81346(written: string, context: string): string {
  const own = parseIec81346(written)
  const around = parseIec81346(context)
  if ('reason' in own || 'reason' in around) return written
  const kinds = new Set(own.aspects.map(({ prefix }) => prefix[0]))
  const inherited = around.aspects.filter(({ prefix }) => !kinds.has(prefix[0]))
  return inherited.map(({ prefix, parts }) => prefix + parts.join('.')).join('') + written
}

/** A sign that begins a part is right; what follows it is not. */
function afterSigns(tag: string, offset: number): number {
  return offset + (/^(==?|\+\+?|--?|#|\.)?/.exec(tag.slice(offset))?.[0].length ?? 0)
}

/**
 * The one spelling of a name that check and suggestions compare: upper case, a letter O after a digit or a
 * separator read as a zero, no leading zeros, no separators beside letters. A separator between two digits
 * stays, in one form: `10-001` is not `100-01`.
 */
export function normalise(name: string): string {
  return name
    .toUpperCase()
    .replace(/(?<=[\d\s_./-])O(?![A-Z])/g, '0')
    .replace(/(?<=\d)[\s_./-]+(?=\d)/g, '.')
    .replace(/[\s_/-]/g, '')
    .replace(/(?<![0-9])0+(?=\d)/g, '')
}

export type Designation = 'nfpa79' | 'iec81346' | { pattern: string }

/** What is wrong with a tag under a grammar, and where in it; undefined when it fits. */
export interface DesignationFault {
  /** Offset in the tag, in UTF-16 units. */
  offset: number
  reason: string
}

/** Checks a tag against the designation system of the machine. */
export function checkDesignation(tag: string, system: Designation): DesignationFault | undefined {
  if (system === 'nfpa79') return checkNfpa79(tag)
  if (system === 'iec81346') return checkIec81346(tag)
  return new RegExp(`^(?:${system.pattern})$`, 'u').test(tag) ? undefined : { offset: 0, reason: `it does not have the form \`${system.pattern}\`` }
}

/**
 * Letters and numbers in the manner of NFPA 79: `LS12`, `12LS`, `PE-210`, `1203LS-A`.
 * `tag = [digits] LETTERS ["-"] [digits] ["-" suffix]`, with digits before or after the letters. Common practice.
 */
function checkNfpa79(tag: string): DesignationFault | undefined {
  const match = /^(\d*)([A-Z]+)(-?)(\d*)(-[A-Z0-9]+)?/.exec(tag)
  if (!match) return { offset: 0, reason: 'it begins with neither letters nor a number and letters' }
  if (match[0].length < tag.length) return { offset: match[0].length, reason: `\`${tag[match[0].length]}\` cannot stand there` }
  if (match[1] === '' && match[4] === '') return { offset: tag.length, reason: 'it has no number' }
  return undefined
}

/** A designation of IEC 81346-1, cut at its aspects: `=W1+C2-B12:4`. */
export interface IecDesignation {
  aspects: { prefix: string; parts: string[] }[]
  terminal?: string
}

/**
 * Reads a reference designation. Aspects begin with `=` (function), `+` (location) or `-` (product), doubled
 * for a second aspect of the same kind; `.` stands for a repeated prefix; `:` begins the terminal.
 * Source: IEC 81346-1.
 */
export function parseIec81346(tag: string): IecDesignation | DesignationFault {
  const [main = '', ...rest] = tag.split(':')
  const terminal = rest.length > 0 ? rest.join(':') : undefined
  if (terminal !== undefined && !/^[A-Za-z0-9.+-]+$/.test(terminal))
    return { offset: main.length + 1, reason: 'the terminal after `:` takes letters, digits, `.`, `+` and `-`' }
  const aspects: IecDesignation['aspects'] = []
  const aspect = /(==?|\+\+?|--?)([A-Z]+\d*|\d+)((?:\.(?:[A-Z]+\d*|\d+))*)/y
  let offset = 0
  while (offset < main.length) {
    aspect.lastIndex = offset
    const match = aspect.exec(main)
    if (!match)
      return { offset, reason: offset === 0 ? 'it does not begin with `=`, `+` or `-`' : `\`${main.slice(offset)}\` is no part of a designation` }
    const [whole, prefix = '', first = '', others = ''] = match
    aspects.push({ prefix, parts: [first, ...others.split('.').filter(Boolean)] })
    offset += whole.length
  }
  if (aspects.length === 0) return { offset: 0, reason: 'it is empty' }
  return { aspects, ...(terminal === undefined ? {} : { terminal }) }
}

function checkIec81346(tag: string): DesignationFault | undefined {
  const read = parseIec81346(tag)
  return 'reason' in read ? read : undefined
}

/** A relative designation written in the context of another: `-B12` on a page about `=W1+C2` is `=W1+C2-B12`. */
export function resolveIec81346(written: string, context: string): string {
  const own = parseIec81346(written)
  const around = parseIec81346(context)
  if ('reason' in own || 'reason' in around) return written
  const kinds = new Set(own.aspects.map(({ prefix }) => prefix[0]))
  const inherited = around.aspects.filter(({ prefix }) => !kinds.has(prefix[0]))
  const text = (list: IecDesignation['aspects']) => list.map(({ prefix, parts }) => prefix + parts.join('.')).join('')
  return text(inherited) + written
}

import { type DesignationFault, misfit } from './designation-fault.ts'
import { ends, functions, type IsaMeaning, modifiers, ownFirst, ownSucceeding, variables } from './isa51-letters.ts'
import type { WordsInput } from './schema/common.ts'

/** What a machine says of its letters: those that the standard leaves open, and those of things that are no instruments. */
export interface IsaLegend {
  first?: Readonly<Record<string, WordsInput | undefined>> | undefined
  succeeding?: Readonly<Record<string, WordsInput | undefined>> | undefined
  /** Letters of motors, pumps, disconnects: `M-201`. */
  equipment?: Readonly<Record<string, WordsInput>> | undefined
}

/** A letter, or a group of them, with what it stands for: by name, or in the words of the machine. */
export interface IsaLetter {
  letters: string
  means: IsaMeaning | { own: WordsInput }
}

export interface IsaTag {
  /** Number of a unit or an area before the letters. */
  unit?: string
  letters: IsaLetter[]
  loop: string
  suffix?: string
}

/**
 * Reads a loop tag: `PDSHH-1204A` is pressure, differential, switch, high-high, loop 1204, suffix A. Common practice:
 * `[unit] LETTERS [-] loop [suffix]`. Letters are those of ANSI/ISA-5.1 and of the machine's own legend.
 */
export function parseIsa51(tag: string, legend: IsaLegend = {}): IsaTag | DesignationFault {
  const [fitting] = /^(?:\d+-?)?(?:[A-Z]+(?:-?\d+(?:[A-Z]+(?![A-Z]))?(?:-[A-Z0-9]+)?)?)?/.exec(tag) ?? ['']
  const [, unit = '', letters = '', loop = '', suffix = ''] = /^(?:(\d+)-?)?([A-Z]*)-?(\d*)([A-Z]*(?:-[A-Z0-9]+)?)$/.exec(fitting) ?? []
  if (tag === '') return { offset: 0, reason: 'it is empty' }
  if (letters === '' && fitting.length === tag.length) return { offset: tag.length, reason: 'it has no letters' }
  if (loop === '' && /^-?$/.test(tag.slice(fitting.length))) return { offset: tag.length, reason: 'it has no loop number' }
  if (fitting.length < tag.length) return misfit(tag, fitting.length)
  const equipment = legend.equipment?.[letters]
  const read = equipment === undefined ? readLetters(letters, legend) : [{ letters, means: { own: equipment } }]
  if ('reason' in read) return { ...read, offset: tag.indexOf(letters) + read.offset }
  return { ...(unit === '' ? {} : { unit }), letters: read, loop, ...(suffix === '' ? {} : { suffix: suffix.replace(/^-/, '') }) }
}

const legendHelp = 'write under `designation: { isa51: … }` in machine.yaml what the letters stand for, or correct the tag'

function readLetters(written: string, legend: IsaLegend): IsaLetter[] | DesignationFault {
  const first = written.charAt(0)
  const variable = meaningOf(first, variables, legend.first)
  if (!variable) {
    const open = ownFirst.some((it) => it === first)
    return { offset: 0, reason: `\`${first}\` ${open ? 'is left to the builder' : 'stands for nothing in first place'}`, help: legendHelp }
  }
  const read = [variable]
  const modifier = modifierAt(written)
  if (modifier) read.push(modifier)
  const start = read.length
  for (let at = start; at < written.length; at += read.at(-1)?.letters.length ?? 1) {
    const next = endAt(written, at, read.at(-1), at > start) ?? functionAt(written, at, legend)
    if ('reason' in next) return next
    read.push(next)
  }
  if (read.length > start) return read
  return { offset: written.length, reason: `no letter after \`${written}\` says what it does`, help: legendHelp }
}

function meaningOf(
  letter: string,
  known: Readonly<Record<string, IsaMeaning>>,
  own: Readonly<Record<string, WordsInput | undefined>> | undefined,
): IsaLetter | undefined {
  const words = own?.[letter]
  if (words !== undefined) return { letters: letter, means: { own: words } }
  const means = known[letter]
  return means === undefined ? undefined : { letters: letter, means }
}

/** The second letter where it modifies the first: `D` and `F` always, the others where a function follows that takes it. */
function modifierAt(written: string): IsaLetter | undefined {
  const [first, letter, next] = [written.charAt(0), written.charAt(1), written.charAt(2)]
  const is = (means: IsaMeaning) => ({ letters: letter, means })
  if (letter === 'D' || letter === 'F') return is(modifiers[letter])
  if (next === '') return undefined
  if (letter === 'K' || letter === 'Q') return is(modifiers[letter])
  // Relief valves, bursting discs and fuses: `PSV`, `PSE`. Before anything else it is a switch.
  if (letter === 'S') return /[EV]/.test(next) ? is('safety') : undefined
  if ((letter === 'X' || letter === 'Y' || letter === 'Z') && /[VWZ]/.test(first)) return is(modifiers[letter])
  return letter === 'Z' ? is('safety-instrumented') : undefined
}

/** The end at which an alarm, a switch or a light acts: `HH` of `PSHH`, `O` of `ZSO`. */
function endAt(written: string, at: number, before: IsaLetter | undefined, follows: boolean): IsaLetter | undefined {
  const [letters = ''] = /^(?:H{1,3}|L{1,3}|[MOCD])/.exec(written.slice(at)) ?? []
  const means = (ends as Readonly<Record<string, IsaMeaning>>)[letters]
  if (!follows || means === undefined || !before) return undefined
  const isEnd = Object.values<unknown>(ends).includes(before.means)
  const acts = isEnd || before.means === 'alarm' || before.means === 'switch'
  const shows = before.means === 'indicate' || before.means === 'light'
  const onOff = /^[HXYZ]/.test(written)
  if (letters === 'C') return onOff && (acts || before.means === 'light') ? { letters, means } : undefined
  if (letters === 'O') return acts || shows ? { letters, means } : undefined
  if (letters.startsWith('H')) return acts || shows || before.means === 'compute' ? { letters, means } : undefined
  return acts ? { letters, means } : undefined
}

function functionAt(written: string, at: number, legend: IsaLegend): IsaLetter | DesignationFault {
  const letter = written.charAt(at)
  const read = meaningOf(letter, functions, legend.succeeding)
  // An orifice measures or restricts a flow: `FO`. In `SOV` the letters are no letters of the standard.
  if (read && !(read.means === 'orifice' && !(written.startsWith('F') && at === 1))) return read
  const open = ownSucceeding.some((it) => it === letter)
  const before = written.slice(0, at)
  return { offset: at, reason: open ? `\`${letter}\` is left to the builder` : `\`${letter}\` cannot stand after \`${before}\``, help: legendHelp }
}

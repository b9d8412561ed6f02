import { checkDesignation, type Designation, parseNfpa79 } from '../model/designation.ts'
import { kindOfLetters } from './kind-of-letters.ts'

/**
 * The grammar that nearly all tags have; any text where none has. Letters and numbers fit two systems: they are loop
 * tags where most letters are those of ANSI/ISA-5.1 and unknown in the manner of NFPA 79.
 */
export function guessDesignation(tags: readonly string[]): Designation {
  const thatFit = (system: Designation) => tags.filter((tag) => checkDesignation(tag, system) === undefined)
  const nearlyAll = (system: Designation) => thatFit(system).length >= 0.9 * tags.length
  if (tags.length > 0 && tags.every((tag) => /^[=+-]/.test(tag)) && nearlyAll('iec81346')) return 'iec81346'
  const loops = thatFit('isa51')
  const foreign = loops.filter((tag) => kindOfLetters(tag) === undefined)
  if (loops.length > 0.5 * tags.length && foreign.length > 0.5 * loops.length) {
    const equipment = equipmentOf(tags.filter((tag) => !loops.includes(tag)))
    const system: Designation = Object.keys(equipment).length === 0 ? 'isa51' : { isa51: { equipment } }
    if (nearlyAll(system)) return system
  }
  return nearlyAll('nfpa79') ? 'nfpa79' : { pattern: '.+' }
}

/** Letters of things that are no instruments, in the order of the list. */
function equipmentOf(tags: readonly string[]): Record<string, string> {
  const found: Record<string, string> = {}
  for (const tag of tags) {
    const read = parseNfpa79(tag)
    if (!('reason' in read)) found[read.letters] = kindOfLetters(tag) ?? 'to be named'
  }
  return found
}

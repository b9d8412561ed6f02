import { checkDesignation, type Designation, ownPatternOf } from '../../model/designation.ts'
import { partOf } from '../../source/place.ts'
import type { Rule } from '../rule.ts'

export const tagGrammar: Rule = {
  id: 'tag-grammar',
  severity: 'error',
  summary: 'A tag does not follow the designation system of the machine.',
  why: 'A tag that breaks the system is not recognised on drawings and in search.',
  source: 'NFPA 79, IEC 81346-1 or ANSI/ISA-5.1, as machine.yaml chooses',

  *check({ devices, file, placeOf }) {
    const system = file.designation
    const broken = ownPatternOf(system)
    if (broken instanceof Error) {
      yield {
        message: 'the pattern of the tags is no regular expression',
        place: placeOf(['designation', 'pattern']),
        note: `${broken.message.replace(/^.*: /, '').toLowerCase()}; no tag was checked`,
      }
      return
    }
    const faults = devices.flatMap(({ tag }) => {
      const fault = checkDesignation(tag.value, system)
      return fault ? [{ tag, ...fault }] : []
    })
    const [first] = faults
    // Where no tag fits, the choice of the system is the one cause.
    if (first && faults.length > 1 && faults.length === devices.length) {
      yield {
        message: `no tag follows ${nameOf(system)}`,
        place: placeOf(['designation']),
        related: [{ label: `\`${first.tag.value}\`: ${first.reason}`, place: first.tag.place }],
        help: 'choose the system of the device list: `nfpa79`, `iec81346`, `isa51`, or a pattern of your own',
      }
      return
    }
    for (const { tag, offset, reason, help } of faults) {
      yield {
        message: `\`${tag.value}\` is no tag: ${reason}`,
        place: partOf(tag.place, Math.min(offset, tag.value.length), tag.value.length),
        note: `machine.yaml chooses ${nameOf(system)} for the tags`,
        ...(help ? { help } : {}),
      }
    }
  },
}

function nameOf(system: Designation): string {
  if (system === 'nfpa79') return 'letters and numbers in the manner of NFPA 79'
  if (system === 'iec81346') return 'IEC 81346'
  return typeof system === 'object' && system.pattern !== undefined ? `the pattern \`${system.pattern}\`` : 'ANSI/ISA-5.1'
}

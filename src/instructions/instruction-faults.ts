import { legalBasis, onlineUntilAtLeast } from './legal-basis.ts'

/** How the instructions of a machine are given with it. Days as `2027-01-20`. */
export interface Instructions {
  placedOnMarket: string
  expectedLifeYears: number
  form: 'digital' | 'paper'
  digital:
    | {
        onlineUntil: string
        /** Where the machine's papers or the machine tell how to reach them. */
        accessOn: readonly string[]
        /** They can be printed, downloaded and saved. */
        canBeSaved: boolean
      }
    | undefined
  /** A paper copy for who asks for it when buying. */
  paper: { isFree: boolean; withinDays: number } | undefined
  /** Languages whose version the builder has verified. */
  original: readonly string[]
  /** Languages in which they are given. */
  languages: readonly string[]
  chapters: readonly Chapter[]
}

/** Chapters that a manual must have and that no list of the machine stands for. Source: annex I or III, 1.7.4.2 (g), (h), (l), (m). */
export const chapters = ['intendedUse', 'misuse', 'residualRisks', 'protectiveEquipment'] as const
export type Chapter = (typeof chapters)[number]

export interface InstructionFault {
  /** What is wrong, in words. */
  message: string
  /** The key of the block that it is about: `digital.onlineUntil`. */
  key: string
  clause: string
  help: string
}

const chapterNames: Readonly<Record<Chapter, readonly [name: string, letter: string]>> = {
  intendedUse: ['the intended use', 'g'],
  misuse: ['ways in which the machine must not be used', 'h'],
  residualRisks: ['the residual risks', 'l'],
  protectiveEquipment: ['protective measures of the user and protective equipment', 'm'],
}

/** A month has so many days at least. */
const daysOfMonth = 28

/**
 * What is wrong with the way in which instructions are given. Under the Directive nothing is said about digital ones,
 * which it does not know. Source: Regulation (EU) 2023/1230, Article 10(7); Directive 2006/42/EC, annex I, 1.7.4.
 */
export function instructionFaults(it: Instructions): InstructionFault[] {
  const law = legalBasis(it.placedOnMarket)
  const contents = `${law}, annex ${law === 'Directive 2006/42/EC' ? 'I' : 'III'}, 1.7.4.2`
  const missing = chapters
    .filter((chapter) => !it.chapters.includes(chapter))
    .map((chapter): InstructionFault => {
      const [name, letter] = chapterNames[chapter]
      return {
        message: `no chapter is named that tells ${name}`,
        key: 'chapters',
        clause: `${contents}(${letter})`,
        help: `name its page under \`${chapter}\``,
      }
    })
  return [...(law === 'Directive 2006/42/EC' ? unmarked(it) : digitalFaults(it)), ...missing]
}

/** Each version is the original or a translation of it, and says which. */
function unmarked({ original, languages }: Instructions): InstructionFault[] {
  if (languages.length < 2 || original.some((language) => languages.includes(language))) return []
  return [
    {
      message: `nothing tells which of ${languages.map((language) => `\`${language}\``).join(', ')} is the original`,
      key: 'original',
      clause: 'Directive 2006/42/EC, annex I, 1.7.4.1: the others say "Translation of the original instructions"',
      help: 'name under `original` each language whose version the builder has verified',
    },
  ]
}

function digitalFaults({ form, digital, paper, placedOnMarket, expectedLifeYears }: Instructions): InstructionFault[] {
  if (form === 'paper') return []
  const clause = (letter: string) => `Regulation (EU) 2023/1230, Article 10(7)${letter}`
  const least = onlineUntilAtLeast(placedOnMarket, expectedLifeYears)
  const faults: (InstructionFault | undefined)[] = [
    digital === undefined
      ? {
          message: 'nothing tells how the digital manual is given',
          key: 'form',
          clause: clause('(a) to (c)'),
          help: 'write `digital`, or `form: paper`',
        }
      : undefined,
    digital && digital.onlineUntil < least
      ? {
          message: `the digital manual is online until ${digital.onlineUntil}, and must be until ${least} at least`,
          key: 'digital.onlineUntil',
          clause: `${clause('(c)')}: the expected life of the machine, and ten years at least`,
          help: 'keep it online longer, and write the new day',
        }
      : undefined,
    digital && digital.accessOn.length === 0
      ? {
          message: 'nothing on the machine, its packaging or its papers tells how to reach the digital manual',
          key: 'digital.accessOn',
          clause: clause('(a)'),
          help: 'put the address on the machine or, where that cannot be, on packaging or papers, and write which under `accessOn`',
        }
      : undefined,
    digital && !digital.canBeSaved
      ? {
          message: 'the digital manual cannot be printed, downloaded and saved',
          key: 'digital.canBeSaved',
          clause: `${clause('(b)')}: it must be at hand when the machine has broken down`,
          help: 'offer the built site as a file to download, and write `canBeSaved: true`',
        }
      : undefined,
    paper === undefined
      ? {
          message: 'no paper copy is promised',
          key: 'form',
          clause: clause(', third subparagraph'),
          help: 'write `paper`: who asks for it when buying gets it free and within a month',
        }
      : undefined,
    paper && !paper.isFree
      ? {
          message: 'the paper copy is not free',
          key: 'paper.isFree',
          clause: clause(', third subparagraph'),
          help: 'give it free to who asks for it when buying',
        }
      : undefined,
    paper && paper.withinDays > daysOfMonth
      ? {
          message: `the paper copy comes within ${paper.withinDays} days, and must within a month`,
          key: 'paper.withinDays',
          clause: clause(', third subparagraph'),
          help: `a month has ${daysOfMonth} days at least: write so many or fewer`,
        }
      : undefined,
  ]
  return faults.filter((fault) => fault !== undefined)
}

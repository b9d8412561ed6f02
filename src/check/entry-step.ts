import type { Nodes } from 'mdast'
import type { PageText } from '../model/machine.ts'
import type { Place } from '../source/place.ts'

/**
 * Sentences that begin with going behind a guard. They are certain and few: a door with an interlock is left
 * out, for work through it may be routine.
 */
const entering: Readonly<Record<string, RegExp>> = {
  en: /(?<=^|[.!?:]\s+)(?:Reach (?:in|into|inside)\b|(?:Remove|Take off|Unscrew|Unbolt|Lift off|Open) (?:the|both|all|its|each) (?:(?!from|of|on|at|in|with|to|and)\p{L}+ ){0,2}(?:guards?(?! doors?\b)|cabinet|terminal box|junction box)\b)/u,
  es: /(?<=^|[.!?:]\s+)(?:Meta la mano|(?:Quite|Retire|Desmonte|Abra) (?:el|la|los|las) (?:resguardos?|armario|caja de bornes)\b)/u,
}

/** Where the first step stands that goes behind a guard; undefined where none does, or no words of the language are known. */
export function entryStep(text: PageText, language: string): Place | undefined {
  const pattern = entering[language]
  return pattern && firstInSteps(text, pattern)
}

/** Stands in the words of a step for an element without words of its own, such as a tag. */
export const thing = '\ufffc'

/** The first words in the steps of a page that a pattern fits, or the text they stand in where it is written otherwise. */
export function firstInSteps({ elements, source }: PageText, pattern: RegExp): Place | undefined {
  for (const run of elements('Step').flatMap(runsOf)) {
    const match = pattern.exec(run.map(({ words }) => words).join(''))
    if (!match) continue
    const [first, last] = [pieceAt(run, match.index), pieceAt(run, match.index + match[0].length - 1)]
    if (!first || !last) continue
    const [start, end] = [first.offset + first.within, last.words === thing ? last.end : last.offset + last.within + 1]
    const isWritten =
      isAt(source.text, first, first.within, first.offset === last.offset ? last.within + 1 : undefined) &&
      (first.offset === last.offset || isAt(source.text, last, 0, last.within + 1))
    return isWritten ? source.place(start, end) : source.place(first.offset, last.end)
  }
  return undefined
}

/** Words of a step that follow each other in one block. */
interface Piece {
  words: string
  /** Where its node begins and ends in the file. */
  offset: number
  end: number
}

/** The piece with a character of its run, and the place of the character in it. */
function pieceAt(run: readonly Piece[], index: number): (Piece & { within: number }) | undefined {
  let before = 0
  for (const piece of run) {
    const within = index - before
    if (within < piece.words.length) return { ...piece, within }
    before += piece.words.length
  }
  return undefined
}

/** Whether a part of a piece is written in the file as it is read: an escaped sign and a broken line are not. */
function isAt(text: string, { words, offset }: Piece, from: number, to: number | undefined): boolean {
  return words === thing || text.startsWith(words.slice(from, to), offset + from)
}

/** The words below a node, a run for each block. */
function runsOf(node: Nodes): Piece[][] {
  const runs: Piece[][] = [[]]
  const walk = (at: Nodes) => {
    const piece = (words: string) => runs.at(-1)?.push({ words, offset: at.position?.start.offset ?? 0, end: at.position?.end.offset ?? 0 })
    if (at.type === 'text') piece(at.value)
    else if ('children' in at && at.children.length > 0) {
      const isBlock = at.type !== 'mdxJsxTextElement' && !inline.has(at.type)
      if (isBlock) runs.push([])
      at.children.forEach(walk)
      if (isBlock) runs.push([])
    } else piece(thing)
  }
  walk(node)
  return runs.filter((run) => run.length > 0)
}

const inline = new Set<Nodes['type']>(['emphasis', 'strong', 'delete', 'link', 'linkReference'])

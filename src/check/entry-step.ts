import type { Nodes } from 'mdast'
import type { PageText } from '../model/machine.ts'
import { elementsOf } from '../model/mdx-elements.ts'
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

/** The first words in the steps of a page that a pattern fits, or the text they stand in where it is written otherwise. */
export function firstInSteps({ body, source }: PageText, pattern: RegExp): Place | undefined {
  for (const node of elementsOf(body, 'Step').flatMap(textNodes)) {
    const match = pattern.exec(node.value)
    const start = node.position?.start.offset
    if (!match || start === undefined) continue
    const written = source.text.startsWith(match[0], start + match.index)
    return written
      ? source.place(start + match.index, start + match.index + match[0].length)
      : source.place(start, node.position?.end.offset ?? start)
  }
  return undefined
}

function textNodes(node: Nodes): Extract<Nodes, { type: 'text' }>[] {
  if (node.type === 'text') return [node]
  return 'children' in node ? node.children.flatMap(textNodes) : []
}

import { type Command, commandAt, englishCommands } from './english-command.ts'
import { mainLanguage, type SentenceView, type Word } from './sentence-view.ts'
import { spanishCommandAt, spanishCommands } from './spanish-command.ts'

export interface CommandReader {
  /** The first order of each part of the sentence. */
  commands: (words: readonly Word[]) => Command[]
  /** An order whose words begin at an index. */
  at: (words: readonly Word[], index: number) => Command | undefined
}

const readers: Partial<Record<string, CommandReader>> = {
  en: { commands: englishCommands, at: commandAt },
  es: { commands: spanishCommands, at: spanishCommandAt },
}

/** What can tell an order in the language; nothing for the others. */
export const commandReader = (language: string): CommandReader | undefined => readers[mainLanguage(language)]

const read = new WeakMap<SentenceView, readonly Command[]>()

/** The orders of a sentence, found once; none in a language that is not read for orders. */
export function commandsOf(view: SentenceView): readonly Command[] {
  const known = read.get(view)
  if (known) return known
  const commands = commandReader(view.language)?.commands(view.words) ?? []
  read.set(view, commands)
  return commands
}

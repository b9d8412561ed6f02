import { type Command, commandAt, englishCommands } from './english-command.ts'
import type { Word } from './sentence-view.ts'
import { spanishCommandAt, spanishCommands } from './spanish-command.ts'

export type { Command }

interface CommandReader {
  /** The first order of each part of the sentence. */
  commands: (words: readonly Word[]) => Command[]
  /** An order whose words begin at an index. */
  at: (words: readonly Word[], index: number) => Command | undefined
}

const readers: Partial<Record<string, CommandReader>> = {
  en: { commands: englishCommands, at: commandAt },
  es: { commands: spanishCommands, at: spanishCommandAt },
}

/** What can tell an order in a main language (`es`, not `es-MX`); nothing for the others. */
export const commandReader = (language: string): CommandReader | undefined => readers[language]

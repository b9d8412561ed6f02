import type { Machine } from '../model/machine.ts'
import type { ReadPage, ReadText } from '../model/prose/read-text.ts'
import { readerOf } from '../model/reading-limit.ts'
import type { Reader } from '../model/schema/common.ts'
import type { PlainFinding } from '../reading/plain/finding.ts'
import { machineWordsOf } from '../reading/plain/noun-cluster.ts'
import { plainFindings } from '../reading/plain/plain-findings.ts'
import { termReader } from '../reading/plain/replaced-terms.ts'
import { unexpanded } from '../reading/plain/unexpanded.ts'
import { commonAbbreviations } from '../reading/plain/words/common-abbreviations.ts'
import { remembered } from '../source/once.ts'
import type { Place } from '../source/place.ts'
import { perMachine } from './per-machine.ts'
import { messagesRead, pagesRead } from './read-texts.ts'

/** Something about the wording of a sentence, and where it stands. */
export interface WordingFinding extends PlainFinding {
  place: Place
}

/** Everything that is found about the wording of what readers are given to read. */
export const wordingOf = perMachine((machine: Machine): readonly WordingFinding[] => {
  const readerIn = remembered((language: string) => wordingReader(machine, language))
  return [...pagesRead(machine), ...messagesRead(machine)].flatMap((text) => readerIn(text.language)(text))
})

function wordingReader({ terms, parts, devices }: Machine, language: string): (text: ReadText & Partial<Pick<ReadPage, 'page'>>) => WordingFinding[] {
  const glossary = terms.flatMap(({ byLanguage }) => byLanguage[language] ?? [])
  const replaced = termReader(glossary)
  const described = [...parts, ...devices].flatMap(({ description }) => description?.[language]?.value ?? [])
  const names = machineWordsOf([...glossary.flatMap(({ term, synonyms }) => [term, ...synonyms]), ...described])
  const explained = glossary.flatMap(({ term, synonyms }) => [term, ...synonyms]).map((name) => name.replaceAll('.', ''))
  const knownTo = remembered((reader: Reader) => new Set([...commonAbbreviations[reader], ...explained]))
  return ({ page, blocks }) => {
    const reader = page ? readerOf(page) : 'operator'
    const found = blocks.flatMap(({ block, sentences }) =>
      [...plainFindings(sentences, block, language, names), ...replaced(block.text)].map((finding) => ({ block, finding })),
    )
    const short = unexpanded(blocks, knownTo(reader))
    return [...found, ...short].map(({ block, finding }) => ({ ...finding, place: block.place(finding.start, finding.end) }))
  }
}

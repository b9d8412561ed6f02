import type { Machine } from '../model/machine.ts'
import { type ReadText, readPages } from '../model/prose/read-text.ts'
import { readerOf } from '../model/reading-limit.ts'
import type { Reader } from '../model/schema/common.ts'
import type { PlainFinding } from '../reading/plain/finding.ts'
import { machineWordsOf } from '../reading/plain/noun-cluster.ts'
import { plainFindings } from '../reading/plain/plain-findings.ts'
import { termReader } from '../reading/plain/replaced-terms.ts'
import { unexpanded } from '../reading/plain/unexpanded.ts'
import { commonAbbreviations } from '../reading/plain/words/common-abbreviations.ts'
import { remembered, rememberedOfTwo } from '../source/once.ts'
import type { Place } from '../source/place.ts'
import { messagesRead } from './read-texts.ts'

/** Something about the wording of a sentence, and where it stands. */
export interface WordingFinding extends PlainFinding {
  place: Place
}

/** What a machine calls its things in a language: names of several words are one, and what the glossary explains needs no words beside it. */
export interface OwnNames {
  terms: readonly { term: string; synonyms: readonly string[]; instead: readonly string[] }[]
  descriptions: readonly string[]
}

/** Everything that is found about the wording of what readers are given to read. */
export function wordingOf(machine: Machine): readonly WordingFinding[] {
  const readerIn = readersWith(machine.terms, machine.described)
  return [
    ...readPages(machine).flatMap((read) => readerIn(read.language)(read, readerOf(read.page))),
    ...messagesRead(machine).flatMap((read) => readerIn(read.language)(read, 'operator')),
  ]
}

const readersWith = rememberedOfTwo((terms: Machine['terms'], described: Machine['described']) =>
  remembered((language: string) => wordingReader(namesIn({ terms, described }, language), language)),
)

function namesIn({ terms, described }: Pick<Machine, 'terms' | 'described'>, language: string): OwnNames {
  return {
    terms: terms.flatMap(({ byLanguage }) => byLanguage[language] ?? []),
    descriptions: described[language] ?? [],
  }
}

/** What was found in a block's sentences, for the names that were known then: most pages stay as they are from one check to the next. */
const found = new WeakMap<ReadText['blocks'], { reader: Reader; names: string; findings: readonly WordingFinding[] }>()

export function wordingReader(own: OwnNames, language: string): (text: ReadText, reader: Reader) => readonly WordingFinding[] {
  const replaced = termReader(own.terms)
  const called = own.terms.flatMap(({ term, synonyms }) => [term, ...synonyms])
  const names = machineWordsOf([...called, ...own.descriptions])
  const explained = called.map((name) => name.replaceAll('.', ''))
  const knownTo = remembered((reader: Reader) => new Set([...commonAbbreviations[reader], ...explained]))
  const asked = JSON.stringify(own)
  return ({ blocks }, reader) => {
    const before = found.get(blocks)
    // One string for all texts: as long as all names together, it would fill the memory if each text had its own.
    if (before?.reader === reader && before.names === asked) return before.findings
    const hard = blocks.flatMap(({ block, sentences }) =>
      [...plainFindings(sentences, block, language, names), ...replaced(block.text)].map((finding) => ({ block, finding })),
    )
    const findings = [...hard, ...unexpanded(blocks, knownTo(reader))].map(({ block, finding }) => ({
      ...finding,
      place: block.place(finding.start, finding.end),
    }))
    found.set(blocks, { reader, names: asked, findings })
    return findings
  }
}

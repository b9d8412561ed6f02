import { readFileSync } from 'node:fs'
import { split as splitterSentences } from 'sentence-splitter'
import { syllable } from 'syllable'
import type { Block } from '../../../src/reading/block.ts'
import { countedSentences, countsOf, sentenceCounter } from '../../../src/reading/counts.ts'
import { fleschKincaidGrade } from '../../../src/reading/formulas/english.ts'
import type { FormulaCounts } from '../../../src/reading/formulas/formula.ts'
import { ordinaryWords } from '../../../src/reading/make/english-exceptions.ts'
import { findExceptions, type Gold } from '../../../src/reading/make/find-exceptions.ts'
import { dictionaryCounts } from '../../../src/reading/make/word-lists.ts'
import { sentencesOf } from '../../../src/reading/sentences.ts'
import { countWith } from '../../../src/reading/syllables/english.ts'
import { syllablesOf } from '../../../src/reading/syllables/syllables-of.ts'

type CountWord = (word: string) => number

const linesOf = (name: string) => readFileSync(`tests/fixtures/reading/${name}`, 'utf8').trim().split('\n')

/** Syllables and sentences beside libraries of the registry, and what counting costs. */
export function measureReading(): string {
  return [...syllableTable(), '', ...sentenceTable(), '', ...gradeLines(), '', ...costLines(), ''].join('\n')
}

function syllableTable(): string[] {
  const dictionary = dictionaryCounts()
  const ordinary = ordinaryWords()
  const handCounts = new Map(
    linesOf('hand-counts.tsv').map((line) => [line.split('\t')[0] ?? '', (line.split('\t')[1] ?? '').split('|').map(Number)]),
  )
  const technical = new Map(linesOf('technical-words.txt').map((word) => [word, dictionary.get(word) ?? handCounts.get(word) ?? []]))
  const others = new Map([...dictionary].filter(([word]) => !ordinary.has(word) && !technical.has(word)))
  const counters: [string, CountWord][] = [
    ['ours', (word) => syllablesOf(word, 'en') ?? 0],
    ['ours, rules alone', (word) => countWith(new Map(), word)],
    ['syllable 5.0.1', syllable],
  ]
  const row = ([name, count]: [string, CountWord], unseen: string) =>
    `| ${name} | ${share(technical, count)} | ${share(ordinary, count)} | ${unseen} | ${share(others, count)} | ${perSecond([...technical.keys()], count)} |`
  return [
    `Syllables right, any accepted pronunciation. Technical words: ${technical.size}; words of the dictionary: ${ordinary.size}; unseen: the same, by 5-fold cross-validation; names and rare words: ${others.size}, used for nothing else.`,
    '',
    '| counter | technical | dictionary | unseen | names and rare | words a second |',
    '| --- | --: | --: | --: | --: | --: |',
    ...counters.map((counter, index) => row(counter, index === 0 ? crossValidated(ordinary) : share(ordinary, counter[1]))),
  ]
}

function share(words: Gold, count: CountWord): string {
  const right = [...words].filter(([word, accepted]) => accepted.includes(count(word))).length
  return `${((100 * right) / words.size).toFixed(2)} %`
}

function crossValidated(gold: Gold): string {
  const words = [...gold]
  let right = 0
  for (const fold of [0, 1, 2, 3, 4]) {
    const known = findExceptions(new Map(words.filter((_, index) => index % 5 !== fold)))
    right += words.filter(([word, accepted], index) => index % 5 === fold && accepted.includes(countWith(known, word))).length
  }
  return `${((100 * right) / words.length).toFixed(2)} %`
}

type Split = (text: string) => string[]

const intl = new Intl.Segmenter('en', { granularity: 'sentence' })
const splitters: [string, Split][] = [
  ['ours', (text) => sentencesOf({ kind: 'paragraph', text }, 'en').map((sentence) => sentence.text)],
  ['Intl.Segmenter', (text) => [...intl.segment(text)].map((part) => part.segment)],
  ['sentence-splitter 5.0.1', (text) => splitterSentences(text).flatMap((node) => (node.type === 'Sentence' ? [node.raw] : []))],
]

function sentenceTable(): string[] {
  const cases = linesOf('sentences.txt')
  const heldOut = linesOf('sentences-held-out.txt')
  const right = (texts: readonly string[], split: Split) =>
    texts.filter((text) => {
      const found = split(text.replaceAll('|', ' '))
        .map((part) => part.trim())
        .filter(Boolean)
      return found.join('|') === text
    }).length
  return [
    `| splitter | of ${cases.length} cases | of ${heldOut.length} held-out cases |`,
    '| --- | --: | --: |',
    ...splitters.map(([name, split]) => `| ${name} | ${right(cases, split)} | ${right(heldOut, split)} |`),
  ]
}

interface Passage {
  blocks?: Block[]
  scores: { fleschKincaidGrade: [low: number, high: number] }
}

const passages = JSON.parse(readFileSync('tests/fixtures/reading/passages.json', 'utf8')) as Passage[]

/** How far the grade of a passage is from that of a count by hand, on average. */
function gradeLines(): string[] {
  const counted = passages.flatMap(({ blocks, scores }) => (blocks ? [{ blocks, range: scores.fleschKincaidGrade }] : []))
  const meanOff = (gradeOf: (blocks: readonly Block[]) => number) => {
    const off = counted.map(({ blocks, range: [low, high] }) => Math.max(0, low - gradeOf(blocks), gradeOf(blocks) - high))
    return (off.reduce((sum, its) => sum + its, 0) / off.length).toFixed(2)
  }
  const ours = (blocks: readonly Block[]) => fleschKincaidGrade.value(countsOf(blocks, 'en') as FormulaCounts)
  const theirs = (blocks: readonly Block[]) => {
    const sentences = blocks.flatMap(({ text }) => [...intl.segment(text)])
    const words = sentences.flatMap(({ segment: text }) => text.match(/[\p{L}\p{N}]\S*/gu) ?? [])
    const syllables = words.reduce((sum, word) => sum + syllable(word), 0)
    return fleschKincaidGrade.value({ words: words.length, sentences: sentences.length, syllables })
  }
  return [
    `Flesch–Kincaid grade of ${counted.length} passages, mean distance from a count by hand: ours ${meanOff(ours)}; Intl.Segmenter, words at spaces and syllable 5.0.1: ${meanOff(theirs)}.`,
  ]
}

function costLines(): string[] {
  const blocks = passages.flatMap((passage) => passage.blocks ?? [])
  const wordsOfBlocks = countsOf(blocks, 'en').words
  const timeOf = (pages: number) => {
    // As many words a page as a page of the example has, about.
    const times = Math.ceil((pages * 250) / wordsOfBlocks)
    const start = performance.now()
    const count = sentenceCounter('en')
    for (let at = 0; at < times; at++) count(blocks.flatMap((block) => countedSentences(sentencesOf(block, 'en'))))
    const timeMs = performance.now() - start
    return `- ${pages} pages of 250 words: ${timeMs.toFixed(0)} ms, ${Math.round((times * wordsOfBlocks) / timeMs)} words a millisecond`
  }
  return ['Sentences, words, syllables and letters of prose:', '', ...[300, 10_000].map(timeOf)]
}

function perSecond(words: readonly string[], count: CountWord): string {
  const start = performance.now()
  let rounds = 0
  for (; performance.now() - start < 500; rounds++) for (const word of words) count(word)
  return `${Math.round((rounds * words.length) / (performance.now() - start))} k`
}

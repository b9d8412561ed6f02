import { describe, expect, test } from 'vitest'
import { replacedTerms, termReader } from '../../../src/reading/plain/replaced-terms.ts'
import { unexpanded } from '../../../src/reading/plain/unexpanded.ts'
import { commonAbbreviations } from '../../../src/reading/plain/words/common-abbreviations.ts'
import { sentencesOf } from '../../../src/reading/sentences.ts'

const none: ReadonlySet<string> = new Set()

function abbreviationsOf(texts: string[], known: ReadonlySet<string> = none) {
  const page = texts.map((text) => ({ block: { kind: 'paragraph' as const, text }, sentences: sentencesOf({ kind: 'paragraph', text }, 'en') }))
  return unexpanded(page, known).map(({ block, finding }) => `${texts.indexOf(block.text)}:${finding.start} ${finding.words}`)
}

describe('an abbreviation', () => {
  test.each([
    [['The VFD is hot.', 'Switch the VFD off.'], ['0:4 VFD']],
    [['The variable-frequency drive (VFD) is hot.', 'Switch the VFD off.'], []],
    [['Switch the VFD off.', 'A VFD (variable-frequency drive) sets the speed.'], []],
    [['The residual-current devices (RCDs) trip.', 'Reset the RCD.'], []],
    [['STO stands for safe torque off.'], []],
    [['The VFD (see page 3) is hot.'], ['0:4 VFD']],
    [['Use the HMI. The HMIs are alike.'], ['0:8 HMI']],
    [['Turn it to ON, then to OFF, then to RESET.'], []],
    [['It follows IEC 60751 and 29 CFR 1910.'], []],
    [['WHEN YOU REMOVE THE COVER, LOCK THE VFD.'], []],
    [['Phase II of chapter IV.'], []],
    [['The label reads "RCBO".'], []],
    [['Tags PX-104, B12 and LO-1.'], []],
  ])('%j', (texts, found) => {
    expect(abbreviationsOf(texts)).toEqual(found)
  })

  test('that a reader knows needs no words', () => {
    const page = ['The LED is on.', 'The PLC has stopped.', 'The SIL is 2.']
    expect(abbreviationsOf(page, commonAbbreviations.operator)).toEqual(['1:4 PLC', '2:4 SIL'])
    expect(abbreviationsOf(page, commonAbbreviations.maintenance)).toEqual(['2:4 SIL'])
    expect(abbreviationsOf(page, commonAbbreviations.engineer)).toEqual([])
    expect(abbreviationsOf(page, new Set(['PLC', 'SIL', 'LED']))).toEqual([])
  })
})

describe('a word that the glossary replaces', () => {
  const glossary = [
    { term: 'returnable crate', instead: ['box', 'tote'] },
    { term: 'photocell', instead: ['photo eye', 'light barrier'] },
    { term: 'through-beam sensor', instead: ['light barrier pair', 'light barrier'] },
    { term: 'guide rail', instead: ['rail', 'clamp'] },
    { term: 'clamp', instead: ['gripper'] },
  ]
  const inShort = (text: string) =>
    replacedTerms(text, glossary).map(({ words, suggestion, terms }) => `${words} → ${suggestion ?? terms?.join(' or ')}`)

  test.each([
    ['Take the box out.', ['box → returnable crate']],
    ['Take the boxes and Totes out.', ['boxes → returnable crate', 'Totes → returnable crate']],
    ['The photo\neye is dirty.', ['photo\neye → photocell']],
    ['A light barrier pair.', ['light barrier pair → through-beam sensor']],
    ['A light barrier.', ['light barrier → photocell or through-beam sensor']],
    ['The guide rail is bent.', []],
    ['The rail is bent.', ['rail → guide rail']],
    ['The clamp is open.', []],
    ['The toolbox, the box-end spanner and the boxer.', []],
    ['Nothing here.', []],
  ])('%s', (text, found) => {
    expect(inShort(text)).toEqual(found)
  })

  test('has its place in the text', () => {
    expect(replacedTerms('Take the box out.', glossary)).toMatchObject([{ kind: 'replaced-term', start: 9, end: 12, sure: true }])
    expect(replacedTerms('A light barrier.', glossary)).toMatchObject([{ sure: false }])
  })

  test('needs a glossary, and may hold signs of a pattern', () => {
    expect(replacedTerms('Take the box out.', [])).toEqual([])
    expect(
      termReader([{ term: 'thermocouple', instead: ['T/C', 'T.C. (K)', ''] }])('The T/C is broken, TXCX too.').map(({ words }) => words),
    ).toEqual(['T/C'])
  })
})

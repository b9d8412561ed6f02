/**
 * Writes `syllables/english-exceptions.ts` from the npm packages cmu-pronouncing-dictionary and dictionary-en: `node src/reading/make/english-exceptions.ts`.
 * Run by hand; nothing of the product imports this folder.
 */

import { writeFileSync } from 'node:fs'
import { findExceptions, type Gold } from './find-exceptions.ts'
import { dictionaryCounts, spellingWords } from './word-lists.ts'

const notice = `Made by src/reading/make/english-exceptions.ts from the CMU Pronouncing Dictionary (npm cmu-pronouncing-dictionary 3.0.0): words that the rules
count otherwise. Its notice, as copies of the dictionary carry it:

Copyright (C) 1993-2015 Carnegie Mellon University. All rights reserved.

Redistribution and use in source and binary forms, with or without modification, are permitted provided that the following conditions are met:

1. Redistributions of source code must retain the above copyright notice, this list of conditions and the following disclaimer. The contents of
   this file are deemed to be source code.

2. Redistributions in binary form must reproduce the above copyright notice, this list of conditions and the following disclaimer in the
   documentation and/or other materials provided with the distribution.

This work was supported in part by funding from the Defense Advanced Research Projects Agency, the Office of Naval Research and the National
Science Foundation of the United States of America, and by member companies of the Carnegie Mellon Sphinx Speech Consortium. We acknowledge the
contributions of many volunteers to the expansion and improvement of this dictionary.

THIS SOFTWARE IS PROVIDED BY CARNEGIE MELLON UNIVERSITY "AS IS" AND ANY EXPRESSED OR IMPLIED WARRANTIES, INCLUDING, BUT NOT LIMITED TO, THE
IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE ARE DISCLAIMED. IN NO EVENT SHALL CARNEGIE MELLON UNIVERSITY NOR ITS
EMPLOYEES BE LIABLE FOR ANY DIRECT, INDIRECT, INCIDENTAL, SPECIAL, EXEMPLARY, OR CONSEQUENTIAL DAMAGES (INCLUDING, BUT NOT LIMITED TO, PROCUREMENT
OF SUBSTITUTE GOODS OR SERVICES; LOSS OF USE, DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER CAUSED AND ON ANY THEORY OF LIABILITY, WHETHER IN
CONTRACT, STRICT LIABILITY, OR TORT (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE OF THIS SOFTWARE, EVEN IF ADVISED OF THE
POSSIBILITY OF SUCH DAMAGE.`

/** Words of the spelling dictionary that the pronouncing dictionary knows. */
export function ordinaryWords(): Gold {
  const spelling = spellingWords()
  return new Map([...dictionaryCounts()].filter(([word]) => spelling.has(word)))
}

/** The text of `english-exceptions.ts`. */
export function exceptionsFile(exceptions: ReadonlyMap<string, number>): string {
  const counts = [...new Set(exceptions.values())].sort((a, b) => a - b)
  const lists = counts.map((count) => {
    const words = [...exceptions].filter(([, its]) => its === count).map(([word]) => word)
    return `  [\n    ${count},\n    \`${wrapped(words.sort(), 140).join('\n    ')}\`,\n  ],\n`
  })
  return `/*
${notice}
*/

const wordsByCount: readonly (readonly [number, string])[] = [
${lists.join('')}]

/** Syllables of words, in small letters, that the rules count otherwise. */
export const exceptions: ReadonlyMap<string, number> = new Map(
  wordsByCount.flatMap(([count, words]) => words.split(/\\s+/).map((word) => [word, count] as const)),
)
`
}

function wrapped(words: readonly string[], width: number): string[] {
  const lines: string[] = []
  for (const word of words) {
    const line = lines.at(-1)
    if (line !== undefined && line.length + word.length < width) lines[lines.length - 1] = `${line} ${word}`
    else lines.push(word)
  }
  return lines
}

if (import.meta.main) writeFileSync(new URL('../syllables/english-exceptions.ts', import.meta.url), exceptionsFile(findExceptions(ordinaryWords())))

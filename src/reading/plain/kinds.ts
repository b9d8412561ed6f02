import type { PlainKind } from './finding.ts'

export interface KindText {
  /** What is wrong with it, in one sentence. */
  wrong: string
  /** What to do, in one sentence. */
  todo: string
  source: string
}

const ste = (rules: string) => `ASD-STE100 Issue 9, ${rules}`

/** What each kind of finding means to a writer. The rule numbers say where a limit comes from; no text is claimed to hold to a standard. */
export const kinds: Readonly<Record<PlainKind, KindText>> = {
  'long-sentence': {
    wrong: 'The sentence has more words than a reader keeps in mind.',
    todo: 'Cut it in two, or make a list of what it counts up.',
    source: ste('rules 5.1, 6.3 and 5.5; words counted by rules 8.4 to 8.7'),
  },
  'long-paragraph': {
    wrong: 'The paragraph has more than six sentences.',
    todo: 'Begin a new paragraph where the topic changes.',
    source: ste('rule 6.6'),
  },
  'several-instructions': {
    wrong: 'The sentence gives two instructions, one after the other.',
    todo: 'Give each instruction a sentence, or a step, of its own.',
    source: ste('rule 5.2'),
  },
  'no-command': {
    wrong: 'The step tells nobody to do anything.',
    todo: 'Begin with the verb of what the reader does: "Open", "Check", "Wait".',
    source: ste('rule 5.3'),
  },
  'late-condition': {
    wrong: 'The condition stands after the instruction, and the reader acts before it is read.',
    todo: 'Put the condition first, then a comma, then the instruction.',
    source: ste('rule 5.4'),
  },
  'missing-comma': {
    wrong: 'The condition runs into the instruction.',
    todo: 'Put a comma between the condition and the instruction.',
    source: ste('rule 5.4'),
  },
  passive: {
    wrong: 'The step does not say who acts.',
    todo: 'Write it as a command, or name who does it.',
    source: ste('rules 3.6 and 3.3'),
  },
  'noun-cluster': {
    wrong: 'More than three nouns stand in a row, and only an expert can take them apart.',
    todo: 'Say how they belong together with "of", "for" or a hyphen, or put the name in the glossary.',
    source: ste('rule 2.1'),
  },
  contraction: {
    wrong: 'A contraction hides a word.',
    todo: 'Write both words in full.',
    source: ste('rule 4.2'),
  },
  semicolon: {
    wrong: 'A semicolon joins two sentences.',
    todo: 'Make two sentences of them.',
    source: ste('rule 8.1'),
  },
  'doubled-word': {
    wrong: 'A word stands twice.',
    todo: 'Take one of them out.',
    source: 'common practice',
  },
  'stacked-negative': {
    wrong: 'One negative turns another one round.',
    todo: 'Say what must be so, and not what must not be otherwise.',
    source: 'common practice',
  },
  'command-in-note': {
    wrong: 'A note gives an instruction, and who reads only the steps misses it.',
    todo: 'Make a step of it.',
    source: ste('rule 5.5'),
  },
  'no-result': {
    wrong: 'The safety message does not say what happens to whoever does not follow it.',
    todo: 'Say what the danger is and what it can do to people or to the machine.',
    source: ste('rules 7.1 to 7.3'),
  },
  'unexpanded-abbreviation': {
    wrong: 'The page never gives the abbreviation in words.',
    todo: 'Give the words at the first use with the abbreviation in parentheses, or put it in the glossary.',
    source: 'common practice',
  },
  'unit-not-si': {
    wrong: 'The value is given in a unit outside the SI alone.',
    todo: 'Give the value in an SI unit, and the other one behind it in parentheses where readers need it.',
    source: 'ISO 80000-1:2022; SI brochure, 9th edition, chapter 4',
  },
  'unit-form': {
    wrong: 'The unit is not written as its symbol.',
    todo: 'Write the symbol, with a space between the number and it.',
    source: 'SI brochure, 9th edition, 5.2 and 5.4.3',
  },
  'decimal-sign': {
    wrong: 'The number has the decimal sign of another language.',
    todo: 'Write the sign that readers of this language know.',
    source: 'SI brochure, 9th edition, 5.4.4',
  },
  'plain-word': {
    wrong: 'A plainer word stands for the same thing.',
    todo: 'Write the plainer word.',
    source: 'common practice',
  },
  'replaced-term': {
    wrong: 'The glossary has another word for this thing, and readers look for that one.',
    todo: 'Write the term of the glossary.',
    source: 'common practice: one term for one thing',
  },
}

import { textOf } from '../example.ts'
import { also, type Beyond, type Kind, type Piece, replaced, type Spot } from './mistake.ts'
import type { Example } from './read-example.ts'
import { misspelt } from './slips.ts'

const training = 'training.yaml'

const lessonFiles = ({ pages }: Example, translated = false) =>
  pages.filter((path) => path.includes('lessons/') && /\.[a-z]{2}\.mdx$/.test(path) === translated)

/** Every piece that a pattern finds in the heads of lessons, or in training.yaml. */
function pieces({ files }: Example, paths: readonly string[], pattern: RegExp): Piece[] {
  return paths.flatMap((file) => {
    const text = textOf(files, file)
    const end = file === training ? text.length : text.indexOf('\n---', 3)
    return [...text.slice(0, end).matchAll(pattern)].map(({ index, 0: value }): Piece => ({ file, start: index, end: index + value.length, value }))
  })
}

interface Rewriting {
  name: string
  count: number
  /** Whether it stands in training.yaml, in a lesson, or in the translation of one. */
  in?: 'training' | 'lessons' | 'translations'
  pattern: RegExp
  text: (value: string) => string
  beyond?: Beyond
}

/** A slip in one piece; found on its lines or where the lesson, the role or the skill that it is about stands. */
function rewritten({ name, count, in: where = 'lessons', pattern, text, beyond }: Rewriting): Kind {
  return {
    name: `training: ${name}`,
    count,
    *make(example, random) {
      const paths = where === 'training' ? [training] : lessonFiles(example, where === 'translations')
      for (const piece of random.sample(pieces(example, paths, pattern), count)) {
        const draft = replaced(example.files, piece, text(piece.value))
        yield { ...also(draft, owners(example, piece)), ...(beyond ? { beyond } : {}) }
      }
    },
  }
}

/** The head of the question or of the lesson, and every line of training.yaml: what is missing is told at its owner. */
function owners({ files }: Example, { file, start }: Piece): Spot[] {
  const text = textOf(files, file)
  const lineOf = (offset: number) => text.slice(0, offset).split('\n').length
  const question = text.lastIndexOf('- ask:', start)
  const whole = textOf(files, training)
    .split('\n')
    .map((_, index): Spot => ({ file: training, line: index + 1 }))
  const head = Array.from({ length: lineOf(text.indexOf('\n---', 3)) }, (_, index): Spot => ({ file, line: index + 1 }))
  return [...(question < 0 ? [] : [{ file, line: lineOf(question) }]), ...(file === training ? [] : head), ...whole]
}

const times = (factor: number) => (value: string) => String(Math.max(1, Math.round(Number(value) * factor)))
const gone = () => ''

/** Slips with lessons, questions, roles and skills. */
export const lessonKinds: readonly Kind[] = [
  rewritten({
    name: 'the right answer of a question loses its mark',
    count: 8,
    pattern: /(?<!choose: several[\s\S]{0,600})(?:^ +right: true\n|, right: true)/gm,
    text: gone,
  }),
  rewritten({
    name: 'a second answer is marked right',
    count: 8,
    pattern: /(?<=^ +- text: .*\n)(?= +because:)/gm,
    text: () => '        right: true\n',
  }),
  rewritten({ name: 'the reason of an answer left out', count: 8, pattern: /^ {8}because: .*\n|, because: [^,}]*(?= \})/gm, text: gone }),
  rewritten({ name: 'the pass mark left out', count: 4, pattern: /^passPercent: .*\n/gm, text: gone }),
  rewritten({ name: 'the person who signs left out', count: 6, pattern: /^signOff: .*\n/gm, text: gone }),
  rewritten({ name: 'minutes ten times as many', count: 6, pattern: /(?<=^minutes: )\d+/gm, text: times(10) }),
  rewritten({ name: 'minutes a tenth', count: 6, pattern: /(?<=^minutes: )\d+/gm, text: times(0.1) }),
  rewritten({ name: 'a need misspelt', count: 6, pattern: /(?<=^needs(?:SignedOff)?: \[(?:.*, )?)[a-z-]{5,}/gm, text: misspelt }),
  rewritten({ name: 'a lockout covered misspelt', count: 4, pattern: /(?<=lockouts: \[(?:[^\]]*, )?)lo-\d/g, text: (name) => `${name}0` }),
  rewritten({
    name: 'no lockout covered any more',
    count: 6,
    pattern: /(?<=^covers: \{ )lockouts: \[[^\]]*\],? ?/gm,
    text: gone,
    beyond: 'nobody has to write it',
  }),
  rewritten({ name: 'a duty left out', count: 8, pattern: /^duties: .*\n/gm, text: gone, beyond: 'nobody has to write it' }),
  rewritten({ name: 'the level left out', count: 6, pattern: /^level: .*\n/gm, text: gone }),
  rewritten({ name: 'the revision raised alone', count: 6, pattern: /(?<=^revision: )\w+/gm, text: () => 'Z' }),
  rewritten({ name: 'a date of the history in the century before', count: 4, pattern: /(?<=revision: [B-Z], date: ')20/g, text: () => '19' }),
  rewritten({
    name: 'a need misspelt in a sequence',
    count: 6,
    in: 'training',
    pattern: /(?<=^ {4}lessons: \[(?:.*, )?)[a-z-]{6,}/gm,
    text: misspelt,
  }),
  rewritten({ name: 'a skill of a role misspelt', count: 4, in: 'training', pattern: /(?<=needs: \{ (?:.*, )?)[a-z-]{5,}(?=:)/g, text: misspelt }),
  rewritten({ name: 'a session shorter than its lessons', count: 1, in: 'training', pattern: /(?<=\bminutes: )\d+/g, text: times(0.1) }),
  rewritten({
    name: 'another level than a skill has',
    count: 4,
    in: 'training',
    pattern: /(?<=: )3(?=[, ])/g,
    text: () => '4',
    beyond: 'another real thing',
  }),
  rewritten({ name: 'an answer left out of a translation', count: 4, in: 'translations', pattern: /^ {6}- text: .*\n(?: {8}.*\n)*/gm, text: gone }),
  rewritten({ name: 'a task left out of a translation', count: 3, in: 'translations', pattern: /(?<=^practical:\n) {2}- .*\n/gm, text: gone }),
]

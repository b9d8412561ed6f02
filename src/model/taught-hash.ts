import { createHash } from 'node:crypto'
import { frontmatterRange } from '../source/frontmatter-range.ts'
import { rememberedOfTwo } from '../source/once.ts'
import { frontmatterTexts } from './frontmatter-texts.ts'
import type { Page } from './machine.ts'

/**
 * Of what a lesson teaches and asks, in its source language: eight hexadecimal digits of SHA-256. Spaces and line ends count
 * as one space. The body is taken as it is written, with the words for all options, so that every unit has the same hash.
 */
export const taughtHash = ({ frontmatter, source }: Lesson): string => hashOf(frontmatter, source)

type Lesson = Pick<Page<'lessons'>, 'frontmatter' | 'source'>

/** A text that stays is hashed once, however often it is checked. */
const hashOf = rememberedOfTwo((frontmatter: Lesson['frontmatter'], source: Lesson['source']): string => {
  const { objectives, practical, questions = [] } = frontmatter
  const texts = frontmatterTexts('taught', [objectives, practical, questions]).map(({ text }) => text)
  const right = questions.flatMap(({ choose, answers }) => [choose ?? 'one', answers.map(({ right }) => (right ? 1 : 0)).join('')])
  const body = source.text.slice(frontmatterRange(source.text).end).replace(/^---/, '')
  const taught = [...texts, ...right, body].map((text) => text.replace(/\s+/g, ' ').trim())
  return createHash('sha256').update(JSON.stringify(taught)).digest('hex').slice(0, 8)
})

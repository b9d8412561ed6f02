import { createHash } from 'node:crypto'
import { frontmatterTexts } from './frontmatter-texts.ts'
import type { Page } from './machine.ts'

/** Of what a lesson teaches and asks, in its source language: eight hexadecimal digits of SHA-256. Spaces and line ends count as one space. */
export function taughtHash({ frontmatter, body, source }: Pick<Page<'lessons'>, 'frontmatter' | 'body' | 'source'>): string {
  const { objectives, practical, questions = [] } = frontmatter
  const texts = frontmatterTexts('taught', [objectives, practical, questions]).map(({ text }) => text)
  const right = questions.flatMap(({ choose, answers }) => [choose ?? 'one', answers.map(({ right }) => (right ? 1 : 0)).join('')])
  const blocks = body.children.map(({ position }) => source.text.slice(position?.start.offset ?? 0, position?.end.offset ?? 0))
  const taught = [...texts, ...right, ...blocks].map((text) => text.replace(/\s+/g, ' ').trim())
  return createHash('sha256').update(JSON.stringify(taught)).digest('hex').slice(0, 8)
}

import { readFileSync } from 'node:fs'
import type { Lesson } from '../../src/training/lesson.ts'

interface Line {
  name: string
  minutes: number[]
  arcs: [number, number][]
  optima: [limit: number, sessions: number][]
}

const { lines } = JSON.parse(readFileSync('tests/fixtures/training/assembly-lines.json', 'utf8')) as { lines: Line[] }

/** Published lines with each limit and the fewest sessions for it; tasks are lessons, by their numbers from 1. */
export const published = lines.flatMap(({ name, minutes, arcs, optima }) =>
  optima.map(([limit, fewest]) => ({ name, limit, fewest, lessons: lessonsOf(minutes, arcs) })),
)

export function lessonsOf(minutes: readonly number[], arcs: readonly [number, number][]): Lesson[] {
  return minutes.map((length, index) => ({
    id: String(index + 1),
    minutes: length,
    needs: arcs.filter(([, to]) => to === index + 1).map(([from]) => String(from)),
    needsSignedOff: [],
  }))
}

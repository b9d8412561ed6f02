import type { Lesson } from './lesson.ts'

/** That one lesson needs another, and where it says so. */
export interface Need {
  lesson: string
  needs: string
  in: 'needs' | 'needsSignedOff'
}

/** What a lesson needs, in the order in which it says so; one that it names in both lists counts as signed off. */
export function needsOf({ id, needs, needsSignedOff }: Lesson): Need[] {
  const strict = new Set(needsSignedOff)
  return [
    ...[...new Set(needs)].filter((need) => !strict.has(need)).map((need) => ({ lesson: id, needs: need, in: 'needs' as const })),
    ...[...strict].map((need) => ({ lesson: id, needs: need, in: 'needsSignedOff' as const })),
  ]
}

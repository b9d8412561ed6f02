import type { Labels } from '../words/labels.ts'

/** `2: does it under supervision`; the number alone where it is no level from 0 to 4. */
export function skillLevelText(labels: Labels, level: number): string {
  const texts = [labels.skillLevel_0, labels.skillLevel_1, labels.skillLevel_2, labels.skillLevel_3, labels.skillLevel_4]
  return texts[level] ?? String(level)
}

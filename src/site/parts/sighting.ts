import { slug } from '../address.ts'

/** The id of the mark round a device on a drawing sheet; drawings are linked with it. */
export function sightingId(tag: string): string {
  return `at-${slug(tag)}`
}

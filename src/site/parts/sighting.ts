import { slug } from '../address.ts'

/** The id of the mark round a device on a drawing sheet; drawings are linked with it. */
export function sightingId(tag: string): string {
  return `at-${slug(tag)}`
}

/** The id of the mark round a zone of a sheet. No tag has a mark of this id. */
export function zoneId(zone: string): string {
  return `zone-${slug(zone)}`
}

import type { Machine } from '../model/machine.ts'

/** Whether a page, a row or a list could not be read: what is not read may be what names the thing that nobody seems to name. */
export function partlyRead({ absent, unread }: Machine): boolean {
  return unread.size > 0 || [...absent.values()].some(({ reason }) => reason === 'broken')
}

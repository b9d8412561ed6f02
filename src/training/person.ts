/**
 * Whether two ids mean one person: letters and digits are equal, whatever their case and what stands between them.
 * `p 0042` is `P-0042`. So nobody signs off for himself by another spelling.
 */
export function isSamePerson(one: string, other: string): boolean {
  return essence(one) === essence(other)
}

function essence(id: string): string {
  const folded = id.normalize('NFKC').toLowerCase()
  return folded.replace(/[^\p{L}\p{N}]/gu, '') || folded.trim()
}

/** Sets of whole numbers from 0, as bits in words of 32. Sets that are compared have as many words. */
export type NumberSet = Uint32Array

export function numberSet(below: number, members: readonly number[] = []): NumberSet {
  const set = new Uint32Array(Math.max(1, Math.ceil(below / 32)))
  for (const member of members) addMember(set, member)
  return set
}

export function hasMember(set: NumberSet, member: number): boolean {
  return (((set[member >>> 5] ?? 0) >>> (member & 31)) & 1) === 1
}

export function addMember(set: NumberSet, member: number): void {
  set[member >>> 5] = (set[member >>> 5] ?? 0) | (1 << (member & 31))
}

export function withMember(set: NumberSet, member: number): NumberSet {
  const more = set.slice()
  addMember(more, member)
  return more
}

export function isWithin(set: NumberSet, other: NumberSet): boolean {
  for (let word = 0; word < set.length; word++) if (((set[word] ?? 0) & ~(other[word] ?? 0)) !== 0) return false
  return true
}

export function isDisjoint(set: NumberSet, other: NumberSet): boolean {
  for (let word = 0; word < set.length; word++) if (((set[word] ?? 0) & (other[word] ?? 0)) !== 0) return false
  return true
}

import type { NumberSet } from './number-set.ts'

/** Sets of equally many words, each with the number, from 0, under which it was added. */
export interface SetTable {
  readonly size: number
  /** The number of a set, which is added when it is new. */
  add(set: NumberSet): number
  /** Undefined for a set that was not added. */
  find(set: NumberSet): number | undefined
  at(number: number): NumberSet
}

/** A hash table over one growing array: many times faster than a Map, for which a set would have to become a text. */
export function setTable(words: number): SetTable {
  let sets = new Uint32Array(words * 256)
  let slots = new Int32Array(1024).fill(-1)
  let size = 0

  const slotOf = (set: NumberSet) => {
    let slot = hashOf(set) & (slots.length - 1)
    for (let number = slots[slot] ?? -1; number >= 0 && !isAt(number, set); number = slots[slot] ?? -1) slot = (slot + 1) & (slots.length - 1)
    return slot
  }
  const isAt = (number: number, set: NumberSet) => {
    for (let word = 0; word < words; word++) if (sets[number * words + word] !== set[word]) return false
    return true
  }
  const at = (number: number) => sets.subarray(number * words, (number + 1) * words)
  const grow = () => {
    const more = new Uint32Array(sets.length * 2)
    more.set(sets)
    sets = more
    slots = new Int32Array(slots.length * 2).fill(-1)
    for (let number = 0; number < size; number++) slots[slotOf(at(number))] = number
  }

  return {
    get size() {
      return size
    },
    add(set) {
      const slot = slotOf(set)
      const known = slots[slot] ?? -1
      if (known >= 0) return known
      slots[slot] = size
      sets.set(set, size * words)
      size += 1
      if (size * words === sets.length) grow()
      return size - 1
    },
    find(set) {
      const number = slots[slotOf(set)] ?? -1
      return number < 0 ? undefined : number
    },
    at,
  }
}

function hashOf(set: NumberSet): number {
  let hash = 0
  for (let word = 0; word < set.length; word++) {
    hash = Math.imul(hash ^ (set[word] ?? 0), 0x9e3779b1)
    hash ^= hash >>> 15
  }
  hash = Math.imul(hash, 0x85ebca6b)
  return hash ^ (hash >>> 13)
}

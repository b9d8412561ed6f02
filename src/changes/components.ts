/** Which row of the new revision a row of the old one is, as positions in the two lists. */
export interface Pair {
  old: number
  now: number
}

export interface Candidate extends Pair {
  score: number
}

/** Pairs in groups that have no row in common. */
export function components(level: readonly Candidate[]): Candidate[][] {
  const parent = new Map<string, string>()
  const root = (name: string): string => {
    let at = name
    for (let up = parent.get(at); up !== undefined; up = parent.get(at)) {
      const further = parent.get(up)
      if (further !== undefined) parent.set(at, further)
      at = up
    }
    return at
  }
  for (const { old, now } of level) {
    const [a, b] = [root(`old ${old}`), root(`now ${now}`)]
    if (a !== b) parent.set(b, a)
  }
  const groups = new Map<string, Candidate[]>()
  for (const candidate of level) {
    const name = root(`old ${candidate.old}`)
    const group = groups.get(name)
    if (group) group.push(candidate)
    else groups.set(name, [candidate])
  }
  return [...groups.values()]
}

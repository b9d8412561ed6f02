import type { Part } from '../model/machine.ts'

/** The parts that replaced a part, the latest last. Undefined when the chain is a circle or ends at a part that is not there. */
export function successorsOf(part: Part, parts: ReadonlyMap<string, Part>): Part[] | undefined {
  const chain: Part[] = []
  for (let { supersededBy } = part; supersededBy; supersededBy = chain.at(-1)?.supersededBy) {
    const next = parts.get(supersededBy.value)
    if (!next || next === part || chain.includes(next)) return undefined
    chain.push(next)
  }
  return chain
}

/** Parts by number. A number that is there twice is reported as such. */
export function partsByNumber(parts: readonly Part[]): Map<string, Part> {
  return new Map(parts.toReversed().map((part) => [part.number.value, part]))
}

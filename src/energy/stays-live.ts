import type { Graph } from '../model/graph.ts'
import type { EnergySource, Page } from '../model/machine.ts'

/**
 * Sources that reach an area of a lockout and stay live in front of it, because the lockout cuts off a branch
 * of theirs; each with the points behind which it is off.
 */
export function liveDuringWork(page: Page<'lockout'>, graph: Graph): { source: EnergySource; branches: readonly string[] }[] {
  const cut = graph.sourcesOf(page)
  const parents = [...new Set(cut.flatMap(({ from }) => (from ? [from.value] : [])))]
  return parents.flatMap((id) => {
    const source = graph.energy(id)
    if (!source || cut.includes(source)) return []
    const branches = cut.filter(({ from }) => from?.value === id).flatMap(({ isolation }) => isolation.map(({ point }) => point.value))
    return [{ source, branches: [...new Set(branches)] }]
  })
}

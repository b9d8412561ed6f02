import type { EnergySource, Page } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'

export const areaLeftEnergised: Rule = {
  id: 'area-left-energised',
  severity: 'error',
  summary: 'An energy source reaches an area that a lockout makes safe, and the lockout does not cut it off.',
  why: 'Whoever works in the area by this lockout meets an energy that is still on.',
  source: '29 CFR 1910.147(d)(3): all devices that are needed to control the energy to the machine',
  guards: 'people',

  *check({ energy }, graph) {
    for (const page of graph.pagesIn('lockout')) {
      const cut = graph.sourcesOf(page)
      // A name that is not there is reported, and may be the one that is missed.
      if (cut.length < page.frontmatter.energy.length) continue
      for (const [index, area] of page.frontmatter.areas.entries()) {
        for (const source of energy) {
          if (!reaches(source, area) || cut.includes(source)) continue
          // Cut off behind a branch in the area, or before it where nothing is stored in it.
          if (cut.some((it) => (reaches(it, area) && isFedBy(it, source, energy)) || (!source.stored && isFedBy(source, it, energy)))) continue
          yield {
            message: `energy source \`${source.id.value}\` reaches area \`${area}\`, and this lockout does not cut it off`,
            place: page.placeOf(['areas', index]),
            related: [{ label: 'its areas', place: source.areas.find(({ value }) => value === area)?.place ?? source.id.place }],
            help: advice(source, page),
          }
        }
      }
    }
  },
}

const reaches = ({ areas }: EnergySource, area: string) => areas.some(({ value }) => value === area)

/** Whether a branch hangs on a source, over any number of others. */
function isFedBy(branch: EnergySource, source: EnergySource, energy: readonly EnergySource[]): boolean {
  const seen = new Set<EnergySource>()
  for (let at: EnergySource | undefined = branch; at && !seen.has(at); ) {
    seen.add(at)
    const from: string | undefined = at.from?.value
    if (from === source.id.value) return true
    at = energy.find(({ id }) => id.value === from)
  }
  return false
}

function advice({ id }: EnergySource, { frontmatter }: Page<'lockout'>): string {
  return `add \`${id.value}\` to \`energy\`; or name it under \`from\` of the branch that ${frontmatter.number} cuts off there`
}

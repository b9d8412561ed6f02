import type { BuildRun, Sizes } from './measure-portfolio.ts'

interface Measured {
  machines: number
  runs: readonly BuildRun[]
  two: BuildRun
  one: BuildRun
  sizes: Sizes
}

/** A portfolio to plan for. */
const planned = { machines: 500, languages: 4, cores: 8, hosts: 4 }

/** What the measured machine costs, and what a large portfolio of such machines would, as lines of text; none before there is enough to compute it from. */
export function planOf({ machines, runs: [cold, warm, none], two, one, sizes }: Measured): string[] {
  if (!cold || !warm || !none) return []
  const built = cold.cpuS / machines
  const checked = none.cpuS / machines
  const left = warm.cpuS / machines
  const language = Math.max(0, two.cpuS - one.cpuS)
  const inAll = built + (planned.languages - 2) * language
  const growth = inAll / built
  const hours = (cpuS: number) => (cpuS / 3600).toFixed(1)
  const minutes = (cpuS: number, cores: number) => (cpuS / cores / 60).toFixed(0)
  const all = planned.machines * inAll
  return [
    '## A machine',
    '',
    `One of these machines has ${sizes.sitePages} pages in two languages; its folder takes ${sizes.bundleMb.toFixed(0)} MB, its zip ${sizes.zipMb.toFixed(0)} MB. In processor time a build takes ${built.toFixed(1)} s (${((built * 1000) / sizes.sitePages).toFixed(1)} ms a page), leaving it ${left.toFixed(2)} s, and a check of it that finds that a shared change is none of its own ${checked.toFixed(1)} s. The second language costs ${language.toFixed(1)} s.`,
    '',
    `## A plan for ${planned.machines} machines in ${planned.languages} languages`,
    '',
    `Computed from the above, with each further language as dear as the second: ${inAll.toFixed(0)} s for a machine.`,
    '',
    `| what | processor time | on one computer of ${planned.cores} cores | on ${planned.hosts} of them |`,
    '| --- | --: | --: | --: |',
    ...[
      ['everything anew (a new version of Fettle)', all] as const,
      ['nothing has changed', planned.machines * left] as const,
      ['shared content has changed that a quarter take', planned.machines * (inAll / 4 + (checked * growth * 3) / 4)] as const,
      ['shared content has changed that all take', all] as const,
      ['ten machines have changed', 10 * inAll + (planned.machines - 10) * left] as const,
    ].map(
      ([what, cpuS]) => `| ${what} | ${hours(cpuS)} h | ${minutes(cpuS, planned.cores)} min | ${minutes(cpuS, planned.cores * planned.hosts)} min |`,
    ),
    '',
    `Disk: ${((planned.machines * (sizes.bundleMb + sizes.zipMb) * growth) / 1000).toFixed(0)} GB for all folders and zips, as much again in a shared cache for each revision of everything that it keeps. Memory: ${(cold.peakMb / 1000).toFixed(1)} GB a machine in the making.`,
  ]
}

import { checkValue } from '../bundle/manifest.ts'
import { type Graph, graphOf } from '../model/graph.ts'
import type { Machine } from '../model/machine.ts'
import { writeAssets } from '../site/assets.ts'
import type { SiteInput } from '../site/handover.ts'
import { pageReader } from '../site/read-page.ts'
import { renderSite, type WrittenPage } from '../site/render-site.ts'
import { planSite, type SitePage } from '../site/site-map.ts'
import { labelsOf } from '../site/words/labels.ts'
import type { KeptFiles } from '../source/kept-files.ts'
import { openViews } from './kept-views.ts'
import type { Progress } from './progress.ts'
import { asTold, releaseInputs, type Sound } from './release-inputs.ts'
import { version } from './version.ts'

export interface PagesInput extends Sound {
  preview: boolean
  /** What earlier builds have kept; undefined: trust nothing that is kept. */
  kept: KeptFiles | undefined
  progress: Progress
}

export interface WrittenPages {
  graph: Graph
  pages: readonly SitePage[]
  checkValue: string
}

/** Why the site cannot be made: it has no labels for a language of the machine. */
export function unspokenLanguages({ languages }: Machine): string | undefined {
  const unspoken = languages.filter((language) => !labelsOf(language))
  return unspoken.length > 0 ? `the site has no labels for ${unspoken.join(', ')}; a language is one file in src/site/words/` : undefined
}

/** Writes every page of a checked machine into a folder, with styles, scripts, drawings and pictures, and reads its links; `onPage` is given each as it is written. */
export async function writePages(
  { machine, counts, accepted, preview, kept, progress }: PagesInput,
  dir: string,
  onPage?: (page: WrittenPage, all: readonly SitePage[]) => Promise<void>,
): Promise<WrittenPages | { refused: string }> {
  progress.step('styles, scripts, drawings and pictures')
  const assets = await writeAssets(machine, dir, kept)
  if (assets.broken.length > 0) return { refused: assets.broken.join('\n') }
  const input = siteInput({ machine, counts, accepted, preview }, assets.version)
  const views = await openViews(kept === undefined, progress)
  try {
    progress.step(`${input.pages.length} pages`)
    const { broken } = await renderSite(input, dir, views.render, pageReader(kept), onPage && ((page) => onPage(page, input.pages)))
    if (broken.length > 0) throw new Error(`links that lead nowhere:\n${broken.join('\n')}`)
    return { graph: input.graph, pages: input.pages, checkValue: input.release.checkValue }
  } finally {
    views.close()
  }
}

/** What the pages of a checked machine show. */
export function siteInput({ machine, counts, accepted, preview }: Omit<PagesInput, 'kept' | 'progress'>, assets: string): SiteInput {
  const graph = graphOf(machine)
  const pages = planSite(machine, graph)
  const value = checkValue(releaseInputs({ machine, counts, accepted }))
  const release = { toolVersion: version, checkValue: value, check: counts, accepted: accepted.map(asTold), assets }
  return { machine, graph, pages, addresses: new Set(pages.map(({ address }) => address)), release, preview }
}

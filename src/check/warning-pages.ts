import type { Graph } from '../model/graph.ts'
import type { Hazard } from '../model/hazard.ts'
import type { Machine } from '../model/machine.ts'
import { rememberedOf } from '../source/once.ts'
import { referencesTo } from './references.ts'

/** For a hazard the pages that show a message about it in their source language: their own, or a caution that speaks of it. */
export function warningPages({ references }: Machine, graph: Graph): (hazard: Hazard) => Set<string> {
  const naming = Map.groupBy(referencesTo(references, 'hazard'), ({ id }) => id)
  const including = Map.groupBy(referencesTo(references, 'caution'), ({ id }) => id)
  const pagesOf = (list: ReturnType<typeof referencesTo> | undefined) =>
    (list ?? []).flatMap(({ page }) => (page && page.language === page.page.language ? [page.page] : []))
  return rememberedOf(({ id, caution }) => {
    const named = pagesOf(naming.get(id.value))
    const cautions = [...named.filter(({ collection }) => collection === 'cautions').map(({ name }) => name), ...(caution ? [caution.value] : [])]
    const pages = [...named.filter(({ collection }) => collection !== 'cautions'), ...cautions.flatMap((name) => pagesOf(including.get(name)))]
    return new Set(pages.flatMap((page) => graph.page(page.id)?.id ?? []))
  })
}

/** What to write on a page that shows no message about a hazard. */
export function adviceToWarn({ id, caution }: Hazard): string {
  return caution
    ? `write \`<Include caution="${caution.value}" />\` there before the first step`
    : `write \`<Safety hazard="${id.value}" />\` there before the first step`
}

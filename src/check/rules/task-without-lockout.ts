import type { Graph } from '../../model/graph.ts'
import type { AnyPage, Reference } from '../../model/machine.ts'
import type { Problem } from '../../source/finding.ts'
import { comparePlaces } from '../../source/place.ts'
import { guardedEntry, type Task } from '../guarded-entry.ts'
import type { Rule } from '../rule.ts'

export const taskWithoutLockout: Rule = {
  id: 'task-without-lockout',
  severity: 'warning',
  summary: 'The steps of a job or a recovery need a lockout that its frontmatter does not name.',
  why: 'The lockout stands above the steps only where the frontmatter names it: the reader may be inside before the step that speaks of it.',
  source: 'house rule; common practice: servicing with a guard off is done under lockout, see 29 CFR 1910.147(a)(2)(ii)',
  guards: 'people',

  *check(machine, graph) {
    const pages = [...graph.pagesIn('procedures'), ...graph.pagesIn('alarms')]
    const named = Map.groupBy(machine.references, ({ page }) => page?.page.id)
    for (const page of pages) {
      // Where the author says that no lockout is needed, `unfounded-no-lockout` asks why.
      if (page.frontmatter.withoutLockout || page.frontmatter.lockout?.length === 0) continue
      const references = (named.get(page.id) ?? []).filter((it) => it.page?.language === page.language)
      const missing = [...unnamed(page, references, graph)]
      yield* missing
      if (missing.length === 0 && !page.frontmatter.lockout) yield* withoutAny(page, references, graph)
    }
  },
}

/** Lockouts that a step says to apply. */
function* unnamed(page: Task, references: readonly Reference[], graph: Graph): Iterable<Problem> {
  const { source, elements, frontmatter } = page
  const steps = elements('Step').map(({ position }) => source.place(position?.start.offset ?? 0, position?.end.offset ?? 0))
  const said = new Set<AnyPage>()
  for (const { kind, id, place } of references) {
    const lockout = kind === 'page' ? graph.page(id) : undefined
    if (lockout?.collection !== 'lockout' || said.has(lockout) || frontmatter.lockout?.includes(lockout.name)) continue
    if (!steps.some((step) => comparePlaces(step, place) <= 0 && comparePlaces(place, { ...step, line: step.endLine, column: step.endColumn }) <= 0))
      continue
    said.add(lockout)
    yield {
      message: `a step speaks of lockout \`${lockout.name}\`, and the frontmatter does not name it`,
      place,
      help: `add \`${lockout.name}\` to \`lockout\`, so that it stands above the steps; write \`lockout: []\` where none is needed`,
    }
  }
}

/** A step that takes a guard off or opens a cabinet, at a device that a lockout covers. */
function* withoutAny(page: Task, references: readonly Reference[], graph: Graph): Iterable<Problem> {
  const entry = guardedEntry(page, references, graph)
  if (!entry) return
  const { place, device, lockout } = entry
  yield {
    message: 'a step goes behind a guard, and the page names no lockout',
    place,
    note: `\`${device.tag.value}\`, which the page names, is covered by lockout \`${lockout.name}\``,
    help: `add \`lockout: [${lockout.name}]\`, or answer under \`withoutLockout\` why none is needed`,
  }
}

import type { AnyPage } from '../model/machine.ts'
import type { Context } from './context.ts'

/** The page of the manual whose text is shown here; undefined on a page that is made from the data alone. */
export function pageShown({ graph, here: { view } }: Pick<Context, 'graph' | 'here'>): AnyPage | undefined {
  if (view.kind === 'page' || view.kind === 'lesson-for') return graph.page(view.id)
  return view.kind === 'alarm' ? graph.recoveryOf(view.number) : undefined
}

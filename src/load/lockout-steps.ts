import type { Nodes } from 'mdast'
import { claimedBy, type WrittenPhase, writtenPhases } from '../model/lockout-phases.ts'
import { attributeOf, isElement, type JsxElement } from '../model/mdx-elements.ts'
import type { Collection } from '../model/schema/pages.ts'

/** What is wrong with the place of `<Steps>` or `<Step>` in the sequence of a lockout, and what to do; nothing elsewhere. */
export function misplacedInLockout(
  node: JsxElement,
  around: readonly Nodes[],
  collection: Collection,
): { message: string; note?: string; help: string } | undefined {
  if (node.name === 'Steps') return misplacedSteps(node, around, collection)
  if (node.name === 'Step') return misplacedClaim(node, around)
  return undefined
}

function misplacedSteps(node: JsxElement, around: readonly Nodes[], collection: Collection) {
  const phase = attributeOf(node, 'phase')
  if (collection !== 'lockout')
    return phase === undefined
      ? undefined
      : { message: '`phase` stands on a page that is no lockout', help: 'take it out: only a lockout is put together from phases' }
  if (phase === undefined)
    return {
      message: '`<Steps>` of a lockout has no `phase`',
      note: 'the sequence of a lockout is put together phase by phase, so that no lock hangs too late',
      help: `write \`<Steps phase="…">\` with one of ${writtenPhases.join(', ')}`,
    }
  const outer = around.findLast((it): it is JsxElement => isElement(it) && it.name !== 'Fitted')
  const listed = around.some((it) => it.type === 'listItem' || it.type === 'blockquote')
  if (!outer && !listed) return undefined
  return { message: '`<Steps>` of a phase stands inside something else', help: 'put it at the left edge of the page, or in `<Fitted>`' }
}

function misplacedClaim(node: JsxElement, around: readonly Nodes[]) {
  const steps = around.findLast((it): it is JsxElement => isElement(it) && it.name === 'Steps')
  const phase = steps && attributeOf(steps, 'phase')
  const takes = phase === undefined ? undefined : claimedBy[phase as WrittenPhase]
  const wrong = (['point', 'source'] as const).find((key) => attributeOf(node, key) !== undefined && takes !== key)
  if (!wrong) return undefined
  return {
    message: `a step ${phase === undefined ? 'outside a phase' : `of \`${phase}\``} takes no \`${wrong}\``,
    note: 'isolate, lock and restore go from point to point, dissipate and verify from source to source',
    help: takes === undefined ? `take \`${wrong}\` out` : `write \`${takes}\``,
  }
}

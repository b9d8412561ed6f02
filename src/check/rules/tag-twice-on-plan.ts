import type { SheetText } from '../../model/machine.ts'
import { planSheet } from '../../model/plan-sheet.ts'
import type { Rule } from '../rule.ts'

/** What stands on both sides of an opening: a sender and a receiver under one tag. Common practice. */
const inTwoHalves = new Set(['photoelectric-through-beam', 'light-curtain'])

/** With more of the tags twice than this share, the plan has a list of them as well. */
const shareOfList = 0.25

export const tagTwiceOnPlan: Rule = {
  id: 'tag-twice-on-plan',
  severity: 'warning',
  summary: 'The plan shows the tag of a device at two places.',
  why: 'One of the places is that of another device.',
  source: 'house rule',

  *check(machine, graph) {
    const sheet = planSheet(machine)
    if (!sheet) return
    const byTag = Map.groupBy(graph.sightingsOn(sheet), ({ tag }) => tag)
    const twice = [...byTag].flatMap(([tag, sightings]) => {
      const [first, second] = apart(sightings.map(({ text }) => text))
      return first && second && !inTwoHalves.has(graph.device(tag)?.technology?.value ?? '') ? [{ tag, first, second }] : []
    })
    if (twice.length > 1 && twice.length > shareOfList * byTag.size) return
    for (const { tag, first, second } of twice) {
      yield {
        message: `the plan shows \`${tag}\` at two places`,
        place: second.place,
        related: [{ label: 'it stands here too', place: first.place }],
        help: 'correct the tag at the place where it is wrong',
      }
    }
  },
}

/** The first text and those that do not stand right beside it. */
function apart([first, ...others]: readonly SheetText[]): SheetText[] {
  if (!first) return []
  return [first, ...others.filter(({ x, y }) => Math.hypot(x - first.x, y - first.y) > 3 * first.fontSize)]
}

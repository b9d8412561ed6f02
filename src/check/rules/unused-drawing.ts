import { drawingsReferredTo } from '../../model/coverage.ts'
import { normalise } from '../../model/designation.ts'
import { partlyRead } from '../partly-read.ts'
import type { Rule } from '../rule.ts'

export const unusedDrawing: Rule = {
  id: 'unused-drawing',
  severity: 'note',
  summary: 'Neither a list nor a page refers to a drawing.',
  why: 'The reader meets it only by going through all drawings, or a device that belongs to it names another.',
  source: 'house rule',

  *check(machine, graph) {
    if (partlyRead(machine)) return
    // A number that differs from a used one in spelling alone is reported as such.
    const used = new Set([...drawingsReferredTo(machine)].map(normalise))
    const sighted = new Set(machine.devices.flatMap(({ tag }) => graph.sightingsOf(tag.value).map(({ drawing }) => drawing)))
    for (const drawing of machine.drawings) {
      // One that is replaced is kept for the record; one that shows tags is reached from their devices.
      if (used.has(normalise(drawing.number.value)) || drawing.supersededBy || sighted.has(drawing)) continue
      yield {
        message: `nothing refers to drawing \`${drawing.number.value}\``,
        place: drawing.number.place,
        help: 'name it at its devices or on a page; where it belongs to an option, say so under `fits`',
      }
    }
  },
}

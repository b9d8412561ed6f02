import type { Graph } from '../model/graph.ts'
import type { Part } from '../model/machine.ts'
import { countsPieces } from '../model/unit-of-measure.ts'
import { scaleOf } from '../model/unit-scale.ts'
import type { Problem } from '../source/finding.ts'

/** Why a part can hardly be replaced by another one. Undefined where nothing speaks against it. */
export function unlikeSuccessor(part: Part, next: Part, graph: Graph): { difference: string; related: NonNullable<Problem['related']> } | undefined {
  if (part.unit && next.unit && soldBy(part.unit.value) !== soldBy(next.unit.value)) {
    return {
      difference: `and one is counted in \`${part.unit.value}\`, the other in \`${next.unit.value}\``,
      related: [{ label: 'the unit of the successor', place: next.unit.place }],
    }
  }
  const [old, now] = [part, next].map(({ number }) => graph.devicesWithPart(number.value).flatMap(({ technology }) => technology ?? []))
  if (!old?.[0] || !now?.[0] || now.some(({ value }) => old.some((it) => it.value === value))) return undefined
  return {
    difference: `the part of a \`${now[0].value}\` and not of a \`${old[0].value}\``,
    related: [
      { label: 'a device with the old part', place: old[0].place },
      { label: 'a device with the successor', place: now[0].place },
    ],
  }
}

const packs = /^(?:set|kit|pair|pack|box|bag|juego|par|caja)(?:e?s)?$/i

/** A piece may be replaced by a set or a pack, a length by another length. */
const soldBy = (unit: string) => (countsPieces(unit) || packs.test(unit) ? 'pieces' : (scaleOf(unit.toLowerCase())?.quantity ?? 'pieces'))

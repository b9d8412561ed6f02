import type { Graph } from '../../model/graph.ts'
import type { Machine } from '../../model/machine.ts'
import { isUnit, unitMeant } from '../../model/unit-of-measure.ts'
import type { Located } from '../../source/place.ts'
import { readingsOf } from '../readings.ts'
import type { Rule } from '../rule.ts'

export const unknownUnit: Rule = {
  id: 'unknown-unit',
  severity: 'warning',
  summary: 'A unit is none that we know.',
  why: 'The reader compares a value with a gauge that shows another unit, or cannot tell what is meant.',
  source: 'SI brochure, 9th edition; trade units are common practice',

  *check(machine, graph) {
    const own = new Set(machine.file.ownUnits)
    const unknown = unitsOf(machine, graph).filter(({ value }) => !own.has(value) && !isUnit(value))
    // An export repeats one spelling in every row.
    for (const [unit, uses] of Map.groupBy(unknown, ({ value }) => value)) {
      const [first, ...others] = uses
      if (!first) continue
      const meant = unitMeant(unit)
      yield {
        message: `\`${unit}\` is no unit that we know`,
        place: first.place,
        related: others.slice(0, 2).map(({ place }) => ({ label: 'here too', place })),
        ...(others.length > 2 ? { note: `it is written in ${uses.length} places` } : {}),
        help: meant === undefined ? 'correct it, or name it under `ownUnits` in machine.yaml' : `write \`${meant}\``,
      }
    }
  },
}

/** Every unit that an author wrote. Bills of materials are often in upper case throughout: `PCS`, `M`, `KG`. */
function unitsOf(machine: Machine, graph: Graph): Located<string>[] {
  const { signals, formats, parts, energy } = machine
  const written = [...signals, ...formats].map(({ unit }) => unit)
  const inBill = parts.map(({ unit }) => unit).filter((unit) => unit && !isUnit(unit.value.toLowerCase().replace(/\.$/, '')))
  const onPages = readingsOf(graph).map((reading) => reading.get('unit'))
  const ofEnergy = energy.flatMap(({ magnitude }) => magnitude.map(({ unit }) => unit))
  return [...[...written, ...inBill, ...onPages].flatMap((unit) => (unit ? [unit] : [])), ...ofEnergy]
}

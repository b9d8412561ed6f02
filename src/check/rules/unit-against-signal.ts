import type { Signal } from '../../model/machine.ts'
import { isUnit } from '../../model/unit-of-measure.ts'
import { converted, scaleOf } from '../../model/unit-scale.ts'
import type { Located } from '../../source/place.ts'
import type { Rule } from '../rule.ts'

const thermometers = new Set(['pt100', 'thermistor', 'thermocouple'])
/** A thermometer may be listed by what its card measures. */
const ofThermometers = new Set(['temperature', 'resistance', 'voltage', 'current'])
const electrical = new Set(['current', 'voltage'])

export const unitAgainstSignal: Rule = {
  id: 'unit-against-signal',
  severity: 'warning',
  summary: 'The unit of a signal is not one that its device measures, or differs from the one in its meaning.',
  why: 'The technician expects a value that is a thousand times too large, or in another unit.',
  source: 'house rule',

  *check(machine, graph) {
    const own = new Set(machine.file.ownUnits)
    for (const signal of machine.signals) {
      const { tag, type, unit } = signal
      // A unit that nobody knows is reported as such.
      if (!unit || own.has(unit.value) || !isUnit(unit.value)) continue
      const technology = graph.device(tag.value)?.technology
      const heat = technology && thermometers.has(technology.value) ? technology : undefined
      if ((heat || type.value === 'TC') && !ofThermometers.has(scaleOf(unit.value)?.quantity ?? '')) {
        yield {
          message: `\`${tag.value}\` is a \`${heat?.value ?? 'thermocouple'}\`, and \`${unit.value}\` is no unit of temperature`,
          place: unit.place,
          related: [heat ? { label: 'its technology', place: heat.place } : { label: 'its type', place: type.place }],
          help: 'write the unit of its range: `°C` or `°F`',
        }
        continue
      }
      const said = Object.values(signal.meaning ?? {}).flatMap((meaning) => otherUnit(signal, unit, meaning) ?? [])[0]
      if (!said) continue
      yield {
        message: `the range of \`${tag.value}\` ends at ${said.value} ${unit.value}, and its meaning says ${said.value} ${said.unit}`,
        place: unit.place,
        related: [{ label: 'its meaning', place: said.meaning.place }],
        help: 'correct the unit or the meaning',
      }
    }
  },
}

/** The upper end of a range as the meaning of the signal writes it in another unit: `20 mA at 600 mm`. */
function otherUnit({ high }: Signal, unit: Located<string>, meaning: Located<string>) {
  if (!high || high.value === 0) return undefined
  const ends = [...meaning.value.matchAll(/(?<![\p{L}\d.,])(-?\d+(?:[.,]\d+)?)\s?([\p{L}°µΩ%][\p{L}°µΩ%/²³0-9]*)/gu)].flatMap(
    ([, number = '', written = '']) => {
      const quantity = scaleOf(written)?.quantity
      return Number(number.replace(',', '.')) === high.value && quantity && !electrical.has(quantity) ? [written] : []
    },
  )
  const known = scaleOf(unit.value)
  const [first] = ends
  if (!known || first === undefined || ends.some((written) => converted(high.value, written, unit.value) === high.value)) return undefined
  return { value: high.value, unit: first, meaning }
}

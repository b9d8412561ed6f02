import { largestBleederForLoad, minimumLoadVerdict } from '../../signals/input-load.ts'
import { bleederText } from '../bleeder.ts'
import { checkouts, figure, oncePerPlace } from '../checkouts.ts'
import type { Rule } from '../rule.ts'
import { switchedInputs } from '../switched-inputs.ts'

export const loadBelowMinimum: Rule = {
  id: 'load-below-minimum',
  severity: 'warning',
  summary: 'A card draws less current than a device needs to switch.',
  why: 'A 2-wire device lives on the current of its load: with too little it does not switch surely.',
  source: 'IEC 60947-5-2, minimum operational current; IEC 61131-2, current of an input',

  *check(_, graph) {
    const isNew = oncePerPlace()
    for (const { wired, type, limits, cardName } of switchedInputs(graph.made(checkouts))) {
      const { device, values, ofCard } = wired
      const [least, drawn] = [values.placed('minimumLoadMa'), ofCard.placed('inputCurrentMa')]
      if (!least) continue
      const verdict = minimumLoadVerdict(least.value, limits, drawn?.value)
      if (verdict === 'pass' || verdict === 'no verdict' || !isNew(least.place, type.place)) continue
      const [supplyV, dropV] = [(wired.supply?.lowestV ?? wired.supply?.nominalV)?.value, values.number('dropV')]
      const bleeder = drawn && bleederText(largestBleederForLoad({ supplyV, dropV, minimumLoadMa: least.value, inputCurrentMa: drawn.value }), wired)
      yield {
        message: `\`${device.tag.value}\` needs a load of ${figure(least.value)} mA, and ${cardName} ${drawn ? 'draws' : 'is sure to draw'} ${figure(drawn?.value ?? limits.neededMa.value)} mA`,
        place: least.place,
        related: [{ label: 'the card', place: drawn?.place ?? type.place }],
        help: drawn
          ? `fit ${bleeder ?? 'a resistor'}${bleeder ? ',' : ''} across the input, a card that draws more, or a device that needs less`
          : 'give `inputCurrentMa` of the card, fit a resistor across the input, or a card of another type',
      }
    }
  },
}

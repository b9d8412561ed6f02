import { type Wired, wireOhm } from '../../checkout/wiring.ts'
import { atLeast, atMost } from '../../signals/verdict.ts'
import { voltageWindows } from '../../signals/voltage-window.ts'
import { checkouts, figure, oncePerPlace } from '../checkouts.ts'
import { drivenLoad } from '../driven-load.ts'
import type { Rule } from '../rule.ts'

/** The most that an output drops, for want of the card's own figure. Source: IEC 61131-2, from memory. */
const mostDropV = 3

export const loadVoltageOffRating: Rule = {
  id: 'load-voltage-off-rating',
  severity: 'error',
  summary: 'The supply, less output and cable, lies outside what a coil or lamp is made for.',
  why: 'A coil with too little does not pull in, one with too much burns out.',
  source: 'IEC 60947-4-1 for contactors, from memory; common practice for valves; otherwise the data sheet',

  *check(_, graph) {
    const isNew = oncePerPlace()
    for (const { device, checkout, wired } of graph.made(checkouts))
      for (const it of wired) {
        const load = drivenLoad(it)
        const shares = sharesOf(it, checkout.technology)
        if (!load || !it.supply || !shares) continue
        const { nominalV } = it.supply
        const cableV = 2 * load.currentA * (wireOhm(it)?.value ?? 0)
        const dropOfCard = it.ofCard.placed('dropV')
        const drop = dropOfCard?.value
        // What is not given counts so that only what is sure to be wrong is found.
        const [most, least] = [nominalV.value - cableV - (drop ?? 0), nominalV.value - cableV - (drop ?? mostDropV)]
        const [low, high] = [shares.low * load.ratedV.value, shares.high * load.ratedV.value]
        const isLow = !atLeast(most, low)
        // Where it is the drop alone that is too much, the card is wrong, and each of its loads shows it.
        const cause = dropOfCard && isLow && atLeast(most + dropOfCard.value, low) ? dropOfCard : load.ratedV
        if ((!isLow && atMost(least, high)) || !isNew(cause.place, nominalV.place)) continue
        yield {
          message: isLow
            ? `\`${device.tag.value}\` gets ${figure(most)} V at most, and needs ${figure(low)} V`
            : `\`${device.tag.value}\` gets ${figure(least)} V or more, and bears ${figure(high)} V`,
          place: cause.place,
          related: [{ label: 'the supply', place: nominalV.place }],
          note: `${figure(nominalV.value)} V less ${figure(drop ?? (isLow ? 0 : mostDropV))} V of the output and ${figure(cableV)} V of the cable; ${figure(100 * shares.low)} to ${figure(100 * shares.high)} % of ${figure(load.ratedV.value)} V are right`,
          help: 'correct the rated voltage or the supply, or use a thicker cable',
        }
      }
  },
}

const usualShares: Readonly<Record<string, (typeof voltageWindows)['valve'] | (typeof voltageWindows)['contactor must close']>> = {
  'solenoid-valve': voltageWindows.valve,
  'safety-interlock': voltageWindows.valve,
  contactor: voltageWindows['contactor must close'],
}

/** The data sheet's own, else those that hold for every device of the kind. */
function sharesOf({ values }: Wired, technology: string): { low: number; high: number } | undefined {
  const usual = usualShares[technology]
  const [low, high] = [values.number('lowestShare')?.value ?? usual?.low.value, values.number('highestShare')?.value ?? usual?.high.value]
  return low === undefined || high === undefined || low > high ? undefined : { low, high }
}

import { atMost } from '../../signals/verdict.ts'
import { checkouts, figure, oncePerPlace } from '../checkouts.ts'
import { drivenLoad } from '../driven-load.ts'
import type { Rule } from '../rule.ts'

export const outputOverloaded: Rule = {
  id: 'output-overloaded',
  severity: 'error',
  summary: 'A coil or lamp takes more current than the output of its card may carry.',
  why: 'The output switches itself off, or burns out.',
  source: 'IEC 61131-2, rated current of d.c. digital outputs',

  *check(_, graph) {
    const isNew = oncePerPlace()
    for (const { device, wired } of graph.made(checkouts))
      for (const it of wired) {
        const load = drivenLoad(it)
        const most = it.ofCard.placed('ratedA')
        if (!load || !most || atMost(load.currentA, most.value) || !isNew(load.ratedW.place, most.place)) continue
        yield {
          message: `\`${device.tag.value}\` takes ${figure(load.currentA)} A, and an output of card \`${it.signal?.card?.value}\` carries ${figure(most.value)} A`,
          place: load.ratedW.place,
          related: [{ label: 'the card', place: most.place }],
          note: `${figure(load.ratedW.value)} W at ${figure(load.ratedV.value)} V`,
          help: 'put a relay between them, use an output of a higher rating, or correct the data',
        }
      }
  },
}

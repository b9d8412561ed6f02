import { ohmPerKm } from '../../checkout/wiring.ts'
import { cableDropPercent, mostDropPercent, smallestSize } from '../../signals/cable-drop.ts'
import { atMost } from '../../signals/verdict.ts'
import { checkouts, figure } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

export const cableDropTooHigh: Rule = {
  id: 'cable-drop-too-high',
  severity: 'warning',
  summary: 'The cable of a load drops more of the supply than it may.',
  why: 'A valve or contactor pulls in when it is cold and lets go when it is warm.',
  source: 'IEC 60204-1, 12.5, from memory',

  *check(_, graph) {
    for (const { device, wired } of graph.made(checkouts)) {
      const seen = new Set<string>()
      for (const it of wired) {
        const { values, supply, signal } = it
        const length = values.placed('cableLengthM')
        const [ratedV, ratedW] = [values.number('coilV') ?? values.number('ratedV'), values.number('coilW') ?? values.number('ratedW')]
        if (!length || !supply || !ratedV || !ratedW || !/^S?DO$/.test(signal?.type.value ?? '') || seen.has(device.tag.value)) continue
        const given = { loadCurrentA: ratedW.value / ratedV.value, lengthM: length.value, resistanceOhmPerKm: ohmPerKm(it) }
        const drop = cableDropPercent({ ...given, supplyV: supply.nominalV.value })
        if (!('value' in drop) || atMost(drop.value, mostDropPercent.value)) continue
        seen.add(device.tag.value)
        const mostV = (mostDropPercent.value / 100) * supply.nominalV.value
        const found = smallestSize(given, values.choice('conductor') ?? 'class 5', mostV)
        const size = found && 'areaMm2' in found ? found : undefined
        yield {
          message: `the cable of \`${device.tag.value}\` drops ${figure(drop.value)} % of the supply, and ${figure(mostDropPercent.value)} % is the most`,
          place: length.place,
          note: `${drop.formula}: I = ${figure(given.loadCurrentA)} A, L = ${figure(length.value)} m`,
          help: `use ${size ? `${size.areaMm2} mm² or more` : 'a larger cross-section'}, or a shorter way, or correct the cable`,
        }
      }
    }
  },
}

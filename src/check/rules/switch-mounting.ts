import { eventsOf } from '../../checkout/proximity.ts'
import type { CheckoutName } from '../../model/schema/checkout-values.ts'
import { standardTargetSide } from '../../signals/proximity.ts'
import { type MountingFault, mountingFaults, touchClearanceFraction } from '../../signals/proximity-mounting.ts'
import { checkouts } from '../checkouts.ts'
import type { Rule } from '../rule.ts'

const texts: Readonly<Record<Exclude<MountingFault, 'gap-beyond-assured'>, { says: string; key: CheckoutName; help: string }>> = {
  'non-flush-mounted-flush': {
    says: 'is not made for flush mounting, and is mounted flush',
    key: 'mount',
    help: 'free its face of metal, or fit a flush one',
  },
  'may-touch': {
    says: `can be touched by its target: less than ${100 * touchClearanceFraction} % of the rated distance is left`,
    key: 'vibrationMm',
    help: 'widen the gap, or steady the target',
  },
  'target-too-small': {
    says: 'has a target smaller than the standard one, so no distance can be told for it',
    key: 'targetSideMm',
    help: 'take the distance from the curve of the data sheet, or fit a larger target',
  },
  'target-too-fast': { says: 'is passed more often than it can switch', key: 'eventsHz', help: 'fit a faster switch, or fewer targets' },
}

export const switchMounting: Rule = {
  id: 'switch-mounting',
  severity: 'warning',
  summary: 'A proximity switch is mounted or used in a way that its data do not allow.',
  why: 'It switches when it should not, misses targets, or is struck by them.',
  source: 'IEC 60947-5-2; the clearance to a moving target is common practice',

  *check(_, graph) {
    for (const { device, checkout, wired } of graph.made(checkouts)) {
      const values = wired[0]?.values
      if ((checkout.technology !== 'inductive' && checkout.technology !== 'capacitive') || !values) continue
      const number = (name: Parameters<typeof values.number>[0]) => values.number(name)?.value
      const side = standardTargetSide({ ratedDistanceMm: number('ratedDistanceMm'), faceDiameterMm: number('faceDiameterMm') })
      const events = eventsOf(values)
      const faults = mountingFaults({
        type: values.choice('mounting'),
        mount: values.choice('mount'),
        gapMm: number('gapMm'),
        vibrationMm: number('vibrationMm'),
        targetSideMm: number('targetSideMm'),
        eventsHz: events?.stated.value,
        ratedDistanceMm: number('ratedDistanceMm'),
        standardSideMm: 'value' in side ? side.value : undefined,
        ratedHz: number('ratedHz'),
      })
      for (const fault of faults) {
        if (fault === 'gap-beyond-assured') continue
        const { says, key, help } = texts[fault]
        const named = key === 'eventsHz' ? events?.of.place : undefined
        const place = named ?? values.entries.flatMap(({ keys }) => keys).find((it) => it.value === key)?.place ?? device.tag.place
        yield { message: `\`${device.tag.value}\` ${says}`, place, help }
      }
    }
  },
}

import { chargedByLine } from '../../energy/charged-by-line.ts'
import { enclosureLimitS, residualVoltage } from '../../energy/residual-voltage.ts'
import type { EnergyStore } from '../../model/energy-store.ts'
import { derivation, secondsText, storing } from '../energy-stores.ts'
import type { Rule } from '../rule.ts'

export const missingDelayNotice: Rule = {
  id: 'missing-delay-notice',
  severity: 'error',
  summary: 'A capacitor takes more than 5 s to fall to 60 V, and nothing says that its enclosure carries a delay notice.',
  why: 'Who opens the enclosure does not read this manual first.',
  source: 'IEC 60204-1, 6.2.4; NFPA 79-2024, 6.5.1',

  *check(machine) {
    for (const { source, results } of storing(machine)) {
      const { id, delayNoticeS, waitS = 0 } = source
      if (delayNoticeS) continue
      const capacitors = results.flatMap(({ store }) => (store.kind === 'capacitor' ? [{ store, ...judged(store) }] : []))
      const [slow] = capacitors.filter(({ time }) => time).sort((a, b) => (b.time?.value ?? 0) - (a.time?.value ?? 0))
      const unknown = capacitors.find(({ isUnknown }) => isUnknown && waitS > enclosureLimitS)
      const first = slow ?? unknown
      if (!first) continue
      const needs = slow?.time ? `takes ${secondsText(slow.time.value)} to fall to 60 V` : `is left for ${waitS} s`
      yield {
        message: `energy source \`${id.value}\` ${needs}, and no delay notice is stated`,
        place: first.store.place,
        ...(slow?.time ? { note: derivation(slow.time) } : {}),
        help: 'see that the enclosure carries a notice with the time to wait before it is opened, and write that time under `delayNoticeS`',
      }
    }
  },
}

/** The time of a capacitor that is too slow; whether it cannot be told. */
function judged({ given }: EnergyStore) {
  const { capacitanceF, resistanceOhm, startVoltageV } = chargedByLine(given)
  const result = residualVoltage({ capacitanceF, resistanceOhm, startVoltageV })
  if (!('verdict' in result)) return { isUnknown: 'notComputed' in result, time: undefined }
  return { isUnknown: false, time: result.verdict === 'too-slow' ? result.time : undefined }
}

import type { Result } from '../../energy/law.ts'
import type { EnergyStore } from '../../model/energy-store.ts'
import { storing } from '../energy-stores.ts'
import type { Rule } from '../rule.ts'

export const incompleteStore: Rule = {
  id: 'incomplete-store',
  severity: 'warning',
  summary: 'The stored energy or the waiting time of an energy source is not computed: something is missing.',
  why: 'The isolation board shows no figure there, and nobody knows how long to wait.',
  source: '29 CFR 1910.147(d)(1) and (d)(5)',

  *check(machine) {
    for (const { source, results } of storing(machine)) {
      for (const { store, energy, wait } of results) {
        // A time that the author states stands in for the computed one.
        const forWait = source.waitS === undefined && !isVentUnknown(store) ? missingIn(wait) : []
        const missing = [...new Set([...missingIn(energy), ...forWait])]
        if (missing.length === 0) continue
        const what = missingIn(energy).length === 0 ? 'waiting time' : forWait.length === 0 ? 'stored energy' : 'stored energy and waiting time'
        yield {
          message: `${what} of energy source \`${source.id.value}\` not computed: its ${store.kind} has no ${missing.map((it) => `\`${it}\``).join(', ')}`,
          place: store.place,
          ...(missing.includes('harmlessAt') && store.kind === 'hot-body'
            ? { note: 'no confirmed threshold of ISO 13732-1 fits: state your own limit under `harmlessAt`' }
            : {}),
          help:
            forWait.length > 0
              ? 'give it, or state `waitS` with its `waitBasis` from a label, a data sheet or a measurement'
              : 'give it from the nameplate or a data sheet',
        }
      }
    }
  },
}

const missingIn = (result: Result | undefined) => (result && 'notComputed' in result ? result.notComputed : [])

/** Of a vent that nobody says anything of no time is expected: the gauge tells when a receiver is empty. */
const isVentUnknown = ({ kind, given }: EnergyStore) =>
  kind === 'receiver' &&
  [given.sonicConductanceM3PerSPa, given.effectiveAreaM2, given.criticalRatio, given.harmlessPressurePa].every((it) => it === undefined)

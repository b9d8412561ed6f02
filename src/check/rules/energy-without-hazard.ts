import type { Rule } from '../rule.ts'

export const energyWithoutHazard: Rule = {
  id: 'energy-without-hazard',
  severity: 'warning',
  summary: 'An energy source names none of the hazards of hazards.yaml, and others do.',
  why: 'Nothing can tell whether the lockouts that cut it off warn of what it does.',
  source: '29 CFR 1910.147(d)(1); common practice: each energy traces to the risk assessment',

  *check({ energy, hazards, unread }) {
    // A list in which none names one is kept without them.
    if (!hazards || unread.has('hazard') || energy.every((source) => source.hazards.length === 0)) return
    for (const source of energy) {
      if (source.hazards.length > 0) continue
      yield {
        message: `energy source \`${source.id.value}\` names no hazard of hazards.yaml`,
        place: source.placeOf('hazard'),
        help: 'name under `hazards` the ones that it brings, and declare in hazards.yaml what is missing there',
      }
    }
  },
}

import type { EnergySource } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'

export const gaugeOfTwoEnergies: Rule = {
  id: 'gauge-of-two-energies',
  severity: 'error',
  summary: 'One gauge or valve is to prove that two energies of different forms are gone.',
  why: 'A gauge hangs on one pipe. At the other the reader sees zero, and the pressure is still there.',
  source: 'common practice; 29 CFR 1910.147(d)(6): verify that the isolation has worked',
  guards: 'people',

  *check({ energy }, graph) {
    const first = new Map<string, EnergySource>()
    for (const source of energy.filter(({ verify }) => verify.by.includes('gauge')))
      for (const { value: tag, place } of source.verify.tags) {
        const before = first.get(tag)
        first.set(tag, before ?? source)
        // What people try to start with, and what has an address, may stand for any energy.
        if (!before || before.form === source.form || graph.signalsOf(tag).length > 0) continue
        const other = before.verify.tags.find(({ value }) => value === tag)
        yield {
          message: `\`${tag}\` is to prove \`${source.id.value}\`, which is ${source.form}, and \`${before.id.value}\`, which is ${before.form}`,
          place,
          related: other ? [{ label: `it proves \`${before.id.value}\` here`, place: other.place }] : [],
          help: 'look at the drawing on which pipe it is, and name the gauge of the other',
        }
      }
  },
}

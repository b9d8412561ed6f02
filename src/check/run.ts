import type { Loaded } from '../load/loaded.ts'
import type { Machine } from '../model/machine.ts'
import { compareFindings, type Finding } from '../source/finding.ts'
import type { Rule } from './rule.ts'

/** Runs every rule over one machine; the findings come in their one order. */
export function runRules(machine: Machine, rules: readonly Rule[]): Finding[] {
  const findings = rules.flatMap(({ id, severity, check }) => [...check(machine)].map((problem): Finding => ({ ...problem, rule: id, severity })))
  return findings.sort(compareFindings)
}

/** What the loaders and the rules find, over every unit. What holds for some units only says for which. */
export function checkLoaded({ machines, findings }: Pick<Loaded, 'machines' | 'findings'>, rules: readonly Rule[]): Finding[] {
  const merged = new Map<string, { finding: Finding; serials: string[] }>()
  for (const machine of machines) {
    for (const finding of runRules(machine, rules)) {
      const key = JSON.stringify([finding.rule, finding.place, finding.message])
      const known = merged.get(key)
      if (known) known.serials.push(machine.unit.serial)
      else merged.set(key, { finding, serials: [machine.unit.serial] })
    }
  }
  const all = [...merged.values()].map(
    ({ finding, serials }): Finding => (serials.length === machines.length ? finding : withSerials(finding, serials)),
  )
  return [...findings, ...all].sort(compareFindings)
}

function withSerials(finding: Finding, serials: readonly string[]): Finding {
  const fact = `this holds for serial no. ${serials.join(', ')}, not for every unit`
  return { ...finding, note: finding.note ? `${finding.note}; ${fact}` : fact }
}

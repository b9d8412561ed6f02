import { graphOf } from '../model/graph.ts'
import type { Machine } from '../model/machine.ts'
import { optionsKey } from '../model/units.ts'
import { compareFindings, type Finding } from '../source/finding.ts'
import type { Rule } from './rule.ts'

/** Runs every rule over one machine; the findings come in their one order. Without a day, that of the revision is meant. */
export function runRules(machine: Machine, rules: readonly Rule[], today = machine.file.date): Finding[] {
  const graph = graphOf(machine)
  const findings = rules.flatMap(({ id, severity, check }) =>
    [...check(machine, graph, today)].map((problem): Finding => ({ ...problem, rule: id, severity })),
  )
  return findings.sort(compareFindings)
}

/**
 * What the loaders and the rules find over every unit, each finding once. One that holds for some of the units
 * says for which.
 */
export function checkLoaded(
  loaded: { machines: readonly Machine[]; findings: readonly Finding[] },
  rules: readonly Rule[],
  today?: string,
): Finding[] {
  const { machines, findings } = loaded
  const merged = new Map<string, { finding: Finding; machines: Set<Machine> }>()
  for (const machine of machines) {
    for (const finding of runRules(machine, rules, today)) {
      const key = JSON.stringify([finding.rule, finding.place, finding.message])
      const known = merged.get(key)
      if (known) known.machines.add(machine)
      else merged.set(key, { finding, machines: new Set([machine]) })
    }
  }
  const found = [...merged.values()].map(({ finding, machines: affected }) =>
    affected.size === machines.length ? finding : { ...finding, note: withSerials(finding.note, [...affected]) },
  )
  return [...findings, ...found].sort(compareFindings)
}

function withSerials(note: string | undefined, affected: readonly Machine[]): string {
  const serials = serialsOf(affected)
  const listed = serials.length > 6 ? `${serials.slice(0, 5).join(', ')} and ${serials.length - 5} more` : serials.join(', ')
  const fact = `this holds for serial no. ${listed}, not for every unit`
  return note ? `${note}; ${fact}` : fact
}

/** Every unit with the options of one of these machines, in the order of machine.yaml: they are checked as one. */
function serialsOf(machines: readonly Machine[]): string[] {
  const keys = new Set(machines.map(({ unit }) => optionsKey(unit.fitted)))
  return (machines[0]?.file.units ?? []).flatMap(({ serial, fitted }) => (keys.has(optionsKey(fitted)) ? [serial] : []))
}

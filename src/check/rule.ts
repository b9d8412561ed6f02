import type { Graph } from '../model/graph.ts'
import type { Machine } from '../model/machine.ts'
import type { Problem, RuleTexts } from '../source/finding.ts'

/** A rule is its texts and one pure generator. It reads the machine: no disk, no clock, no other rule. `today` as `2026-11-25`. */
export interface Rule extends RuleTexts {
  check(machine: Machine, graph: Graph, today: string): Iterable<Problem>
}

import { unknownNames } from '../references.ts'
import type { Rule } from '../rule.ts'

export const unknownSkill: Rule = {
  id: 'unknown-skill',
  severity: 'error',
  summary: 'A role needs a skill that training.yaml does not have.',
  why: 'Nobody could reach it, and the gap would never close.',
  source: 'house rule',

  *check(machine) {
    yield* unknownNames(machine, {
      kind: 'skill',
      message: 'training.yaml has no skill',
      noun: 'skill',
      otherwise: 'add it under `skills`, with the lessons that lead to it, or correct the name',
    })
  },
}

import { expect, test } from 'vitest'
import { everyRule } from '../../src/cli/every-rule.ts'
import { loadRules } from '../../src/load/load-rules.ts'
import type { RuleTexts } from '../../src/source/finding.ts'
import { type Changes, judgeLoaded, loadSound } from '../sound-machine.ts'

const machineYaml = loadSound().texts.get('machine.yaml')
const withRules = (rules: string): Changes =>
  new Map([
    ['machine.yaml', `${machineYaml}rules: ${rules}\n`],
    ['pages/alarms/clamp.mdx', undefined],
  ])
const accepted = (...entries: Record<string, string>[]): Changes =>
  new Map([
    ['accepted.yaml', JSON.stringify(entries)],
    ['pages/alarms/clamp.mdx', undefined],
  ])
const entry = {
  rule: 'alarm-without-recovery',
  file: 'data/alarms.csv',
  message: 'alarm `A01` has no recovery',
  reason: 'the page comes with the next revision',
  until: '2026-12-31',
}
const judged = (changes: Changes) => judgeLoaded(loadSound(changes))
const told = (changes: Changes) => judged(changes).findings.map(({ rule, severity }) => `${rule} ${severity}`)

test.each(['error', 'warning', 'note'])('machine.yaml makes a rule that guards nobody %s', (severity) => {
  expect(told(withRules(`{ alarm-without-recovery: ${severity} }`))).toEqual([`alarm-without-recovery ${severity}`])
})

test('an accepted finding is told with its reason, and with the severity that machine.yaml gives it', () => {
  const { findings, accepted: left } = judged(new Map([...accepted(entry), ...withRules('{ alarm-without-recovery: error }')]))
  expect(findings).toEqual([])
  expect(left.map(({ finding, acceptance }) => [finding.severity, finding.message, acceptance.reason])).toEqual([
    ['error', entry.message, entry.reason],
  ])
})

test.each([
  ['no reason', { reason: '' }, 'wrong-type'],
  ['a reason of two words', { reason: 'not yet' }, 'wrong-type'],
  ['a day that does not exist', { until: '2026-02-29' }, 'wrong-type'],
  ['a day in another order', { until: '31.12.2026' }, 'wrong-type'],
])('an entry with %s is an error, and nothing is accepted', (_, change, rule) => {
  expect(told(accepted({ ...entry, ...change }))).toEqual([`${rule} error`, 'alarm-without-recovery warning'])
})

test('an entry without a date is an error at the entry', () => {
  const { until: _, ...undated } = entry
  expect(told(accepted(undated))).toEqual(['missing-key error', 'alarm-without-recovery warning'])
})

test('an error of a file is lowered only where nothing is lost but a translation that was never shown', () => {
  const open = Object.values<RuleTexts>(loadRules).filter(({ severity, guards }) => severity === 'error' && !guards)
  expect(open.map(({ id }) => id)).toEqual(['orphan-translation'])
})

test.each(['source-without-isolation', 'stored-energy-without-release', 'task-without-lockout', 'incomplete-safety-message', 'unknown-caution'])(
  '%s guards people',
  (id) => expect(everyRule.find((rule) => rule.id === id)?.guards).toBe('people'),
)

import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { Rule } from '../../src/check/rule.ts'
import { rules } from '../../src/check/rules.ts'
import { checkLoaded, runRules } from '../../src/check/run.ts'
import type { Machine } from '../../src/model/machine.ts'
import type { Problem } from '../../src/source/finding.ts'
import { loadSound } from '../sound-machine.ts'

const texts = { severity: 'error', summary: '', why: '', source: 'house rule' } as const
const rule = (id: string, check: (machine: Machine) => Iterable<Problem>): Rule => ({ ...texts, id, check })
const at = (file: string, line: number, column = 1) => ({ file, line, column, endLine: line, endColumn: column + 1 })

/** The sound machine in as many units as option lists. */
function units(...fitted: string[][]) {
  const text = readFileSync('tests/fixtures/sound-machine/machine.yaml', 'utf8')
  const list = fitted.map((options, index) => `  - { serial: '${index + 1}', fitted: [${options.join(', ')}] }\n`).join('')
  const machine = text.replace(/units:\n(?: {2}- .*\n)+/, `units:\n${list}`).replace('options: { fan: Fan }', 'options: { fan: Fan, pump: Pump }')
  return loadSound(new Map([['machine.yaml', machine]]))
}

test('findings come in one order, whatever order rules yield in', () => {
  const problems = [at('b', 1), at('a', 10), at('a', 2, 5), at('a', 2, 1), at('B', 1)].map((place) => ({ message: 'x', place }))
  const [machine] = units([]).machines
  if (!machine) throw new Error('no machine')
  const found = (order: Problem[]) => runRules(machine, [rule('z-rule', () => order), rule('a-rule', () => order.toReversed())])
  expect(found(problems)).toEqual(found(problems.toReversed()))
  expect(found(problems).map(({ place, rule }) => `${place.file}:${place.line}:${place.column} ${rule}`)).toEqual([
    'B:1:1 a-rule',
    'B:1:1 z-rule',
    'a:2:1 a-rule',
    'a:2:1 z-rule',
    'a:2:5 a-rule',
    'a:2:5 z-rule',
    'a:10:1 a-rule',
    'a:10:1 z-rule',
    'b:1:1 a-rule',
    'b:1:1 z-rule',
  ])
})

const without = (option: string) =>
  rule(`no-${option}`, ({ unit }) => (unit.fitted.includes(option) ? [] : [{ message: `no ${option}`, place: at('a', 1) }]))

test.each<[string, string[][], (string | undefined)[]]>([
  ['every unit', [[], [], ['pump']], [undefined]],
  ['some units, in the order of machine.yaml', [[], ['fan'], ['pump'], []], ['this holds for serial no. 1, 3, 4, not for every unit']],
  ['units whose options come in another order', [['pump', 'fan'], [], ['fan', 'pump']], ['this holds for serial no. 2, not for every unit']],
  ['many units', [['fan'], ...Array.from({ length: 9 }, () => [])], ['this holds for serial no. 2, 3, 4, 5, 6 and 4 more, not for every unit']],
  ['no unit', [['fan']], []],
])('a finding that holds for %s comes once', (_, fitted, notes) => {
  expect(checkLoaded(units(...fitted), [without('fan')]).map(({ note }) => note)).toEqual(notes)
})

test('the note of a rule stays before the serial numbers', () => {
  const noted = rule('noted', ({ unit }) => (unit.fitted.includes('fan') ? [] : [{ message: 'x', place: at('a', 1), note: 'a fact' }]))
  expect(checkLoaded(units([], ['fan']), [noted])[0]?.note).toBe('a fact; this holds for serial no. 1, not for every unit')
})

test('a problem that a rule yields twice is one finding', () => {
  const twice = rule('twice', () => [1, 2].map(() => ({ message: 'x', place: at('a', 1) })))
  expect(checkLoaded(units([], ['fan']), [twice])).toHaveLength(1)
})

test('what the loaders found stands among what the rules find', () => {
  const loaded = loadSound(new Map([['pages/front/test.mdx', '---\ntitle: Test\n---\n<Tag id="PS-103" /> {4-20} <Tag id="PS-104" />\n']]))
  expect(checkLoaded(loaded, rules).map(({ rule, place }) => [rule, place.column])).toEqual([
    ['unknown-tag', 10],
    ['expression-in-prose', 21],
    ['unknown-tag', 37],
  ])
})

test('every rule says what, why and whence, in one form', () => {
  for (const { id, summary, why, source } of rules) {
    expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)+$/)
    expect([id, summary]).toEqual([id, expect.stringMatching(/^[A-Z].*\.$/)])
    expect([id, why]).toEqual([id, expect.stringMatching(/^[A-Z].*\.$/)])
    expect([id, source]).toEqual([id, expect.stringMatching(/\S/)])
  }
  expect(rules.map(({ id }) => id)).toEqual(rules.map(({ id }) => id).sort())
})

import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { everyRule } from '../../src/cli/every-rule.ts'
import { explainRule, listRules } from '../../src/report/explain.ts'
import { readRulePage } from '../../src/report/rule-page.ts'
import { readCases } from '../cases.ts'

const paged = everyRule.filter(({ id }) => existsSync(`tests/fixtures/broken/${id}.md`))
const pageOf = (id: string) => readFileSync(`tests/fixtures/broken/${id}.md`, 'utf8')

test('the example is the first case that fires, as the Markdown parser of the tests reads it', () => {
  expect(paged.length).toBeGreaterThan(60)
  for (const { id } of paged) {
    const first = readCases(pageOf(id)).find(({ expected }) => new RegExp(`\\[${id}\\]$`, 'm').test(expected.value))
    expect(readRulePage(pageOf(id), id).example, id).toEqual({ name: first?.name, report: first?.expected.value.trim() })
  }
})

test('advice of other rules on the page is left out', () => {
  const { waysOut } = readRulePage(pageOf('silenced-guard'), 'silenced-guard')
  expect(waysOut).toEqual(['remove the line, and correct what the rule finds', 'take the entry out, and correct what the rule finds'])
})

describe('a rule with its page', () => {
  const rule = { id: 'some-rule', severity: 'error', summary: 'What.', why: 'Why.', source: 'house rule', guards: 'people' } as const
  const page =
    '# some-rule\n\nWhat.\nWhy.\nAnd more.\n\n## a `case`\n\n```mdx a.mdx\n## no case\n```\n\n```findings\na.mdx:1:1: error: wrong [some-rule]\n\n  1 | x\n\n  help: write y\n```\n'

  test('is told whole', () => {
    expect(explainRule(rule, readRulePage(page, rule.id))).toBe(
      'some-rule (error)\n\n  What.\n  And more.\n\nWhy it matters\n  Why.\n\nWhere it comes from\n  house rule\n\nWhat may be set\n  It guards people: it can be raised, and neither lowered nor accepted.\n\nExample: a `case`\n  a.mdx:1:1: error: wrong [some-rule]\n\n    1 | x\n\n    help: write y\n\nWays out, from its examples\n  write y\n',
    )
  })

  test('is one line of the list, with its guard', () => {
    expect(listRules([{ title: 'Rules', rules: [rule] }])).toMatch(/^Rules\n {2}some-rule {2}error {4}people {2}What\.\n/)
  })
})

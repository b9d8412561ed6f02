import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { advice, suggestFrom } from '../check/suggest.ts'
import { explainRule, listRules } from '../report/explain.ts'
import { readRulePage } from '../report/rule-page.ts'
import { compare } from '../source/place.ts'
import { everyRule, ruleGroups } from './every-rule.ts'
import type { Options } from './options.ts'
import { packageDir } from './paths.ts'

export async function run({ words: [id] }: Options): Promise<number> {
  if (id === undefined) {
    const sorted = ruleGroups.map(({ title, rules }) => ({ title, rules: rules.toSorted((a, b) => compare(a.id, b.id)) }))
    process.stdout.write(listRules(sorted))
    return 0
  }
  const rule = everyRule.find((it) => it.id === id)
  if (!rule) {
    const help = advice(suggestFrom(everyRule.map((it) => it.id))(id), 'rule', '`fettle explain` lists them')
    process.stderr.write(`fettle explain: there is no rule \`${id}\`; ${help}\n`)
    return 2
  }
  // What only a real disk shows has no page of cases.
  const page = join(packageDir, 'tests/fixtures/broken', `${rule.id}.md`)
  process.stdout.write(explainRule(rule, existsSync(page) ? readRulePage(readFileSync(page, 'utf8'), rule.id) : undefined))
  return 0
}

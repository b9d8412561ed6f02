import { explainRule } from '../report/explain.ts'
import { compare } from '../source/place.ts'
import { everyRule } from './every-rule.ts'
import type { Options } from './options.ts'

export async function run({ words: [id] }: Options): Promise<number> {
  const all = everyRule.toSorted((a, b) => compare(a.id, b.id))
  if (id === undefined) {
    const width = Math.max(...all.map((rule) => rule.id.length))
    for (const rule of all) process.stdout.write(`${rule.id.padEnd(width)}  ${rule.severity.padEnd(7)}  ${rule.summary}\n`)
    return 0
  }
  const rule = all.find((it) => it.id === id)
  if (!rule) {
    process.stderr.write(`fettle explain: there is no rule \`${id}\`; \`fettle explain\` lists them\n`)
    return 2
  }
  process.stdout.write(explainRule(rule))
  return 0
}

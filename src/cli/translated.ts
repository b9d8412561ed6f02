import { existsSync, writeFileSync } from 'node:fs'
import { basename, dirname, resolve } from 'node:path'
import { readText } from '../load/decode.ts'
import { collect } from '../load/load-rules.ts'
import { stamp, type Unlike } from '../load/stamp.ts'
import type { Sync } from '../model/sync.ts'
import { reportShort } from '../report/short.ts'
import type { Finding } from '../source/finding.ts'
import type { Place } from '../source/place.ts'
import { type Options, UsageError } from './options.ts'
import { openFolder } from './paths.ts'

/** Stamps translations that somebody has compared with their source, and tells what had changed in each. */
export async function run({ words }: Options): Promise<number> {
  const pairs = words.map((path) => {
    const [, name] = /^([^.]+)\.[a-z]{2}\.mdx$/.exec(basename(path)) ?? []
    if (name === undefined) throw new UsageError(`\`${path}\` is no translation: its name ends like \`.es.mdx\``)
    if (!existsSync(path)) throw new UsageError(`there is no file \`${path}\``)
    if (!existsSync(resolve(dirname(path), `${name}.mdx`))) throw new UsageError(`\`${path}\` has no source \`${name}.mdx\` beside it`)
    return { path, source: `${name}.mdx` }
  })
  let failed = false
  for (const { path, source } of pairs) {
    const findings: Finding[] = []
    const sink = collect(findings)
    const folder = openFolder(dirname(path))
    const [own, original] = [readText(folder, basename(path), sink), readText(folder, source, sink)]
    const result = own && original && stamp(own, original, sink)
    process.stdout.write(reportShort(findings))
    if (!result || 'unlike' in result) {
      failed = true
      process.stdout.write(`${path}: not stamped${result ? `: ${unlikeness(result.unlike)}` : ''}\n`)
      continue
    }
    writeFileSync(path, result.text)
    const told = changes(result.before)
    process.stdout.write(
      `${path}: ${result.blocks} block${result.blocks === 1 ? '' : 's'}${told.length === 0 ? ', nothing had changed' : ''}\n${told.map((line) => `  ${line}\n`).join('')}`,
    )
  }
  return failed ? 1 : 0
}

const at = ({ file, line }: Place) => `${file}:${line}`

function unlikeness({ own, source, ownBlocks, sourceBlocks }: Unlike): string {
  if (own && source) return `the block at ${at(own)} is of another kind than the one at ${at(source)}`
  return `it has ${ownBlocks} blocks, and its source ${sourceBlocks}: the first without a partner is at ${at(own ?? source ?? nowhere)}`
}

const nowhere: Place = { file: '', line: 1, column: 1, endLine: 1, endColumn: 1 }

/** What was different when the file was stamped last. */
function changes(before: Sync): string[] {
  if (before.state === 'unstamped') return ['stamped for the first time']
  const texts = before.texts.map(({ key, state, place }) => `${at(place)}: \`${key}\` ${state} in the source`)
  if (before.state === 'shifted') return [...texts, `it had ${before.stamped} blocks`]
  const blocks = before.blocks.flatMap((block) => {
    if (block.state === 'same') return []
    if (block.state === 'removed') return [`${at(block.own.place)}: the source block is gone`]
    if (block.state === 'added') return [`${at(block.source.place)}: added in the source`]
    return [`${at(block.own.place)}: changed in the source, ${at(block.source.place)}`]
  })
  return [...texts, ...blocks]
}

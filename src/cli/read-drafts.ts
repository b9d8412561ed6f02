import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { wordingReader } from '../check/wording.ts'
import { sentenceRules } from '../check/wording-rules.ts'
import { collect, loadRules } from '../load/load-rules.ts'
import { parseMdx } from '../load/mdx.ts'
import { levelReader } from '../model/page-level.ts'
import { readBlocks } from '../model/prose/read-text.ts'
import { readingBlocks } from '../model/prose/reading-blocks.ts'
import { reader as readers } from '../model/schema/common.ts'
import type { ReadingFile } from '../report/reading.ts'
import { compareFindings, type Finding } from '../source/finding.ts'
import { sourceText } from '../source/source-text.ts'
import type { Options } from './options.ts'
import { readingFile } from './reading-file.ts'

/** A draft that belongs to no machine: without a glossary, and with the usual limits. */
const noMachine = { terms: [], descriptions: [] }

/** Drafts of one file, or of all files in a folder that end as pages do. */
export function readDrafts(path: string, options: Options): { files: ReadingFile[]; texts: Map<string, string> } {
  const texts = new Map<string, string>()
  const files = filesAt(path).flatMap((file) => {
    const language = options.get('language') ?? /\.([a-z]{2})\.mdx?$/.exec(file)?.[1] ?? 'en'
    texts.set(file, readFileSync(file, 'utf8'))
    return [readDraft(file, texts.get(file) ?? '', language, options)]
  })
  return { files, texts }
}

function filesAt(path: string): string[] {
  if (!statSync(path).isDirectory()) return [path]
  return readdirSync(path, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.mdx?$/.test(name))
    .sort()
    .map((name) => join(path, name))
}

function readDraft(file: string, text: string, language: string, options: Options): ReadingFile {
  const source = sourceText(file, text)
  const faults: Finding[] = []
  const { frontmatter, body } = parseMdx(source, collect(faults))
  const stated = options.get('reader') ?? (frontmatter?.value as { reader?: unknown } | undefined)?.reader
  const reader = readers.safeParse(stated).data ?? 'operator'
  const blocks = body ? readingBlocks({ body, source }, () => undefined) : []
  const read = readBlocks(blocks, language)
  const found = wordingReader(noMachine, language)(read, reader)
  const wording = sentenceRules.flatMap(({ id, severity, problems }) =>
    problems(found).map((problem): Finding => ({ ...problem, rule: id, severity })),
  )
  // A draft need not have a head.
  const findings = [...faults.filter(({ rule }) => rule !== loadRules.missingFrontmatter.id), ...wording].sort(compareFindings)
  return readingFile(file, read, levelReader({ file: {} })(read, reader), findings)
}

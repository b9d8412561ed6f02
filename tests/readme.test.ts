import { existsSync, readFileSync } from 'node:fs'
import type { Code, Nodes, Root } from 'mdast'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { commands } from '../src/cli/commands.ts'
import { parseOptions } from '../src/cli/options.ts'
import { acceptedFile } from '../src/model/schema/accepted-file.ts'
import { reportShort } from '../src/report/short.ts'

const tree: Root = unified().use(remarkParse).parse(readFileSync('README.md', 'utf8'))
const codeOf = (node: Nodes): Code[] => (node.type === 'code' ? [node] : 'children' in node ? node.children.flatMap(codeOf) : [])
const blocks = codeOf(tree)
const inLanguage = (lang: string) => blocks.filter((block) => block.lang === lang).map(({ value }) => value)

/** Every line of a block that starts the command, without what the shell does. */
const fettleLines = blocks.flatMap(({ value }) => value.split('\n')).flatMap((line) => /npx fettle ([^#>"]+)/.exec(line)?.[1]?.trim() ?? [])

test.each(fettleLines)('`fettle %s` is a command with these options', (line) => {
  const [name = '', ...args] = line.split(/\s+/)
  const command = commands[name]
  if (!command) throw new Error(`there is no command ${name}`)
  const { words } = parseOptions(args, command)
  const [folder] = words
  if (command.words[0] === '<folder>' && name !== 'new') expect(existsSync(`${folder}/machine.yaml`)).toBe(true)
})

test('the commands of CI are among those lines', () => {
  expect(fettleLines.filter((line) => /--format (sarif|junit|short)/.test(line))).toHaveLength(3)
})

describe('the YAML', () => {
  const named = new Map(inLanguage('yaml').map((text) => [Object.keys(parse(text))[0], parse(text)]))

  test('of GitHub Actions has the keys of a workflow, and the uploaded file is the written one', () => {
    const { on, jobs, permissions } = named.get('name')
    expect(on).toEqual(['push', 'pull_request'])
    // Source: GitHub Docs, "Uploading a SARIF file to GitHub", from memory: the upload needs this permission.
    expect(permissions['security-events']).toBe('write')
    const { steps, 'runs-on': runsOn } = jobs.check
    expect(typeof runsOn).toBe('string')
    for (const step of steps) expect(Object.keys(step).every((key) => ['uses', 'run', 'if', 'with', 'name'].includes(key))).toBe(true)
    for (const { uses } of steps) if (uses) expect(uses).toMatch(/^[\w-]+\/[\w-]+(\/[\w-]+)?@v\d+$/)
    const written = steps.flatMap(({ run = '' }) => /> (\S+)$/.exec(run)?.[1] ?? [])
    expect(written).toEqual([steps.at(-1).with.sarif_file])
  })

  test('of GitLab CI has the keys of jobs, and the report is the written file', () => {
    const jobs = named.get('check')
    const known = ['image', 'script', 'artifacts', 'needs']
    for (const job of Object.values<object>(jobs)) expect(Object.keys(job).every((key) => known.includes(key))).toBe(true)
    expect(jobs.check.script.at(-1)).toMatch(new RegExp(`> ${jobs.check.artifacts.reports.junit}$`))
    expect(Object.keys(jobs)).toEqual(expect.arrayContaining(jobs.build.needs))
  })

  test('of accepted.yaml is one', () => {
    expect(acceptedFile.safeParse(named.get('0')).success).toBe(true)
  })
})

test('the problem matcher reads what `--format short` writes', () => {
  const [block = ''] = inLanguage('json')
  const { pattern } = JSON.parse(block).tasks[0].problemMatcher
  const place = { file: 'example-machine/data/bom.csv', line: 3, column: 9, endLine: 3, endColumn: 10 }
  const line = reportShort([{ rule: 'unused-part', severity: 'note', message: 'no page names it', place }]).trimEnd()
  const found = new RegExp(pattern.regexp).exec(line)
  const part = (key: string) => found?.[pattern[key]]
  expect([part('file'), part('line'), part('column'), part('severity'), part('message')]).toEqual([
    place.file,
    '3',
    '9',
    'note',
    'no page names it [unused-part]',
  ])
})

describe('the structured text', () => {
  const text = (blocks.find(({ value }) => value.includes('FUNCTION ManualAddress'))?.value ?? '').replace(/\(\*[\s\S]*?\*\)/g, '')

  test.each(['FUNCTION', 'FUNCTION_BLOCK', 'IF', 'FOR'])('ends each %s', (word) => {
    const begun = text.match(new RegExp(`^\\s*${word}\\b`, 'gm')) ?? []
    expect(begun.length).toBeGreaterThan(0)
    expect(text.match(new RegExp(`^\\s*END_${word}\\b`, 'gm'))).toHaveLength(begun.length)
  })

  test('ends each list of variables', () => {
    const begun = text.match(/^\s*VAR(_INPUT|_OUTPUT)?$/gm) ?? []
    expect(text.match(/^\s*END_VAR$/gm)).toHaveLength(begun.length)
  })

  test('counts each array and loop alike, and gives as many alarms, all of the example', () => {
    const bounds = [...text.matchAll(/ARRAY\[1\.\.(\d+)\]|:= 1 TO (\d+) DO/g)].map(([, array, loop]) => Number(array ?? loop))
    expect(new Set(bounds).size).toBe(1)
    const numbers = /:= \[([\d, ]+)\]/.exec(text)?.[1]?.split(', ') ?? []
    expect(numbers).toHaveLength(bounds[0] ?? 0)
    const alarms =
      readFileSync('example-machine/data/alarms.csv', 'utf8')
        .match(/^A\d+/gm)
        ?.map((it) => Number(it.slice(1))) ?? []
    for (const number of numbers) expect(alarms).toContain(Number(number))
  })

  test('has room for the longest address', () => {
    const [, whole = '', folder = ''] = /STRING\[(\d+)\][\s\S]*?STRING\[(\d+)\]/.exec(text) ?? []
    expect(Number(folder) + '/lookup.html?alarm='.length + '65535'.length).toBeLessThanOrEqual(Number(whole))
    expect('/lookup.html?alarm='.length + '65535'.length).toBe(24)
  })
})

import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { commands } from '../../../src/cli/commands.ts'
import { parseOptions } from '../../../src/cli/options.ts'
import { checkFiles, readFiles, textOf } from '../example.ts'
import { runnerFiles } from './make-portfolio.ts'

const files = runnerFiles(readFiles('example-machine', 'content'), 3, 130)
const json = (path: string) => JSON.parse(textOf(files, path))

test('each machine is a package of its own name, a machine of its own id, and without an error', () => {
  const names = ['m01', 'm02', 'm03']
  expect(names.map((name) => json(`machines/${name}/package.json`).name)).toEqual(names)
  expect(names.map((name) => /^id: (.*)$/m.exec(textOf(files, `machines/${name}/machine.yaml`))?.[1])).toEqual(names.map((name) => `rcw-400-${name}`))
  for (const name of names) {
    const own = [...files].flatMap(([path, content]) => {
      if (path.startsWith('content/')) return [[path, content] as const]
      return path.startsWith(`machines/${name}/`) ? [[path.slice(`machines/${name}/`.length), content] as const] : []
    })
    expect(checkFiles(new Map(own)).findings.filter(({ severity }) => severity === 'error')).toEqual([])
  }
})

test('the command of a machine is one, and writes where the runner looks for it', () => {
  const { build } = commands
  if (!build) throw new Error('no command')
  const [, line = ''] = /fettle\.ts" build (.*)$/.exec(json('machines/m01/package.json').scripts.build) ?? []
  const options = parseOptions(line.split(' '), build)
  expect([options.words, options.get('out'), options.get('shared'), options.get('jobs')]).toEqual([['.'], 'dist', '../../content', '1'])
  const task = json('turbo.json').tasks.build
  expect(task.outputs).toEqual([`${options.get('out')}/**`])
  expect(task.inputs).toContain(`$TURBO_ROOT$/${options.get('shared')?.replace('../../', '')}/**`)
  expect(textOf(files, '.gitignore').split('\n')).toEqual(expect.arrayContaining(['dist/', '.fettle/', 'node_modules/']))
})

test('the runner is pinned, and README.md names the version that was tried', () => {
  const { turbo } = json('package.json').devDependencies
  expect(turbo).toMatch(/^\d+\.\d+\.\d+$/)
  expect(readFileSync('tests/bench/runner/README.md', 'utf8')).toContain(`turbo ${turbo}`)
})

/** Writes a repository of machines for a task runner: `node tests/bench/runner/make-portfolio.ts <folder> [machines] [pages]`. See README.md here. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { nameOf, portfolioFiles } from '../cost/portfolio-machines.ts'
import { type Files, readFiles } from '../example.ts'

const read = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8')

/** The machines with what the runner needs: a package at the root, and one for each machine. */
export function runnerFiles(example: Files, machines: number, pages: number): Map<string, string | Uint8Array> {
  const files = portfolioFiles(example, machines, pages)
  for (const name of ['package.json', 'turbo.json']) files.set(name, read(`root/${name}`))
  files.set('.gitignore', ['node_modules/', 'dist/', 'manuals/', '.turbo/', '.fettle/', ''].join('\n'))
  for (let index = 0; index < machines; index++)
    files.set(`machines/${nameOf(index)}/package.json`, read('machine/package.json').replace('"machine"', `"${nameOf(index)}"`))
  return files
}

if (import.meta.main) {
  const [folder, machines = '4', pages = '300'] = process.argv.slice(2)
  if (folder === undefined || existsSync(folder)) throw new Error('name a folder that is not there yet')
  for (const [path, content] of runnerFiles(readFiles('example-machine', 'content'), Number(machines), Number(pages))) {
    mkdirSync(dirname(join(folder, path)), { recursive: true })
    writeFileSync(join(folder, path), content)
  }
}

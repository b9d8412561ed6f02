import { execFileSync } from 'node:child_process'
import { cpus, totalmem } from 'node:os'

/** What figures depend on besides the machines: day, commit, Node and computer. */
export function aboutRun(): string {
  const git = (...args: string[]) => execFileSync('git', args, { encoding: 'utf8' }).trim()
  const commit = `${git('rev-parse', '--short', 'HEAD')}${git('status', '--porcelain', '--', 'src') === '' ? '' : ' with changes'}`
  const computer = `${cpus().length} cores (${cpus()[0]?.model.trim()}), ${Math.round(totalmem() / 1e9)} GB`
  return `${new Date().toISOString().slice(0, 10)}, commit ${commit}, Node ${process.version}, ${computer}`
}

import { execFileSync } from 'node:child_process'
import { cpus, totalmem } from 'node:os'

/** What the figures depend on besides the code: day, commit, Node, computer and seed. */
export function about(seed: number): string {
  const git = (...args: string[]) => execFileSync('git', args, { encoding: 'utf8' }).trim()
  const commit = `${git('rev-parse', '--short', 'HEAD')}${git('status', '--porcelain', '--', 'src') === '' ? '' : ' with changes'}`
  const computer = `${cpus().length} cores (${cpus()[0]?.model.trim()}), ${Math.round(totalmem() / 1e9)} GB`
  return `${new Date().toISOString().slice(0, 10)}, commit ${commit}, Node ${process.version}, ${computer}, seed ${seed}.`
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const [low, high] = [sorted[(sorted.length - 1) >> 1], sorted[sorted.length >> 1]]
  return ((low ?? Number.NaN) + (high ?? Number.NaN)) / 2
}

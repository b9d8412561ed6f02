import { spawnSync } from 'node:child_process'

export interface Cost {
  timeS: number
  /** Processor time in user mode, of the processes that it started too. Other work on the computer moves it less. */
  userS: number
}

/** The cost of a whole process and those that it waits for. Throws when it fails, with what it said. */
export function timeProcess(command: readonly string[], cwd = process.cwd()): Cost {
  // Bash counts the children of children as well, which Node does not tell.
  const script = 'TIMEFORMAT="cost %U %R"; time "$@"'
  const env = { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', LC_ALL: 'C' }
  const { stdout, stderr, status } = spawnSync('bash', ['-c', script, 'bash', ...command], { cwd, env, encoding: 'utf8', maxBuffer: 2 ** 30 })
  const [, userS, timeS] = /^cost ([\d.]+) ([\d.]+)$/m.exec(stderr) ?? []
  if (status !== 0 || !userS) throw new Error(`${command.join(' ')} ended with ${status}:\n${stdout.slice(-2000)}\n${stderr.slice(-2000)}`)
  return { timeS: Number(timeS), userS: Number(userS) }
}

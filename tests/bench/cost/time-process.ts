import { spawnSync } from 'node:child_process'

export interface Cost {
  timeS: number
  /** Processor time in user mode, of the processes that it started too. Other work on the computer moves it less. */
  userS: number
}

export interface TimedProcess extends Cost {
  systemS: number
  stdout: string
  stderr: string
}

/** The cost of a whole process and those that it waits for. Throws when it fails, with what it said. */
export function timeProcess(command: readonly string[], { cwd, env = {} }: { cwd?: string; env?: NodeJS.ProcessEnv } = {}): TimedProcess {
  // The shell adds up the time of processes that are no Node, such as the search and the bundler of scripts.
  const script = 'TIMEFORMAT="cost %U %S %R"; time "$@"'
  const { stdout, stderr, status } = spawnSync('bash', ['-c', script, 'bash', ...command], {
    ...(cwd === undefined ? {} : { cwd }),
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', LC_ALL: 'C', ...env },
    encoding: 'utf8',
    maxBuffer: 2 ** 30,
  })
  const [, userS, systemS, timeS] = /^cost ([\d.]+) ([\d.]+) ([\d.]+)$/m.exec(stderr) ?? []
  if (status !== 0 || !userS) throw new Error(`${command.join(' ')} ended with ${status}:\n${stdout.slice(-2000)}\n${stderr.slice(-2000)}`)
  return { timeS: Number(timeS), userS: Number(userS), systemS: Number(systemS), stdout, stderr }
}

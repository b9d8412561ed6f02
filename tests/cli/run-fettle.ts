import { type ChildProcess, spawn } from 'node:child_process'

export interface Ran {
  code: number | null
  stdout: string
  stderr: string
}

/** Starts the command as a user does. */
export function startFettle(args: readonly string[], env: NodeJS.ProcessEnv = {}): ChildProcess {
  return spawn(process.execPath, ['src/cli/fettle.ts', ...args], { env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] })
}

/** Runs the command to its end. */
export function runFettle(args: readonly string[], env: NodeJS.ProcessEnv = {}): Promise<Ran> {
  const child = startFettle(args, env)
  let stdout = ''
  let stderr = ''
  child.stdout?.setEncoding('utf8').on('data', (text: string) => {
    stdout += text
  })
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    stderr += text
  })
  return new Promise((done) => child.on('close', (code) => done({ code, stdout, stderr })))
}

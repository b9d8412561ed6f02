#!/usr/bin/env node
import { enableCompileCache } from 'node:module'

// Node keeps the stripped and compiled sources between runs: half of the start-up time of a check.
enableCompileCache?.()
// Astro can throw outside the promise that it returns; that too is "could not run".
process.on('uncaughtException', (error) => {
  process.stderr.write(`fettle: stopped: ${error.stack ?? error.message}\n`)
  process.exit(2)
})
// `fettle explain | head` closes the pipe early: nobody reads what is left, and nothing has gone wrong.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0)
  throw error
})
const { main } = await import('./main.ts')
process.exitCode = await main(process.argv.slice(2))

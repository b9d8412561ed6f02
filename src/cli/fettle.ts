#!/usr/bin/env node
import { enableCompileCache } from 'node:module'

// Node keeps the stripped and compiled sources between runs: half of the start-up time of a check.
enableCompileCache?.()
const { main } = await import('./main.ts')
process.exitCode = await main(process.argv.slice(2))

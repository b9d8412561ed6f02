import { enableCompileCache } from 'node:module'

// The process that builds one machine of several: its words are those of `fettle build`, its outcome goes to the one that started it.
enableCompileCache?.()
const stop = (error: unknown) => {
  process.stderr.write(`stopped: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`)
  process.exit(2)
}
process.on('uncaughtException', stop)
// Whoever started it is gone: nobody waits for the build.
process.on('disconnect', () => process.exit(2))
try {
  const [{ commands }, { parseOptions }, { buildOne }] = await Promise.all([
    import('../commands.ts'),
    import('../options.ts'),
    import('./build-one.ts'),
  ])
  const { build } = commands
  if (!build) throw new Error('there is no command `build`')
  const outcome = await buildOne(parseOptions(process.argv.slice(2), build))
  process.exitCode = outcome.code
  process.send?.(outcome, () => {
    process.removeAllListeners('disconnect')
    process.disconnect()
  })
} catch (error) {
  stop(error)
}

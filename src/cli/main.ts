import { commands, helpText } from './commands.ts'
import { parseOptions, UsageError } from './options.ts'

/** Runs one command. Exit codes: 0 without errors, 1 with errors in the content, 2 when it could not run. */
export async function main(args: readonly string[]): Promise<number> {
  const [name, ...rest] = args
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    process.stdout.write(helpText(rest[0]))
    return name === undefined ? 2 : 0
  }
  if (name === '--version') {
    const { version } = await import('./version.ts')
    process.stdout.write(`${version}\n`)
    return 0
  }
  const command = commands[name]
  if (!command) {
    process.stderr.write(`fettle: there is no command \`${name}\`\n\n${helpText()}`)
    return 2
  }
  try {
    const options = parseOptions(rest, command)
    if (options.help) {
      process.stdout.write(helpText(name))
      return 0
    }
    const { run } = await command.load()
    return await run(options)
  } catch (error) {
    if (error instanceof UsageError) {
      process.stderr.write(`fettle ${name}: ${error.message}\ntry \`fettle ${name} --help\`\n`)
      return 2
    }
    process.stderr.write(`fettle ${name}: stopped: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`)
    return 2
  }
}

import { parseArgs } from 'node:util'

/** What a user typed that a command does not take. */
export class UsageError extends Error {}

export interface OptionSpec {
  /** Name of the value in the help: `--out <folder>`. Without it the option is a switch. */
  value?: string
  oneOf?: readonly string[]
  /** It may be given several times. */
  several?: true
  help: string
}

export interface CommandSpec {
  summary: string
  /** Names of the words after the command: `<folder>`; in square brackets when it may be left out, `<file…>` for one or more. */
  words: readonly string[]
  options: Readonly<Record<string, OptionSpec>>
}

export interface Options {
  help: boolean
  words: readonly string[]
  /** The value of an option; undefined when it was not given. */
  get(name: string): string | undefined
  /** Every value of an option that may be given several times, in order. */
  all(name: string): readonly string[]
  has(name: string): boolean
  /** Some options as they were given, to be handed on to another command. */
  given(names: readonly string[]): string[]
}

/** Reads the words and options of a command. Throws a UsageError for anything it does not know. */
export function parseOptions(args: readonly string[], spec: CommandSpec): Options {
  const known = { ...spec.options, help: { help: '' } }
  let parsed: { values: Record<string, unknown>; positionals: string[] }
  try {
    parsed = parseArgs({
      args: [...args],
      allowPositionals: true,
      strict: true,
      options: Object.fromEntries(
        Object.entries(known).map(([name, { value, several }]: [string, OptionSpec]) => [
          name,
          { type: value ? 'string' : 'boolean', ...(several ? { multiple: true } : {}), ...(name === 'help' ? { short: 'h' } : {}) },
        ]),
      ),
    })
  } catch (error) {
    throw new UsageError(
      error instanceof Error ? error.message.replace(/\. To specify.*$/s, '').replace(/^Unknown option/, 'there is no option') : String(error),
    )
  }
  const { values, positionals } = parsed
  const help = values.help === true
  const needed = spec.words.filter((word) => !word.startsWith('[')).length
  if (!help && positionals.length < needed) throw new UsageError(`${spec.words[positionals.length]} is missing`)
  const several = spec.words.at(-1)?.endsWith('…>') ?? false
  if (!several && positionals.length > spec.words.length) throw new UsageError(`\`${positionals[spec.words.length]}\` is one word too many`)
  for (const [name, { oneOf }] of Object.entries(spec.options)) {
    const value = values[name]
    if (oneOf && typeof value === 'string' && !oneOf.includes(value)) throw new UsageError(`--${name} takes ${oneOf.join(', ')}, not \`${value}\``)
  }
  return {
    help,
    words: positionals,
    get(name) {
      const value = values[name]
      return typeof value === 'string' ? value : undefined
    },
    all(name) {
      const value = values[name]
      return Array.isArray(value) ? value.map(String) : typeof value === 'string' ? [value] : []
    },
    has: (name) => values[name] !== undefined,
    given: (names) =>
      names.flatMap((name) => {
        const value = values[name]
        if (value === undefined) return []
        return typeof value === 'string' ? [`--${name}`, value] : [`--${name}`]
      }),
  }
}

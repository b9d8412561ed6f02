import { z } from 'zod'
import { loadRules, type Sink } from './load-rules.ts'
import { suggestKey } from './suggest-key.ts'
import type { Path, YamlValue } from './yaml.ts'

/** The value of a schema, or undefined with a finding for each thing that is wrong with it. */
export function checkShape<S extends z.ZodType>(schema: S, yaml: YamlValue, sink: Sink, owner: string): z.infer<S> | undefined {
  const result = schema.safeParse(yaml.value)
  if (result.success) return result.data
  const issues = result.error.issues.flatMap(closestIssues)
  // A misspelt key is also a missing one: the misspelling is the cause, and says it all.
  const misspelt = new Set(
    issues.flatMap((issue) =>
      issue.code === 'unrecognized_keys'
        ? issue.keys
            .flatMap((key) => suggestKey(key, keysAt(schema, issue.path.filter(isKey), yaml.value)) ?? [])
            .map((key) => [...issue.path, key].join('\n'))
        : [],
    ),
  )
  for (const issue of issues) if (!misspelt.has(issue.path.join('\n'))) reportIssue(issue, schema, yaml, sink, owner)
  return undefined
}

type Issue = z.core.$ZodIssue

/** Of a value that may be of several kinds, what is wrong with it as the kind that it is. */
function closestIssues(issue: Issue): Issue[] {
  if (issue.code !== 'invalid_union') return [issue]
  const without = (of: readonly Issue[][], kind: Issue['code']) =>
    of.filter((errors) => !errors.some(({ code, path }) => code === kind && path.length === 0))
  const ofItsType = without(issue.errors, 'invalid_type')
  // A map is none of the words that could stand in its place.
  const [fitting, another] = ofItsType.length > 1 ? without(ofItsType, 'invalid_value') : ofItsType
  return fitting && !another ? fitting.map((it) => ({ ...it, path: [...issue.path, ...it.path] })) : [issue]
}

function reportIssue(issue: Issue, schema: z.ZodType, yaml: YamlValue, sink: Sink, owner: string): void {
  const path = issue.path.filter(isKey)
  const name = path.length === 0 ? owner : `\`${keyName(path)}\``
  const value = path.reduce<unknown>(
    (at, key) => (typeof at === 'object' && at !== null ? (at as Record<string | number, unknown>)[key] : undefined),
    yaml.value,
  )
  if (issue.code === 'unrecognized_keys') {
    for (const key of issue.keys) {
      const near = suggestKey(key, keysAt(schema, path, yaml.value))
      sink(loadRules.unknownKey, {
        message: `\`${key}\` is not known ${path.length === 0 ? `in ${owner}` : `in ${name}`}`,
        place: yaml.placeOfKey(path, key),
        ...(near ? { help: `write \`${near}\`, or remove it` } : { help: 'remove it, or correct its spelling' }),
      })
    }
    return
  }
  if (issue.code === 'invalid_key') {
    const [key, map] = [String(path.at(-1)), keyNameOrOwner(path.slice(0, -1), owner)]
    const [form] = issue.issues.flatMap((it) => ('pattern' in it && it.pattern ? [it.pattern] : []))
    sink(loadRules.unknownKey, {
      message: `\`${key}\` cannot be a key in ${map}`,
      place: yaml.placeOfKey(path.slice(0, -1), key),
      help: form ? `write it in the form \`${form}\`` : 'remove it, or correct its spelling',
    })
    return
  }
  if (value === undefined && path.length > 0) {
    sink(loadRules.missingKey, {
      message: `${path.length > 1 ? `${keyNameOrOwner(path.slice(0, -1), owner)} has` : `${owner} has`} no \`${String(path.at(-1))}\``,
      place: yaml.placeOf(path.slice(0, -1)),
    })
    return
  }
  const { wants, help } = describe(issue, value, yaml.written(path))
  sink(loadRules.wrongType, { message: `${name} ${wants}`, place: yaml.placeOf(path), ...(help ? { help } : {}) })
}

const isKey = (key: PropertyKey): key is string | number => typeof key !== 'symbol'

const keyName = (path: Path) =>
  path.reduce<string>((name, key) => (typeof key === 'number' ? `${name}[${key + 1}]` : name === '' ? key : `${name}.${key}`), '')
const keyNameOrOwner = (path: Path, owner: string) => (path.length === 0 ? owner : `\`${keyName(path)}\``)

const kinds: Record<string, string> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: '`true` or `false`',
  array: 'a list',
  object: 'keys and values',
  record: 'keys and values',
  tuple: 'a list',
}

function describe(issue: Issue, value: unknown, written: string | undefined): { wants: string; help?: string } {
  switch (issue.code) {
    case 'invalid_type': {
      const wanted = kinds[issue.expected] ?? issue.expected
      const quote = issue.expected === 'string' && (typeof value === 'number' || typeof value === 'boolean' || value === null)
      return {
        wants: `takes ${wanted}, and holds ${valueName(value, written)}`,
        ...(quote ? { help: `put it in quotes: \`"${written ?? String(value)}"\`` } : {}),
      }
    }
    case 'invalid_value':
      return oneOf(value, issue.values.map(String), written)
    case 'invalid_union':
      if ('options' in issue && Array.isArray(issue.options)) return oneOf(value, issue.options.map(String), written)
      return { wants: `does not fit: ${unionReason(issue, value, written)}` }
    case 'too_small':
      return {
        wants:
          issue.origin === 'string' || issue.origin === 'array'
            ? 'is empty'
            : `is ${valueName(value, written)}, and must be ${issue.inclusive === false ? 'more than' : 'at least'} ${issue.minimum}`,
      }
    case 'too_big':
      return { wants: `is ${valueName(value, written)}, and must be at most ${issue.maximum}` }
    case 'invalid_format':
      if (issue.format === 'date') return { wants: `is ${valueName(value, written)}, which is no day written like \`2026-11-25\`` }
      return {
        wants: `is ${valueName(value, written)}, which does not have the form \`${'pattern' in issue && issue.pattern ? issue.pattern : issue.format}\``,
      }
    case 'custom':
      // A refinement that says it in our words.
      if (issue.params?.wants) {
        return {
          wants: `${typeof value === 'object' ? '' : `is ${valueName(value, written)}, which `}${issue.params.wants}`,
          help: issue.params.help,
        }
      }
      return { wants: `is wrong: ${issue.message.toLowerCase()}` }
    default:
      return { wants: `is wrong: ${issue.message.toLowerCase()}` }
  }
}

function oneOf(value: unknown, known: readonly string[], written: string | undefined): { wants: string; help: string } {
  const near = suggestKey(String(value), known)
  return { wants: `is ${valueName(value, written)}`, help: near ? `write \`${near}\`` : `write one of ${known.join(', ')}` }
}

function valueName(value: unknown, written: string | undefined): string {
  if (value === null) return 'nothing'
  if (Array.isArray(value)) return 'a list'
  if (typeof value === 'object') return 'keys and values'
  return `\`${written ?? String(value)}\``
}

function unionReason(issue: Extract<Issue, { code: 'invalid_union' }>, value: unknown, written: string | undefined): string {
  const wanted = issue.errors
    .flatMap((errors) => errors.slice(0, 1))
    .map((it) => (it.code === 'invalid_type' ? (kinds[it.expected] ?? it.expected) : 'text by language'))
  return `it takes ${[...new Set(wanted)].join(' or ')}, and holds ${valueName(value, written)}`
}

/** The keys that the schema knows in the map at a path; among kinds, those of the kind that the value has. */
function keysAt(schema: unknown, path: Path, value: unknown): string[] {
  const at = ofKind(unwrap(schema), value)
  const [key, ...rest] = path
  if (key === undefined) return at instanceof z.ZodObject ? Object.keys(at.shape) : []
  const inner = typeof value === 'object' && value !== null ? (value as Record<string | number, unknown>)[key] : undefined
  if (at instanceof z.ZodArray) return keysAt(at.element, rest, inner)
  if (at instanceof z.ZodObject) return keysAt(at.shape[key], rest, inner)
  if (at instanceof z.ZodRecord) return keysAt(at.valueType, rest, inner)
  return []
}

function ofKind(schema: unknown, value: unknown): unknown {
  if (schema instanceof z.ZodUnion && !(schema instanceof z.ZodDiscriminatedUnion))
    return schema.options.find((option) => option instanceof z.ZodObject)
  if (!(schema instanceof z.ZodDiscriminatedUnion)) return schema
  const { discriminator } = schema.def
  const kind = typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[discriminator] : undefined
  return schema.options.find((option) => option instanceof z.ZodObject && z.safeParse(option.shape[discriminator] as z.ZodType, kind).success)
}

function unwrap(schema: unknown): unknown {
  return schema instanceof z.ZodOptional ? unwrap(schema.unwrap()) : schema
}

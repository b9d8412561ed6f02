import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { basename, dirname, extname, join, resolve } from 'node:path'
import type { Designation } from '../model/designation.ts'
import type { TableName } from '../model/schema/tables.ts'
import { guessColumns } from '../start/guess-columns.ts'
import { guessDesignation } from '../start/guess-designation.ts'
import { guessValues } from '../start/guess-values.ts'
import { kindOfLetters } from '../start/kind-of-letters.ts'
import { kindOfLoopTag } from '../start/kind-of-loop-tag.ts'
import { machineText, type StartedTable } from '../start/machine-text.ts'
import { stubPages } from '../start/stubs.ts'
import { checkFolder, countFindings } from './load.ts'
import { type Options, UsageError } from './options.ts'
import { readExport } from './read-export.ts'
import { today } from './today.ts'

/** Option -> table, and the name of the file in `data/`. */
export const exportOptions = {
  io: ['signals', 'io-list'],
  devices: ['devices', 'devices'],
  cards: ['cards', 'cards'],
  bom: ['parts', 'bom'],
  drawings: ['drawings', 'drawings'],
  alarms: ['alarms', 'alarms'],
  formats: ['formats', 'formats'],
} as const satisfies Record<string, readonly [TableName, string]>

/** Starts a machine folder from exports. Nothing is overwritten, and the exports are copied as they are. */
export async function run(options: Options): Promise<number> {
  const [folder = ''] = options.words
  if (existsSync(folder) && (!statSync(folder).isDirectory() || readdirSync(folder).length > 0))
    throw new UsageError(`\`${folder}\` is there and not empty: a new machine needs a folder of its own`)
  const language = options.get('language') ?? 'en'
  if (!/^[a-z]{2}$/.test(language)) throw new UsageError(`--language takes two small letters, such as de, not \`${language}\``)
  const given = Object.entries(exportOptions).flatMap(([option, [table, name]]) => {
    const path = options.get(option)
    return path === undefined ? [] : [{ path, table, name }]
  })
  if (given.length === 0)
    throw new UsageError(
      `name at least one export: ${Object.keys(exportOptions)
        .map((it) => `--${it}`)
        .join(', ')}`,
    )
  const listed = given.map(({ table }) => table)
  const exports = given.map(({ path, table, name }) => {
    if (!statSync(path, { throwIfNoEntry: false })?.isFile()) throw new UsageError(`there is no file \`${path}\``)
    const read = readExport(path)
    return { path, table, file: `data/${name}${extname(path).toLowerCase()}`, ...read, guessed: guessColumns(table, read.header, read.rows, listed) }
  })
  const say = (line: string) => process.stdout.write(`${line}\n`)
  for (const { path, table, guessed } of exports) {
    say(`${path} as ${table}:`)
    for (const { column, heading, how } of guessed.guesses) say(`  ${column}: \`${heading}\` (by ${how})`)
    if (guessed.missing.length > 0) say(`  no column for ${guessed.missing.join(', ')}: the table is left out of machine.yaml until there is one`)
    if (guessed.unread.length > 0) say(`  not read: ${guessed.unread.map((it) => `\`${it}\``).join(', ')}`)
  }

  const valuesOf = (table: TableName, column: string): string[] => {
    const it = exports.find((it) => it.table === table && it.guessed.missing.length === 0)
    const index = it?.header.indexOf(it.guessed.guesses.find((guess) => guess.column === column)?.heading ?? '') ?? -1
    return it ? it.rows.map((cells) => cells[index]?.trim() ?? '') : []
  }
  const files = new Map<string, string | Uint8Array>(exports.map(({ path, file }) => [file, readFileSync(path)]))
  const tables: StartedTable[] = exports.map(({ table, file, guessed, header, rows }) => ({
    table,
    file,
    guessed,
    read: guessValues(table, guessed, header, rows),
  }))
  let devices = devicesOf(valuesOf('devices', 'tag'), valuesOf('devices', 'description'))
  let designation = guessDesignation(devices.map(({ tag }) => tag))
  // A list that lacks a column is not read, and a second one must not take its place.
  const derived = files.has('data/devices.csv') ? 'data/devices-from-io.csv' : 'data/devices.csv'
  if (!tables.some(({ table, guessed }) => table === 'devices' && guessed.missing.length === 0)) {
    devices = devicesOf(valuesOf('signals', 'tag'), valuesOf('signals', 'meaning'))
    designation = guessDesignation(devices.map(({ tag }) => tag))
    if (devices.length > 0) {
      files.set(derived, deviceList(devices, designation))
      tables.push({ table: 'devices', file: derived, guessed: { guesses: [], missing: [], unread: [] }, read: {} })
      say(`${derived}: ${devices.length} devices, from the I/O list; their kinds follow from their letters and want a look`)
    }
  }
  const numbers = valuesOf('alarms', 'number')
  const texts = valuesOf('alarms', 'text')
  const alarms = numbers.flatMap((number, index) => (number === '' ? [] : [{ number, text: texts[index] || number }]))
  const id = idOf(basename(resolve(folder)))
  files.set('machine.yaml', machineText({ id, language, date: today(), designation, tables }))
  for (const [path, text] of stubPages({ devices, alarms, language })) files.set(path, text)
  for (const [path, content] of files) {
    mkdirSync(dirname(join(folder, path)), { recursive: true })
    writeFileSync(join(folder, path), content)
  }
  const counts = countFindings((await checkFolder(folder, options)).findings)
  say(`${files.size} files in ${folder}: ${counts.errors} errors, ${counts.warnings} warnings, ${counts.notes} notes`)
  say(`next: \`fettle check ${folder}\`; each page stays a draft until \`draft: true\` is taken out of it`)
  return 0
}

function devicesOf(tags: readonly string[], descriptions: readonly string[]): { tag: string; description: string }[] {
  const first = new Map<string, string>()
  for (const [index, tag] of tags.entries()) if (tag !== '' && /\d/.test(tag) && !first.has(tag)) first.set(tag, descriptions[index] || tag)
  return [...first].map(([tag, description]) => ({ tag, description }))
}

function deviceList(devices: readonly { tag: string; description: string }[], designation: Designation): string {
  const cell = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
  const kindOf = (tag: string) => kindOfLoopTag(tag, designation) ?? kindOfLetters(tag) ?? 'device'
  return `tag,kind,description\n${devices.map(({ tag, description }) => [tag, kindOf(tag), description].map(cell).join(',')).join('\n')}\n`
}

function idOf(name: string): string {
  const id = name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
  return id === '' ? 'machine' : id
}

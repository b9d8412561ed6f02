import { z } from 'zod'
import { compare, startOfFile } from '../source/place.ts'
import { type MachineRecords, type RecordTable, recordTables } from './records.ts'

/** Name of the file in a release that holds the machine's records. */
export const dataFileName = 'data.json'
const format = 'fettle-data-4'
/** Releases of before -> lists of which they say nothing. */
const older: Readonly<Record<string, readonly RecordTable[]>> = { 'fettle-data-2': ['hazards', 'checkout'], 'fettle-data-3': ['checkout'] }

const rows = z.array(z.record(z.string(), z.string()))
const dataFile = z.object({
  format: z.enum([format, ...Object.keys(older)]),
  revision: z.object({
    id: z.string(),
    model: z.string(),
    document: z.string(),
    revision: z.string(),
    date: z.string(),
    serials: z.array(z.string()),
    fitted: z.array(z.string()).optional(),
  }),
  tables: z.object({
    devices: rows.optional(),
    signals: rows.optional(),
    cards: rows.optional(),
    parts: rows.optional(),
    drawings: rows.optional(),
    alarms: rows.optional(),
    formats: rows.optional(),
    energy: rows.optional(),
    hazards: rows.optional(),
    checkout: rows.optional(),
  }),
})

/**
 * The records of a release as text: one row a line, without the places of the files that they come from. A list that
 * the machine does not have is not there.
 */
export function writeDataFile({ revision, tables, unlisted }: MachineRecords): string {
  const listed = recordTables.filter((table) => !unlisted.includes(table))
  const lists = listed.map((table) => {
    const lines = tables[table].map(
      ({ values }) => `   ${JSON.stringify(Object.fromEntries(Object.entries(values).sort(([a], [b]) => compare(a, b))))}`,
    )
    return `  ${JSON.stringify(table)}: [${lines.length > 0 ? `\n${lines.join(',\n')}\n  ` : ''}]`
  })
  return `{\n "format": ${JSON.stringify(format)},\n "revision": ${JSON.stringify(revision)},\n "tables": {\n${lists.join(',\n')}\n }\n}\n`
}

/** Reads what `writeDataFile` wrote, or says what is wrong with it. */
export function readDataFile(text: string): { records: MachineRecords } | { problem: string } {
  const parsed = dataFile.safeParse(parseJson(text))
  if (!parsed.success) {
    const [issue] = parsed.error.issues
    return { problem: `its \`${dataFileName}\` is not in the form \`${format}\`: at \`${issue?.path.join('.')}\`, ${issue?.message}` }
  }
  const { revision, tables, format: written } = parsed.data
  const unsaid = older[written] ?? []
  const located = (list: readonly Record<string, string>[] = []) => list.map((values) => ({ values }))
  return {
    records: {
      revision,
      tables: {
        devices: located(tables.devices),
        signals: located(tables.signals),
        cards: located(tables.cards),
        parts: located(tables.parts),
        drawings: located(tables.drawings),
        alarms: located(tables.alarms),
        formats: located(tables.formats),
        energy: located(tables.energy),
        hazards: located(tables.hazards),
        checkout: located(tables.checkout),
      },
      leftOut: [],
      columns: {},
      unlisted: recordTables.filter((table) => !tables[table] && !unsaid.includes(table)),
      lost: unsaid.map((table) => ({ table, extent: 'list' as const, place: startOfFile(dataFileName) })),
    },
  }
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined // the caller says so in its own words
  }
}

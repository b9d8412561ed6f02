import { z } from 'zod'
import { ownFirst, ownSucceeding } from '../isa51-letters.ts'
import { identifier, words } from './common.ts'
import { manual } from './manual.ts'
import { collections } from './pages.ts'
import { panel } from './panel.ts'

/** Where one data file lies and what its columns are called. */
const dataFile = z.strictObject({
  file: z.string().min(1).describe('Path from the machine folder, with forward slashes'),
  sheet: z.string().min(1).optional().describe('Name of the worksheet in an XLSX workbook; not needed where it has only one'),
  headerRow: z.number().int().positive().optional().describe('Row of the headings in an XLSX workbook; without it the first row that is not empty'),
  values: z
    .record(z.string(), z.record(z.string(), z.string()))
    .optional()
    .describe(
      'Our column name -> a word of the file -> our word for it: `contact: { NA: NO }`. Empty: the column has no value then. A word that is not listed is ours',
    ),
  decimal: z.enum(['point', 'comma']).optional().describe('Decimal sign of the numbers in a CSV file; without it the point'),
  columns: z
    .record(z.string(), z.string().min(1))
    .optional()
    .describe(
      'Our column name -> the heading in the file. A column that is not listed keeps our name. Text in another language: `description.es: Descripción`',
    ),
})

/** The letters of loop tags that the standard leaves to the builder, and those of things that are no instruments. */
const isaLegend = z.strictObject({
  first: z.partialRecord(z.enum(ownFirst), words).optional().describe('Letter in first place -> the variable it stands for'),
  succeeding: z.partialRecord(z.enum(ownSucceeding), words).optional().describe('Letter after it -> what the device does'),
  equipment: z
    .record(z.string().regex(/^[A-Z]+$/), words)
    .optional()
    .describe('Letters of things that are no instruments -> what they are: `M: motor`, for M-201'),
})

const readingLimit = z.strictObject({
  grade: z.number().positive().optional().describe('Highest Flesch-Kincaid grade of an English page for this reader; without it 8, 9 or 12'),
  ease: z
    .number()
    .min(0)
    .max(100)
    .optional()
    .describe('Lowest ease of a Spanish page for this reader, on the INFLESZ scale; without it 65, 55 or 40'),
})

/** What a translation can be asked to cover: the pages of a collection, or every text that is in no page. */
export const scopes = [...collections, 'data'] as const

/** The schema of `machine.yaml`. */
export const machineFile = z.strictObject({
  id: z
    .string()
    .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
    .describe('Kebab case; names the folder of the built site'),
  model: identifier.describe('Model name on the nameplate'),
  name: words.describe('What the machine is, in each language'),
  builder: z.string().min(1).describe('Who built it'),
  document: identifier.describe('Document number of the manual'),
  revision: identifier.describe('Revision of the manual, quoted if it is a number'),
  builtYear: z.number().int().min(1900).max(2200).optional().describe('Year of construction, as on the nameplate'),
  date: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/)
    .describe('Date of this revision, quoted: "2026-09-14". Nothing else in the build knows a date'),
  demonstration: z.boolean().optional().describe('Marks every page as invented demonstration data'),
  designation: z
    .union([
      z.enum(['nfpa79', 'iec81346', 'isa51']),
      z
        .strictObject({ isa51: isaLegend.optional(), pattern: z.string().min(1).optional().describe('Regular expression over the whole tag') })
        .refine(({ isa51, pattern }) => (isa51 === undefined) !== (pattern === undefined), {
          params: { wants: 'takes one of `isa51` and `pattern`' },
        }),
    ])
    .describe('Grammar of the device tags: NFPA-79-like letters and numbers, IEC 81346, loop tags of ANSI/ISA-5.1, or a pattern of the builder'),
  languages: z
    .strictObject({
      source: z
        .string()
        .regex(/^[a-z]{2}$/)
        .describe('Language the pages are written in'),
      translations: z.array(z.string().regex(/^[a-z]{2}$/)).optional(),
      complete: z
        .record(z.string().regex(/^[a-z]{2}$/), z.array(z.enum(scopes)))
        .optional()
        .describe(
          'Language -> what must be whole in it: collections of pages, and `data` for the lists. A language that is not named here: everything. For the source language this means the shared pages, where they are written in another',
        ),
    })
    .refine(({ source, translations = [] }) => new Set([source, ...translations]).size === translations.length + 1, {
      message: 'A language is listed twice',
    })
    .refine(
      ({ source, translations = [], complete = {} }) => Object.keys(complete).every((language) => [source, ...translations].includes(language)),
      {
        path: ['complete'],
        message: 'A language is neither the source nor among the translations',
      },
    ),
  units: z
    .array(
      z.strictObject({
        serial: identifier.describe('Serial number of one machine of this model'),
        fitted: z.array(identifier).describe('Options fitted to it'),
      }),
    )
    .min(1)
    .describe('Machines built from this folder; the first is built unless --serial names another'),
  options: z.record(z.string(), words).optional().describe('Option id -> what it is'),
  readers: z.strictObject({ operator: readingLimit.optional(), maintenance: readingLimit.optional(), engineer: readingLimit.optional() }).optional(),
  areas: z
    .array(
      z.strictObject({
        id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
        name: words,
        outline: z
          .tuple([z.number(), z.number(), z.number().positive(), z.number().positive()])
          .optional()
          .describe('x, y, width, height on the plan, in the units of the plan drawing'),
      }),
    )
    .optional(),
  plan: z
    .strictObject({ drawing: identifier, sheet: z.number().int().positive().optional() })
    .optional()
    .describe('The drawing that shows the machine from above; device positions are in its units'),
  panel: panel.optional().describe('The screen on the machine: text and targets of the pages are as large on it as its reader needs'),
  ownUnits: z.array(z.string().min(1)).optional().describe('Units of this machine besides those of SI and the trade'),
  ownWords: z
    .record(z.string().regex(/^[a-z]{2}$/), z.record(z.string().regex(/^\p{L}[\p{L}'’-]*$/u), z.number().int().min(1).max(15)))
    .optional()
    .describe('Language -> word -> its syllables, for words of this machine that the reading level counts wrongly'),
  controller: z
    .strictObject({
      wordNumbers: z
        .enum(['bytes', 'words'])
        .optional()
        .describe(
          'What the number of a word counts: `%IW4` is bytes 4 and 5 (bytes), or bytes 8 and 9 (words). Without it only certain overlaps are found',
        ),
      highestBit: z
        .union([z.literal(7), z.literal(15), z.literal(31)])
        .optional()
        .describe('Highest bit number: 7 where bits are counted in bytes, 15 in words. Without it 7 is meant where hardly a bit is above it'),
      address: z.string().min(1).optional().describe('Pattern of the addresses, a regular expression, where they have a form of their own'),
    })
    .optional()
    .describe('How the controller counts its inputs and outputs'),
  safetyMessages: z
    .strictObject({
      form: z.enum(['z535', 'iso-3864-2']).describe('Panels as ANSI Z535 has them, or as ISO 3864-2: no NOTICE panel, sign W001, RAL colours'),
    })
    .optional()
    .describe('How safety messages look; without it as ANSI Z535 has them'),
  manual: manual.optional().describe('How the instructions are given with the machine, for the European Union'),
  rules: z
    .record(z.string(), z.enum(['error', 'warning', 'note']))
    .optional()
    .describe('Rule id -> its severity on this machine. A rule that guards people can only be raised'),
  data: z.strictObject({
    devices: dataFile.optional(),
    signals: dataFile.optional(),
    cards: dataFile.optional(),
    parts: dataFile.optional(),
    drawings: dataFile.optional(),
    alarms: dataFile.optional(),
    formats: dataFile.optional(),
    symbols: z
      .strictObject({
        ...dataFile.shape,
        tag: z
          .string()
          .min(1)
          .optional()
          .describe(
            'Pattern that finds the device tag in the name or comment of a variable, for a machine without an I/O list: `^I_(?<tag>[A-Z]+\\d+)`',
          ),
      })
      .optional()
      .describe('Variables of the controller, as PLCopen XML or a list. Compared with the I/O list; the source of the signals where there is none'),
    energy: z.strictObject({ file: z.string() }).optional(),
    hazards: z.strictObject({ file: z.string() }).optional().describe('Hazards of the risk assessment that leave a risk'),
    checkout: z.strictObject({ file: z.string() }).optional().describe('What devices and cards should read, from data sheets and measurements'),
  }),
})
export type MachineFile = z.infer<typeof machineFile>

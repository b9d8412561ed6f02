import type { CommandSpec, Options } from './options.ts'

export interface Command extends CommandSpec {
  load(): Promise<{ run(options: Options): Promise<number> }>
}

const shared = { value: 'folder', help: 'pages for every machine (default: the content/ beside Fettle)' }
const serial = { value: 'number', help: 'serial number of the unit (default: the first in machine.yaml)' }

const noCache = { help: 'read and check everything anew, and keep nothing in .fettle/' }

/** Every command of `fettle`. A command is one file; it is read when it is used. */
export const commands: Readonly<Record<string, Command>> = {
  check: {
    summary: 'compare the pages with the machine and report every disagreement',
    words: ['<folder>'],
    options: {
      format: { value: 'form', oneOf: ['text', 'short', 'json', 'sarif', 'junit'], help: 'text (default), short, json, sarif or junit' },
      serial: { ...serial, help: 'check this unit only (default: all units)' },
      shared,
      watch: { help: 'check again after each change, until Ctrl+C' },
      'no-cache': noCache,
    },
    load: () => import('./check.ts'),
  },
  build: {
    summary: 'check, then build the site, its search, its manifest and its zip file; of several machines those that have changed',
    words: ['<folder…>'],
    options: {
      out: { value: 'folder', help: 'where the site goes (default: dist/<machine id>); of several machines the folder that holds them' },
      jobs: {
        value: 'number',
        help: 'how many machines are built at once (default: one a core, as far as memory allows); with it one machine too is left where nothing has changed',
      },
      serial,
      shared,
      'no-cache': noCache,
      'no-zip': { help: 'leave out the zip file' },
    },
    load: () => import('./build.ts'),
  },
  'start-page': {
    summary: 'write a page over all built machines in a folder: each with its name, model, serial number and languages',
    words: ['<folder of builds>'],
    options: {},
    load: () => import('./start-page.ts'),
  },
  print: {
    summary: 'check, then print the manual as a PDF with page numbers, an index and drawings',
    words: ['<folder>'],
    options: {
      what: {
        value: 'what',
        oneOf: ['book', 'safety', 'lockout', 'lesson', 'alarms', 'parts', 'set-up', 'checkout', 'sign-off'],
        help: 'book (default), safety, or sheets: lockout, lesson, alarms, parts, set-up, checkout, sign-off',
      },
      tag: { value: 'tag', help: 'with --what checkout: the record of this device alone' },
      language: { value: 'code', help: 'language of the text (default: the source language)' },
      paper: { value: 'size', oneOf: ['a4', 'letter'], help: 'a4 (default) or letter' },
      drawings: { value: 'how', oneOf: ['turned', 'folded'], help: 'of a book: turned on its paper (default), or on A3 or 11 × 17 in, to be folded' },
      out: { value: 'file or folder', help: 'where the PDF goes, of sheets a folder (default: in dist/)' },
      serial,
      shared,
      'no-cache': noCache,
    },
    load: () => import('./print.ts'),
  },
  new: {
    summary: 'start a machine folder from exports: guess the columns, and write a draft page for each device and alarm',
    words: ['<folder>'],
    options: {
      io: { value: 'file', help: 'I/O list' },
      devices: { value: 'file', help: 'device list (default: made from the I/O list)' },
      cards: { value: 'file', help: 'list of I/O cards' },
      bom: { value: 'file', help: 'bill of materials' },
      drawings: { value: 'file', help: 'drawing register' },
      alarms: { value: 'file', help: 'alarm list' },
      formats: { value: 'file', help: 'list of formats' },
      language: { value: 'code', help: 'language the pages will be written in (default: en)' },
      shared,
    },
    load: () => import('./new.ts'),
  },
  preview: {
    summary: 'build, show the site on this computer, and build again after each change',
    words: ['<folder>'],
    options: { port: { value: 'number', help: 'port on 127.0.0.1 (default: 4600)' }, serial, shared, 'no-cache': noCache },
    load: () => import('./preview.ts'),
  },
  translated: {
    summary: 'note in a translation which text of its source it renders, after a translator has compared the two',
    words: ['<file…>'],
    options: {},
    load: () => import('./translated.ts'),
  },
  revised: {
    summary: 'note in a lesson what its last revision teaches, so that a later change without a new revision is found',
    words: ['<file…>'],
    options: {},
    load: () => import('./revised.ts'),
  },
  verify: {
    summary: 'compare a built folder or zip file with its manifest',
    words: ['<folder or zip>'],
    options: { format: { value: 'form', oneOf: ['text', 'json'], help: 'text (default) or json' } },
    load: () => import('./verify.ts'),
  },
  changes: {
    summary: 'say what a new revision of the data touches, and which pages speak of it',
    words: ['<old folder or release>', '<new folder or release>'],
    options: {
      format: { value: 'form', oneOf: ['text', 'json', 'html'], help: 'text (default), json or html' },
      out: { value: 'file', help: 'where the report goes (default: the screen)' },
      records: { value: 'file', help: 'records of training (.jsonl): name who has to be trained again because of a change' },
      serial: { ...serial, help: 'compare this unit only (default: all units, or the unit of a release)' },
      shared,
    },
    load: () => import('./changes.ts'),
  },
  package: {
    summary: 'check, then pack the lessons of each sequence for a training system of the office',
    words: ['<folder>'],
    options: {
      format: { value: 'form', oneOf: ['cmi5', 'scorm-1.2', 'scorm-2004'], help: 'cmi5 (default), scorm-1.2 or scorm-2004' },
      sequence: { value: 'id', help: 'only this sequence of training.yaml (default: a package for each)' },
      language: { value: 'code', help: 'language of the lessons (default: the source language)' },
      out: { value: 'folder', help: 'where the zip files go (default: dist/<machine id>-packages)' },
      serial,
      shared,
      'no-cache': noCache,
    },
    load: () => import('./package.ts'),
  },
  lockout: {
    summary: 'print the sequence of a lockout, put together from its energy sources',
    words: ['<folder>', '<lockout>'],
    options: {
      format: { value: 'form', oneOf: ['text', 'json'], help: 'text (default) or json' },
      language: { value: 'code', help: 'language of the text (default: the source language)' },
      serial,
      shared,
      'no-cache': noCache,
    },
    load: () => import('./lockout.ts'),
  },
  reading: {
    summary: 'say how hard a page, a draft or a folder of them is to read, and where',
    words: ['<file or folder>'],
    options: {
      format: { value: 'form', oneOf: ['text', 'json'], help: 'text (default) or json' },
      language: { value: 'code', help: 'only this language; for a draft the language it is in (default: from its name, else en)' },
      reader: {
        value: 'reader',
        oneOf: ['operator', 'maintenance', 'engineer'],
        help: 'whom a draft addresses (default: from its head, else operator)',
      },
      serial,
      shared,
      'no-cache': noCache,
    },
    load: () => import('./reading.ts'),
  },
  expect: {
    summary: 'say what a device should read at each point, and what a reading means',
    words: ['<folder>', '<tag>'],
    options: {
      supply: { value: 'voltage', help: 'supply that was measured, in V (default: the nominal one)' },
      measured: {
        value: 'reading',
        several: true,
        help: 'a reading with its unit: "12,1 mA", "terminal:target=0.2 V", "card-led:none=dark"; may be given several times',
      },
      format: { value: 'form', oneOf: ['text', 'json'], help: 'text (default) or json' },
      language: { value: 'code', help: 'language of the text (default: the source language)' },
      serial,
      shared,
      'no-cache': noCache,
    },
    load: () => import('./expect.ts'),
  },
  train: {
    summary: 'cut the lessons of a role into sessions, without those that a person has done',
    words: ['<folder>'],
    options: {
      role: { value: 'role', help: 'role of training.yaml' },
      done: { value: 'lessons', help: 'lessons that are done: "machine-tour,stop-and-lock"' },
      session: { value: 'minutes', help: 'longest session (default: from training.yaml, else 45)' },
      records: { value: 'file', help: 'records of training (.jsonl): what holds in them is done' },
      person: { value: 'id', help: 'whose records count (default: the only person in them)' },
      format: { value: 'form', oneOf: ['text', 'json', 'csv'], help: 'text (default), json or csv' },
      language: { value: 'code', help: 'language of the text (default: the source language)' },
      serial,
      shared,
      'no-cache': noCache,
    },
    load: () => import('./train.ts'),
  },
  explain: {
    summary: 'say what a rule checks, why, and where it comes from',
    words: ['[rule]'],
    options: {},
    load: () => import('./explain.ts'),
  },
  schema: {
    summary: 'write the JSON Schemas for machine.yaml, the data and the pages',
    words: ['<folder>'],
    options: {},
    load: () => import('./schema.ts'),
  },
}

/** The help of one command, or of all. */
export function helpText(name?: string): string {
  const command = name === undefined ? undefined : commands[name]
  if (!command || name === undefined) {
    const width = Math.max(...Object.keys(commands).map((it) => it.length))
    const list = Object.entries(commands).map(([it, { summary }]) => `  ${it.padEnd(width)}  ${summary}`)
    return `Fettle: machine manuals that are checked like code and open from disk\n\nusage: fettle <command> …\n\n${list.join('\n')}\n\n\`fettle <command> --help\` tells more. Exit codes: 0 no error, 1 errors found, 2 could not run.\n`
  }
  const options = Object.entries(command.options).map(([it, { value, help }]) => [`--${it}${value ? ` <${value}>` : ''}`, help] as const)
  const width = Math.max(0, ...options.map(([it]) => it.length))
  return `fettle ${name}: ${command.summary}\n\nusage: fettle ${name} ${command.words.join(' ')}${options.length > 0 ? ' [options]' : ''}\n${options.length > 0 ? `\n${options.map(([it, help]) => `  ${it.padEnd(width)}  ${help}`).join('\n')}\n` : ''}`
}

import { existsSync, statSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { wordingRules } from '../check/wording-rules.ts'
import { levelReader } from '../model/page-level.ts'
import { readPages } from '../model/prose/read-text.ts'
import { readerOf } from '../model/reading-limit.ts'
import { type ReadingFile, readingJson, readingText } from '../report/reading.ts'
import { checkFolder } from './load.ts'
import { type Options, UsageError } from './options.ts'
import { readDrafts } from './read-drafts.ts'
import { readingFile } from './reading-file.ts'

const about = new Set(wordingRules.map(({ id }) => id))

/** Says how hard pages or drafts are to read. A page of a machine is read with the glossary, names and limits of the machine. */
export async function run(options: Options): Promise<number> {
  const [path = '.'] = options.words
  if (!existsSync(path)) throw new UsageError(`there is no file or folder \`${path}\``)
  const folder = machineFolderOf(path)
  const { files, texts } = folder === undefined ? readDrafts(path, options) : await readMachine(folder, path, options)
  if (files.length === 0) throw new UsageError(`\`${path}\` holds no page${options.has('language') ? ` in \`${options.get('language')}\`` : ''}`)
  process.stdout.write(options.get('format') === 'json' ? readingJson(files) : readingText(files, texts))
  const isBad = ({ level, findings }: ReadingFile) => level?.tooHard || findings.some(({ severity }) => severity === 'error')
  return files.some(isBad) ? 1 : 0
}

/** The machine folder that a path is, or lies in. */
function machineFolderOf(path: string): string | undefined {
  for (let at = resolve(path); ; at = dirname(at)) {
    if (existsSync(join(at, 'machine.yaml'))) return relative(process.cwd(), at) || '.'
    if (dirname(at) === at) return undefined
  }
}

async function readMachine(folder: string, path: string, options: Options) {
  const { loaded, machine, findings } = await checkFolder(folder, options)
  if (!machine) throw new UsageError(`\`${folder}\` cannot be read as a machine; \`fettle check\` says why`)
  const asked = relative(process.cwd(), resolve(path)).split('\\').join('/')
  const isAsked = (file: string) =>
    resolve(folder) === resolve(path) || file === asked || (statSync(path).isDirectory() && file.startsWith(`${asked}/`))
  const language = options.get('language')
  const levelFor = levelReader(machine)
  const files = readPages(machine)
    .filter((read) => isAsked(read.text.source.file) && (language === undefined || read.language === language))
    .map((read) => {
      const { file } = read.text.source
      const own = findings.filter(({ rule, place }) => about.has(rule) && place.file === file)
      return readingFile(file, read, levelFor(read, readerOf(read.page)), own)
    })
  return { files, texts: loaded.texts }
}

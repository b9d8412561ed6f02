import { existsSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { builtBelow, machineOf } from '../bundle/built-below.ts'
import { type StartEntry, startPageMark, startPages } from '../site/start-page.ts'
import { labelledLanguages } from '../site/words/labels.ts'
import { type Options, UsageError } from './options.ts'

export async function run(options: Options): Promise<number> {
  const [folder = '.'] = options.words
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory()) throw new UsageError(`there is no folder \`${folder}\``)
  const written = await writeStartPage(folder)
  if ('refused' in written || written.machines === 0) {
    process.stderr.write(`fettle start-page: ${'refused' in written ? written.refused : `no built machine lies in \`${folder}\``}\n`)
    return 2
  }
  process.stderr.write(`${written.machines} machines in ${join(folder, 'index.html')}\n`)
  return 0
}

const named = z.object({
  model: z.string(),
  serial: z.string(),
  revision: z.string(),
  // A build of before these were told is found by its model and number.
  name: z.record(z.string(), z.string()).default({}),
  languages: z.array(z.string()).default([]),
})

/** Why a folder cannot take a start page: one of somebody else lies there, or it is a built machine itself. */
export function startPageObstacle(dir: string): string | undefined {
  if (machineOf(dir)) return `\`${dir}\` is a built machine itself: choose the folder that holds it`
  const foreign = startPageFiles(dir).find((file) => !readFileSync(file, 'utf8').includes(startPageMark))
  return foreign === undefined
    ? undefined
    : `\`${foreign}\` is no start page of ours and is left as it is: move it elsewhere, or choose another folder`
}

/** Writes a page over every built machine in a folder, and none where there is no machine. */
export async function writeStartPage(dir: string): Promise<{ machines: number } | { refused: string }> {
  const obstacle = startPageObstacle(dir)
  if (obstacle !== undefined) return { refused: obstacle }
  const entries = existsSync(dir) ? builtBelow(dir).map(entryOf) : []
  if (entries.length === 0) return { machines: 0 }
  const [{ inlineStyle }, { inlineScript }] = await Promise.all([import('../site/inline-style.ts'), import('../site/inline-script.ts')])
  const pages = startPages(entries, { style: await inlineStyle('start-page.css'), script: await inlineScript('start-page.ts') })
  for (const [name, text] of pages) {
    const unfinished = join(dir, `.${name}.new-${process.pid}`)
    writeFileSync(unfinished, text)
    renameSync(unfinished, join(dir, name))
  }
  const current = new Set([...pages.keys()].map((name) => join(dir, name)))
  for (const file of startPageFiles(dir)) if (!current.has(file)) rmSync(file)
  return { machines: entries.length }
}

/** The files in a folder that have the name of a start page. */
function startPageFiles(dir: string): string[] {
  return ['index.html', ...labelledLanguages.map((language) => `index.${language}.html`)]
    .map((name) => join(dir, name))
    .filter((file) => existsSync(file))
}

function entryOf({ folder, machine }: ReturnType<typeof builtBelow>[number]): StartEntry {
  const parsed = named.safeParse(machine)
  if (!parsed.success) throw new Error(`the manifest of \`${folder}\` does not say model, serial number and revision`)
  return { folder, ...parsed.data }
}

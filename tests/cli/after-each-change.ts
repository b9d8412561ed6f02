// Run by after-each-change.test.ts as a process of its own, since Astro changes the working directory: what a preview shows after each
// change, and what a build gives that keeps what it can, compared with a clean build of the same files. Prints, for each change, the
// paths that differ, and what the build took from what was kept.
import { appendFileSync, cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative } from 'node:path'
import sharp from 'sharp'
import { buildSite } from '../../src/cli/build-site.ts'
import { keptFilesIn } from '../../src/cli/kept-files.ts'
import { checkFolder, countFindings } from '../../src/cli/load.ts'
import { parseOptions } from '../../src/cli/options.ts'
import { type PreviewSite, previewSite } from '../../src/cli/preview-site.ts'
import type { Sound } from '../../src/cli/release-inputs.ts'
import { keepingMemory, type Memory, noMemory } from '../../src/load/memory.ts'
import { graphOf } from '../../src/model/graph.ts'
import { inItsLanguages } from '../../src/model/in-its-languages.ts'
import { planSite } from '../../src/site/site-map.ts'
import type { KeptFiles } from '../../src/source/kept-files.ts'
import { editFile } from './edit-file.ts'

const dir = mkdtempSync(join(tmpdir(), 'fettle-'))
const machine = join(dir, 'machine')
const shared = join(dir, 'content')
cpSync('tests/fixtures/sound-machine', machine, { recursive: true })
cpSync('content', shared, { recursive: true })

const photo = async (background: string) => {
  const picture = sharp({ create: { width: 80, height: 60, channels: 3, background } })
  writeFileSync(join(machine, 'photos/press.jpg'), await picture.jpeg().toBuffer())
}
const pdf = (name: string) => cpSync(`tests/fixtures/drawings/${name}`, join(machine, 'drawings/P-1.pdf'))
await photo('#345')
pdf('chromium.pdf')
appendFileSync(join(machine, 'data/drawings.csv'), 'P-1,Valves,schematic,1,A\n')
appendFileSync(join(machine, 'pages/front/use.mdx'), '\n<Figure image="photos/press.jpg" alt="The press">\n\nThe press.\n\n</Figure>\n')

const edit = (path: string, was: string, is: string) => () => editFile(join(dir, path), was, is)
const lessSpanish = edit('machine/machine.yaml', 'translations: [es], complete: { es: [] }', 'translations: []')

const changes: readonly (readonly [what: string, change: () => void | Promise<void>])[] = [
  ['a text', edit('machine/pages/front/use.mdx', 'holds a crate', 'holds one crate')],
  ['a title that others show', edit('machine/pages/front/use.mdx', 'title: Intended use', 'title: What it is for')],
  ['a caution that others include', edit('machine/pages/cautions/crush.mdx', 'closes with 5 kN', 'closes with 6 kN')],
  ['a translation', edit('machine/pages/front/care.es.mdx', 'paño seco', 'paño limpio')],
  ['a device', edit('machine/data/devices.csv', 'Clamp pressure', 'Pressure of the clamp')],
  ['an alarm more', edit('machine/data/alarms.csv', 'PS-101\n', 'PS-101\nA02,Supply pressure low,stop,press,PS-102\n')],
  ['a drawing', edit('machine/drawings/E-1.1.svg', 'x="10" y="60"', 'x="30" y="60"')],
  ['a photo', () => photo('#543')],
  ['a sheet of a PDF', () => pdf('libreoffice.pdf')],
  ['a page more', () => writeFileSync(join(machine, 'pages/front/more.mdx'), '---\ntitle: More\n---\nSee [use](front/use).\n')],
  ['a page less', () => rmSync(join(machine, 'pages/front/more.mdx'))],
  ['the revision', edit('machine/machine.yaml', 'revision: A', 'revision: B')],
  ['an option', edit('machine/machine.yaml', "serial: '001', fitted: [fan]", "serial: '001', fitted: []")],
  [
    'a language less',
    () => {
      lessSpanish()
      rmSync(join(machine, 'pages/front/care.es.mdx'))
    },
  ],
  ['a word that all machines share', edit('content/glossary.yaml', 'It has no moving part', 'Nothing in it moves')],
]

const options = parseOptions([machine, '--shared', shared], {
  summary: '',
  words: ['<folder>'],
  options: { shared: { value: '<folder>', help: '' }, serial: { value: '<no>', help: '' }, 'no-cache': { help: '' } },
})
const quiet = { step: () => undefined, done: () => undefined }

async function checkedWith(memory: Memory): Promise<Sound> {
  const { machine: checked, findings, accepted } = await checkFolder(machine, options, memory)
  const counts = countFindings(findings)
  if (!checked || counts.errors > 0) throw new Error(JSON.stringify(findings, null, 1))
  return { machine: inItsLanguages(checked), counts, accepted }
}

function pathsIn(folder: string): string[] {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile())
  return files.map((entry) => relative(folder, join(entry.parentPath, entry.name)))
}

/** What a store gave back in the round that runs, by its kind. */
const taken = new Map<string, number>()

function counting(store: KeptFiles): KeptFiles {
  return {
    ...store,
    get(of) {
      const made = store.get(of)
      const [kind = ''] = of
      if (made) taken.set(kind, (taken.get(kind) ?? 0) + 1)
      return made
    },
  }
}

/** Views alone are kept: they are compiled anew in the first round, and compared by kept-views.test.ts. */
const nothing: KeptFiles = { get: () => undefined, set: () => undefined }
const kept = counting(keptFilesIn(join(dir, 'made'), 'the tool of the test'))

/** The files of two folders that are not the same. */
function differences(one: string, other: string): string[] {
  const paths = new Set([...pathsIn(one), ...pathsIn(other)])
  const bytes = (folder: string, path: string) => (existsSync(join(folder, path)) ? readFileSync(join(folder, path), 'latin1') : undefined)
  return [...paths].filter((path) => bytes(one, path) !== bytes(other, path))
}

async function textAt(preview: PreviewSite, path: string): Promise<string | undefined> {
  const found = await preview.at(path)
  if (!found || 'later' in found) return undefined
  return 'html' in found ? found.html : readFileSync(found.file, 'latin1')
}

try {
  const previewDir = join(dir, 'preview')
  mkdirSync(previewDir)
  let ready: (() => void) | undefined
  const preview = previewSite(previewDir, [machine, '--shared', shared], nothing, quiet, () => ready?.())
  const memory = keepingMemory()
  await preview.show(await checkedWith(memory))
  for (const [index, [what, change]] of changes.entries()) {
    await change()
    const refused = await preview.show(await checkedWith(memory))
    if (refused) throw new Error(refused.refused)
    // Pages first, since a clean build hands its own machine over; the search after the last change.
    const { machine: now } = await checkedWith(memory)
    const shown = new Map<string, string | undefined>()
    for (const { path } of planSite(now, graphOf(now))) shown.set(path, await textAt(preview, path))
    const clean = join(dir, 'clean')
    const input = await checkedWith(noMemory)
    await buildSite({ ...input, outDir: clean, zip: false, preview: true, kept: index === 0 ? undefined : nothing, progress: quiet })
    const withKept = join(dir, 'with-kept')
    taken.clear()
    await buildSite({ ...input, outDir: withKept, zip: false, preview: true, kept, progress: quiet })
    const keptDiffer = differences(clean, withKept)
    const compared = pathsIn(clean).filter((path) => /\.html$|^(assets|sheets|images)\//.test(path))
    const differ: string[] = []
    for (const path of compared) {
      const html = path.endsWith('.html')
      const text = html ? shown.get(path) : await textAt(preview, path)
      if (text !== readFileSync(join(clean, path), html ? 'utf8' : 'latin1')) differ.push(path)
    }
    // The search is that of a build, whose pages have no marks.
    if (index === changes.length - 1) {
      await buildSite({ ...input, outDir: clean, zip: false, kept: undefined, progress: quiet })
      const isReady = new Promise<void>((done) => {
        ready = done
      })
      if ((await textAt(preview, 'search/core.js')) !== undefined) throw new Error('the search is there before it was built')
      await isReady
      for (const path of pathsIn(clean).filter((path) => /^search\/|^links\.|^data\./.test(path))) {
        compared.push(path)
        if ((await textAt(preview, path)) !== readFileSync(join(clean, path), 'latin1')) differ.push(path)
      }
    }
    process.stdout.write(
      `${JSON.stringify({ what, compared: compared.length, pages: shown.size, differ, keptDiffer, taken: Object.fromEntries(taken) })}\n`,
    )
  }
} finally {
  rmSync(dir, { recursive: true, force: true })
}

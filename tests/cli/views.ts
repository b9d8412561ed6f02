// Run by kept-views.test.ts as a process of its own, since Astro changes the working directory. Prints what became of opening the views.
import { readdirSync } from 'node:fs'
import { openViews } from '../../src/cli/kept-views.ts'
import { packageDir } from '../../src/cli/paths.ts'
import { siteInput } from '../../src/cli/write-pages.ts'
import { diskFolder, memoryFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import { handOver } from '../../src/site/handover.ts'

const [machine] = loadMachine(diskFolder('tests/fixtures/sound-machine', ''), memoryFolder(new Map(), 'content/')).machines
if (!machine) throw new Error('the machine of the test cannot be read')
const input = siteInput({ machine, counts: { errors: 0, warnings: 0, notes: 0 }, accepted: [], preview: false }, 'assets')
handOver(input)
const steps: string[] = []
const progress = { step: (text: string) => steps.push(text), done: () => undefined }
const anewFolders = () =>
  readdirSync(`${packageDir}/node_modules/.cache/fettle/views`).filter((name) => name.startsWith(`anew-${process.pid}-`)).length

await openViews(false, progress)
steps.length = 0
const kept = await openViews(false, progress)
const stepsOfKept = [...steps]
const anew = await openViews(true, progress)
const folders = [anewFolders()]
const differ: string[] = []
for (const page of input.pages) if ((await kept.render(page)) !== (await anew.render(page))) differ.push(page.path)
anew.close()
folders.push(anewFolders())
const page = input.pages.find(({ view }) => view.kind === 'device')
if (!page) throw new Error('the machine of the test has no device')
const failed = await kept
  .render({ ...page, address: 'tags/NONE.html', view: { kind: 'device', tag: 'NONE' } })
  .then(String, (error: Error) => error.message)
process.stdout.write(JSON.stringify({ stepsOfKept, steps, folders, pages: input.pages.length, differ, failed }))

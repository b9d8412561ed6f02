import { spawn } from 'node:child_process'
import { cpSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { aboutRun } from './about-run.ts'
import { answers, ask, interrupt } from './asked-process.ts'
import { inTemporaryFolder } from './in-temporary-folder.ts'
import { median } from './median.ts'

const resultFile = 'tests/bench/results/preview.md'

/** Pages of the example that are saved in turn, with the address that shows them. */
const saved = [
  { file: 'pages/procedures/stop.mdx', address: 'procedures/stop.html' },
  { file: 'pages/alarms/a0201-lift-position.mdx', address: 'alarms/A0201.html' },
  { file: 'pages/lockout/lo-2.mdx', address: 'lockout/lo-2.html' },
] as const

/**
 * How long it takes from a save of a page of the example until the preview has sent that page anew, over so many saves,
 * and the heap of its process after every tenth of them, behind a collection.
 */
export function measurePreview(saves: number): Promise<string> {
  return inTemporaryFolder(new Map(), async (dir) => {
    cpSync('example-machine', join(dir, 'machine'), { recursive: true })
    cpSync('content', join(dir, 'content'), { recursive: true })
    const started = performance.now()
    const preview = await startPreview(dir)
    const firstMs = performance.now() - started
    await fetch(`${preview.url}index.html`)
    await pause(6_000)
    const events = (await fetch(`${preview.url}.built`)).body?.getReader()
    const times: number[] = []
    const heaps: [saves: number, mb: number][] = []
    for (let save = 1; save <= saves; save++) {
      const { file, address } = saved[save % saved.length] ?? saved[0]
      const path = join(dir, 'machine', file)
      const text = readFileSync(path, 'utf8')
      const mark = `Saved ${save} times.`
      writeFileSync(`${path}~`, /Saved \d+ times\./.test(text) ? text.replace(/Saved \d+ times\./, mark) : `${text}\n${mark}\n`)
      const start = performance.now()
      const told = events?.read()
      renameSync(`${path}~`, path)
      await told
      const html = await (await fetch(preview.url + address)).text()
      times.push(performance.now() - start)
      if (!html.includes(mark)) throw new Error(`${address} does not show save ${save}`)
      if (save % Math.max(1, Math.floor(saves / 10)) === 0) heaps.push([save, await preview.heapMb()])
      await pause(40)
    }
    await preview.stop()
    const sorted = times.toSorted((a, b) => a - b)
    const ms = (value: number | undefined) => `${value?.toFixed(0)} ms`
    const result = [
      `${aboutRun()}. The example, ${saves} saves of three pages in turn, from the save to the whole page.`,
      '',
      `First page can be asked for after ${ms(firstMs)}. A save: median ${ms(median(times))}, 95 of 100 within ${ms(sorted[Math.floor(sorted.length * 0.95)])}, the slowest ${ms(sorted.at(-1))}.`,
      '',
      '| saves | heap in use |',
      '| --: | --: |',
      ...heaps.map(([count, mb]) => `| ${count} | ${mb.toFixed(1)} MB |`),
      '',
    ].join('\n')
    mkdirSync('tests/bench/results', { recursive: true })
    writeFileSync(resultFile, `# What a save costs in the preview\n\n${result}`)
    return result
  })
}

async function startPreview(dir: string) {
  const args = ['preview', join(dir, 'machine'), '--shared', join(dir, 'content'), '--port', '0']
  const child = spawn(process.execPath, ['--expose-gc', '--import', heapReporter, 'src/cli/fettle.ts', ...args], {
    stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
  })
  let said = ''
  const url = await new Promise<string>((done, failed) => {
    child.stderr?.setEncoding('utf8').on('data', (text: string) => {
      said += text
      const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(said)?.[0]
      if (address) done(address)
    })
    child.once('exit', () => failed(new Error(said)))
  })
  return {
    url,
    heapMb: async () => (await ask(child)) / 2 ** 20,
    stop: () => interrupt(child),
  }
}

/** Tells on request the heap that a process has in use after a collection, in bytes. */
const heapReporter = answers('(gc(),process.memoryUsage().heapUsed)')

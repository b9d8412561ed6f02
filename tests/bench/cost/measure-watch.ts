import { spawn } from 'node:child_process'
import { cpSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { answers, ask, interrupt } from './asked-process.ts'
import { inTemporaryFolder } from './in-temporary-folder.ts'

interface Save {
  what: string
  file: string
  edit(text: string, round: number): string
}

const swapped = (one: string, other: string) => (text: string, round: number) =>
  round % 2 === 0 ? text.replace(one, other) : text.replace(other, one)
const added = (line: (round: number) => string) => (text: string, round: number) => `${text}\n${line(round)}\n`

/** One save after another; each is another change than the one before of the same file. */
const saves: readonly Save[] = [
  { what: 'page, a line more', file: 'machine/pages/procedures/stop.mdx', edit: added(() => 'Look at <Tag id="PRS204" />.') },
  { what: 'page, an unknown tag', file: 'machine/pages/procedures/start-up.mdx', edit: added((round) => `See <Tag id="XX${round}" />.`) },
  { what: 'recovery', file: 'machine/pages/alarms/a0201-lift-position.mdx', edit: added((round) => `Look again ${round} times.`) },
  { what: 'lockout', file: 'machine/pages/lockout/lo-1.mdx', edit: swapped('title: ', 'title:  ') },
  { what: 'translation', file: 'machine/pages/lockout/lo-2.es.mdx', edit: swapped('title: ', 'title:  ') },
  { what: 'lesson that all machines share', file: 'content/lessons/stop-and-lock.mdx', edit: added((round) => `Ask again ${round} times.`) },
  { what: 'CSV, I/O list', file: 'machine/data/io-list.csv', edit: swapped('%IX0.3', '%IX0.9') },
  { what: 'CSV, devices', file: 'machine/data/devices.csv', edit: swapped('PRS204', 'PRS294') },
  { what: 'YAML, energy sources', file: 'machine/data/energy.yaml', edit: swapped('magnitude: ', 'magnitude:  ') },
  { what: 'drawing', file: 'machine/drawings/E-104.2.svg', edit: swapped('PRS204', 'PRS294') },
]

/** How long `check --watch` takes to answer a save of the example machine, and the processor time of it. */
export function measureWatch(rounds: number): Promise<string> {
  return inTemporaryFolder(new Map(), async (dir) => {
    cpSync('example-machine', join(dir, 'machine'), { recursive: true })
    cpSync('content', join(dir, 'content'), { recursive: true })
    const watched = startWatch(dir)
    const firstMs = (await watched.answer()).tookMs
    await pause(3_000)
    const rows: { what: string; ms: number; cpuMs: number }[] = []
    for (let round = 0; round < rounds; round++) {
      for (const { what, file, edit } of saves) {
        const before = readFileSync(join(dir, file), 'utf8')
        const after = edit(before, round)
        if (after === before) throw new Error(`${file}: the edit changes nothing`)
        const cpuBefore = await watched.cpuMs()
        const start = performance.now()
        writeFileSync(join(dir, `${file}~`), after)
        renameSync(join(dir, `${file}~`), join(dir, file))
        await watched.answer()
        rows.push({ what, ms: performance.now() - start, cpuMs: (await watched.cpuMs()) - cpuBefore })
        await pause(250)
      }
    }
    await watched.stop()
    return table(firstMs, rows)
  })
}

function startWatch(dir: string) {
  const args = ['check', join(dir, 'machine'), '--shared', join(dir, 'content'), '--watch', '--format', 'short']
  const child = spawn(process.execPath, ['--import', cpuReporter, 'src/cli/fettle.ts', ...args], { stdio: ['ignore', 'pipe', 'inherit', 'ipc'] })
  let output = ''
  let heard: ((it: { tookMs: number }) => void) | undefined
  child.stdout?.setEncoding('utf8').on('data', (text: string) => {
    output += text
    const took = /checked in (\d+) ms/.exec(output)
    if (!took) return
    output = ''
    heard?.({ tookMs: Number(took[1]) })
  })
  return {
    answer: () =>
      new Promise<{ tookMs: number }>((done) => {
        heard = done
      }),
    cpuMs: () => ask(child),
    stop: () => interrupt(child),
  }
}

/** Tells on request the processor time that a process has taken, in milliseconds. */
const cpuReporter = answers('(({user,system})=>(user+system)/1000)(process.cpuUsage())')

function table(firstMs: number, rows: readonly { what: string; ms: number; cpuMs: number }[]): string {
  const list = (times: readonly number[]) => times.map((ms) => ms.toFixed(0)).join(', ')
  const kinds = [...Map.groupBy(rows, ({ what }) => what)].map(
    ([what, of]) => `| ${what} | ${list(of.map(({ ms }) => ms))} | ${list(of.map(({ cpuMs }) => cpuMs))} |`,
  )
  const spread = (times: readonly number[]) => {
    const sorted = times.toSorted((a, b) => a - b)
    return `half within ${sorted[Math.floor(sorted.length / 2)]?.toFixed(0)} ms, the slowest ${sorted.at(-1)?.toFixed(0)} ms`
  }
  return [
    '| save | answered after, ms | processor time, ms |',
    '| --- | --- | --- |',
    ...kinds,
    '',
    `First check: ${firstMs} ms. ${rows.length} saves: ${spread(rows.map(({ ms }) => ms))}.`,
    `Processor time of a save: ${spread(rows.map(({ cpuMs }) => cpuMs))}.`,
    '',
  ].join('\n')
}

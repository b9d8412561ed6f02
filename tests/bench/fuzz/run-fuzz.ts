import { once } from 'node:events'
import { setTimeout } from 'node:timers/promises'
import { Worker } from 'node:worker_threads'
import type { Outcome } from './try-input.ts'

/** An input that takes longer hangs. */
const longestS = 20

/** Tries inputs in a thread of its own, so that one that hangs can be stopped and told. */
export async function runFuzz(count: number, seed: number): Promise<Outcome[]> {
  const outcomes: Outcome[] = []
  let worker = startWorker(seed)
  for (let index = 0; index < count; index++) {
    worker.postMessage(index)
    const stop = new AbortController()
    const answer = once(worker, 'message').then(([outcome]) => outcome as Outcome)
    const outcome = await Promise.race([answer, setTimeout(longestS * 1000, undefined, { signal: stop.signal })])
    stop.abort()
    if (outcome) {
      outcomes.push(outcome)
      continue
    }
    outcomes.push({ index, what: 'see the input with this number', timeMs: longestS * 1000, faults: [`no answer within ${longestS} s`], findings: 0 })
    await worker.terminate()
    worker = startWorker(seed)
  }
  await worker.terminate()
  return outcomes
}

const startWorker = (seed: number) => new Worker(new URL('./worker.ts', import.meta.url), { workerData: { seed } })

export function reportFuzz(outcomes: readonly Outcome[]): string {
  const faulty = outcomes.filter(({ faults }) => faults.length > 0)
  const slowest = outcomes.toSorted((a, b) => b.timeMs - a.timeMs).slice(0, 5)
  return [
    `Inputs: ${outcomes.length}, findings ${outcomes.reduce((sum, { findings }) => sum + findings, 0)}, inputs without any finding ${outcomes.filter(({ findings }) => findings === 0).length}.`,
    `Crashed ${faulty.filter(({ faults }) => faults.some((fault) => fault.startsWith('crash'))).length}, hung ${faulty.filter(({ faults }) => faults.some((fault) => fault.startsWith('no answer'))).length}, with a finding that is not in order ${faulty.length} in all.`,
    '',
    '| slowest | number | input |',
    '| --: | --: | --- |',
    ...slowest.map(({ timeMs, index, what }) => `| ${Math.round(timeMs)} ms | ${index} | ${what} |`),
    ...faulty
      .slice(0, 100)
      .flatMap(({ index, what, faults }) => ['', `- ${index}, ${what}:`, ...[...new Set(faults)].slice(0, 5).map((fault) => `  - ${fault}`)]),
    '',
  ].join('\n')
}

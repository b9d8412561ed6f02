import { pagefindAsker } from './ask-pagefind.ts'
import type { EngineScope, FromWorker, ToWorker } from './scope.ts'

// This script is a function in `core.js`. It is called in the page, or begins a worker that is made of its text.

declare const self: EngineScope & { onmessage: (event: MessageEvent<ToWorker>) => void; postMessage(message: FromWorker): void }

if (typeof window === 'undefined') answerMessages()
else self.__fettleAsk = pagefindAsker()

/** In a worker files cannot be loaded from disk, so the page is asked for them. */
function answerMessages(): void {
  const waiting = new Map<number, { take(value: string): void; fail(error: Error): void }>()
  self.__fettleHost.load = (name) =>
    new Promise((take, fail) => {
      const id = waiting.size === 0 ? 1 : Math.max(...waiting.keys()) + 1
      waiting.set(id, { take, fail })
      self.postMessage({ kind: 'load', id, name })
    })
  const ask = pagefindAsker()
  self.onmessage = ({ data }) => {
    if (data.kind === 'ask') {
      const { id } = data
      ask(data.text, data.limit).then(
        (answer) => self.postMessage({ kind: 'answer', id, answer }),
        (error: unknown) => self.postMessage({ kind: 'failed', id, reason: String(error) }),
      )
      return
    }
    const load = waiting.get(data.id)
    waiting.delete(data.id)
    if (data.kind === 'loaded') load?.take(data.value)
    else load?.fail(new Error(data.reason))
  }
  self.postMessage({ kind: 'ready' })
}

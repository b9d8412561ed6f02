import type { Ask, EngineHost, EngineScope, FromWorker, ToWorker } from './scope.ts'

declare const window: Window & EngineScope & { __fettleEngine(): void }

export interface StartedEngine {
  ask: Ask
  mode: 'worker' | 'page'
}

/** A worker that is not ready by then has been refused without an error. */
const patienceMs = 3000

/**
 * Starts the engine in a worker, or in the page where that is refused. From disk a worker file is not allowed, a
 * worker made of text is. Fails in a browser that has no WebAssembly.
 */
export async function startEngine(host: EngineHost): Promise<StartedEngine> {
  if (typeof WebAssembly === 'undefined') throw new Error('this browser has no WebAssembly')
  const ask = await startWorker(host).catch(() => undefined)
  return ask ? { ask, mode: 'worker' } : { ask: startInPage(host), mode: 'page' }
}

function startInPage(host: EngineHost): Ask {
  window.__fettleHost = host
  window.__fettleEngine()
  const ask = window.__fettleAsk
  if (!ask) throw new Error('the search engine does not start')
  return ask
}

function startWorker({ language, load }: EngineHost): Promise<Ask> {
  const source = `self.__fettleHost={language:${JSON.stringify(language)}};(${window.__fettleEngine})()`
  const address = URL.createObjectURL(new Blob([source], { type: 'text/javascript' }))
  return new Promise((started, refused) => {
    const worker = new Worker(address)
    const send = (message: ToWorker) => worker.postMessage(message)
    const asked = new Map<number, { take(answer: Awaited<ReturnType<Ask>>): void; fail(error: Error): void }>()
    let count = 0
    const ask: Ask = (text, limit) =>
      new Promise((take, fail) => {
        const id = ++count
        asked.set(id, { take, fail })
        send({ kind: 'ask', id, text, limit })
      })
    const giveUp = () => {
      worker.terminate()
      refused(new Error('no worker'))
    }
    const timer = setTimeout(giveUp, patienceMs)
    worker.onerror = (event) => {
      event.preventDefault()
      clearTimeout(timer)
      giveUp()
    }
    worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
      if (data.kind === 'ready') {
        clearTimeout(timer)
        worker.onerror = null
        URL.revokeObjectURL(address)
        started(ask)
      } else if (data.kind === 'load') {
        const { id } = data
        load(data.name).then(
          (value) => send({ kind: 'loaded', id, value }),
          (error: unknown) => send({ kind: 'failed', id, reason: String(error) }),
        )
      } else {
        const question = asked.get(data.id)
        asked.delete(data.id)
        if (data.kind === 'answer') question?.take(data.answer)
        else question?.fail(new Error(data.reason))
      }
    }
  })
}

import { setTimeout as wait } from 'node:timers/promises'
import { z } from 'zod'

const targetList = z.array(z.object({ type: z.string(), webSocketDebuggerUrl: z.string() }))
const answer = z.object({
  id: z.number(),
  result: z.record(z.string(), z.unknown()).default({}),
  error: z.object({ message: z.string() }).optional(),
})
const happening = z.object({ method: z.string(), params: z.unknown() })
const evaluated = z.object({
  result: z.object({ value: z.unknown().optional() }),
  exceptionDetails: z.object({ exception: z.object({ description: z.string() }) }).optional(),
})
const patienceMs = 15_000
const wrong = ['Runtime.exceptionThrown', 'Runtime.consoleAPICalled', 'Log.entryAdded']

/** A page of a browser that is too old for Playwright, led by the DevTools protocol 1.3. */
export interface DevTools {
  /** What went wrong on the page since it was opened: exceptions, and lines of the console and of the log. */
  faults: string[]
  goto(address: string): Promise<void>
  /** What an expression gives in the page. Throws what it throws there. */
  evaluate(expression: string): Promise<unknown>
  /** Waits until an expression gives something. */
  until(expression: string): Promise<unknown>
  /** Touches the first thing of a selector that is shown and holds the text. */
  tap(selector: string, text?: string): Promise<void>
  type(text: string): Promise<void>
}

/** The page of a browser that listens on this port of the own machine, shown in this size and touched like a panel. */
export async function devToolsOn(port: string, width: number, height: number): Promise<DevTools> {
  const targets = targetList.parse(await (await fetch(`http://127.0.0.1:${port}/json`)).json())
  const target = targets.find(({ type }) => type === 'page')
  if (!target) throw new Error('the browser has no page')
  const socket = new WebSocket(target.webSocketDebuggerUrl)
  await new Promise((done, failed) => {
    socket.onopen = done
    socket.onerror = failed
  })

  const faults: string[] = []
  const waiting = new Map<number, { done(result: Record<string, unknown>): void; failed(error: Error): void }>()
  let sent = 0
  let loaded = () => {}
  socket.onmessage = ({ data }) => {
    const message: unknown = JSON.parse(String(data))
    const answered = answer.safeParse(message)
    if (answered.success) {
      const { id, result, error } = answered.data
      if (error) waiting.get(id)?.failed(new Error(error.message))
      else waiting.get(id)?.done(result)
      waiting.delete(id)
      return
    }
    const { method, params } = happening.parse(message)
    if (method === 'Page.loadEventFired') loaded()
    if (wrong.includes(method)) faults.push(JSON.stringify(params))
  }
  const send = (method: string, params: Readonly<Record<string, unknown>> = {}) =>
    new Promise<Record<string, unknown>>((done, failed) => {
      waiting.set(++sent, { done, failed })
      socket.send(JSON.stringify({ id: sent, method, params }))
    })

  const evaluate = async (expression: string) => {
    const { result, exceptionDetails } = evaluated.parse(await send('Runtime.evaluate', { expression, awaitPromise: true, returnByValue: true }))
    if (exceptionDetails) throw new Error(`${expression}: ${exceptionDetails.exception.description}`)
    return result.value
  }
  const until = async (expression: string) => {
    for (const end = Date.now() + patienceMs; Date.now() < end; await wait(50)) {
      const value = await evaluate(expression)
      if (value) return value
    }
    throw new Error(`this never came to hold: ${expression}`)
  }

  for (const domain of ['Page', 'Runtime', 'Log']) await send(`${domain}.enable`)
  await send('Emulation.setTouchEmulationEnabled', { enabled: true })
  await send('Emulation.setDeviceMetricsOverride', { width, height, deviceScaleFactor: 1, mobile: false })
  return {
    faults,
    evaluate,
    until,
    async goto(address) {
      const before = faults.length
      // Without this step to nowhere an address that differs in its anchor alone is not loaded again.
      for (const url of ['about:blank', address]) {
        const isLoaded = new Promise<void>((done) => {
          loaded = done
        })
        await send('Page.navigate', { url })
        await isLoaded
        // A page that is left cancels what it was loading.
        if (url !== address) faults.length = before
      }
    },
    async tap(selector, text = '') {
      const found = `[...document.querySelectorAll(${JSON.stringify(selector)})].find((it) => it.getClientRects().length > 0 && it.textContent.includes(${JSON.stringify(text)}))`
      const middle = await until(`(() => {
        const it = ${found}
        if (it && !it.closest('dialog, .step-bar')) it.scrollIntoView({ block: 'center' })
        const box = it && it.getBoundingClientRect()
        return box && { x: box.x + box.width / 2, y: box.y + box.height / 2 }
      })()`)
      await send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [middle] })
      await send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })
      await wait(50)
    },
    async type(text) {
      for (const letter of text) await send('Input.dispatchKeyEvent', { type: 'char', text: letter })
    },
  }
}

declare const window: Window & { __fettleData(name: string, value: unknown): void }

/** So long a page may last whose loads were cancelled because another is opened. */
const cancelledMs = 100

/**
 * Gives the way to load data files, each once, as a classic script: from disk nothing else is allowed. A file
 * calls `__fettleData` with its name and its value; a file may also come inside the first script.
 * @param folder address of the search folder, with its slash
 * @param version keeps the browser from taking a file of an earlier build from its cache
 */
export function dataLoader(folder: string, version: string): (name: string) => Promise<unknown> {
  const values = new Map<string, Promise<unknown>>()
  const waiting = new Map<string, (value: unknown) => void>()
  window.__fettleData = (name, value) => {
    const take = waiting.get(name)
    if (!take) values.set(name, Promise.resolve(value))
    else {
      waiting.delete(name)
      take(value)
    }
  }
  const loadScript = (name: string) =>
    new Promise<unknown>((take, fail) => {
      waiting.set(name, take)
      const script = document.createElement('script')
      script.src = `${folder}${name}.js?v=${version}`
      const end = (reason: string) => {
        script.remove()
        if (!waiting.delete(name)) return
        // The next query may try again: a stick may have been pulled out and put back.
        values.delete(name)
        fail(new Error(`${name}.js ${reason}`))
      }
      script.onload = () => end('is damaged')
      // A page that is being left cancels its loads: it is gone before this is told, and nothing is wrong.
      script.onerror = () => setTimeout(end, cancelledMs, 'cannot be loaded')
      document.head.appendChild(script)
    })
  return (name) => {
    const value = values.get(name) ?? loadScript(name)
    values.set(name, value)
    return value
  }
}

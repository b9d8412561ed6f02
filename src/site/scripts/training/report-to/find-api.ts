/** How far up windows are looked through: a guard against frames without end. */
const mostWindows = 500

/**
 * The object that a SCORM system has put into a window around this one: up the frames, then in the window that opened
 * these, and up its frames. `method` is one that the object must have: a frame may bear its name by chance.
 */
export function findApi<T extends object>(name: 'API' | 'API_1484_11', method: keyof T & string, start: Window): T | undefined {
  const isApi = (found: unknown): found is T => typeof found === 'object' && found !== null && typeof Reflect.get(found, method) === 'function'
  const upFrom = (first: unknown): T | undefined => {
    for (let here = first, steps = 0; isWindow(here) && steps < mostWindows; steps++) {
      const found = readFrom(here, name)
      if (isApi(found)) return found
      const above = readFrom(here, 'parent')
      if (above === here) return undefined
      here = above
    }
    return undefined
  }
  const above = start.parent === start ? undefined : upFrom(start.parent)
  return above ?? upFrom(start.opener) ?? upFrom(start.top ? readFrom(start.top, 'opener') : undefined)
}

function isWindow(value: unknown): value is object {
  return typeof value === 'object' && value !== null
}

/** A window of another origin says nothing of itself but which windows are around it. */
function readFrom(from: object, name: string): unknown {
  try {
    return Reflect.get(from, name)
  } catch {
    return undefined
  }
}

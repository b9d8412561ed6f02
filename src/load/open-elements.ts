/** Elements in elements come to half a dozen. */
export const mostOpenElements = 20

/**
 * The opening tag that is one too many inside others that are still open, and the outermost of these. With an
 * open `{` before it, the time of the MDX parser doubles with each such tag: 26 take a second, 40 hours.
 */
export function tooManyOpen(text: string): { offset: number; length: number; outermost: number } | undefined {
  const open: { name: string; offset: number }[] = []
  for (const { index, 0: tag, 1: slash, 2: name = '', 3: end } of text.matchAll(/<(\/?)([A-Za-z][\w.:-]*)(?:"[^"]*"|'[^']*'|[^<>"'])*?(\/?)>/g)) {
    if (slash === '/') {
      const at = open.findLastIndex((it) => it.name === name)
      if (at !== -1) open.length = at
    } else if (end !== '/') {
      open.push({ name, offset: index })
      if (open.length > mostOpenElements) return { offset: index, length: tag.length, outermost: open[0]?.offset ?? 0 }
    }
  }
  return undefined
}

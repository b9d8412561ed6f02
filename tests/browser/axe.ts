import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Frame, Page } from 'playwright-core'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/** What axe finds on a page, a line each. `everyRule`: the rules of all its tags; `withoutFrames`: what stands in frames is looked at apart. */
export async function violations(page: Page | Frame, { everyRule = false, withoutFrames = false } = {}): Promise<string[]> {
  await page.evaluate(axe)
  return page.evaluate(
    async ({ tags, withoutFrames }) => {
      const run: typeof import('axe-core') = Reflect.get(window, 'axe')
      // axe counts a button as small where a bar that stays in its place covers a part of it now; a reader scrolls on.
      const bars = [...document.querySelectorAll<HTMLElement>('.rail, .step-bar, .brief-messages, .head')]
      const positions = bars.map(({ style }) => style.position)
      for (const { style } of bars) style.position = 'static'
      const { violations: found } = await run.run(withoutFrames ? { exclude: ['iframe'] } : document, {
        // axe would fetch the style sheet, which no page opened from disk can.
        preload: false,
        ...(withoutFrames ? { iframes: false } : {}),
        ...(tags ? { runOnly: { type: 'tag', values: tags } } : {}),
      })
      for (const [index, { style }] of bars.entries()) style.position = positions[index] ?? ''
      return found.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`)
    },
    { tags: everyRule ? undefined : tags, withoutFrames },
  )
}

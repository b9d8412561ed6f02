import { expect, test } from 'vitest'
import { buildExample } from './build-example.ts'
import { builtSite } from './built-site.ts'
import { kindsOfPages } from './kinds-of-pages.ts'
import { usePage } from './use-page.ts'

const site = builtSite(() => buildExample('--no-zip'))

// WCAG 2.2: 2.1.1 keyboard, 2.1.2 no keyboard trap, 2.4.7 focus visible, 2.4.11 focus not obscured (minimum).
test.each(['start', 'area', 'device', 'alarm', 'drawing', 'procedure', 'lockouts', 'set-up for a product'])(
  'everything on a page (%s) is reached by the Tab key, in view and marked',
  async (kind) => {
    await usePage(site.browser, { width: 1024, height: 768, touch: false }, async (page) => {
      await page.goto(site.fromDisk(kindsOfPages[kind] ?? ''))
      const wanted = await page.evaluate(() => {
        const all = [...document.querySelectorAll<HTMLElement | SVGElement>('a[href], button, input, select, summary, [tabindex="0"]')]
        const shown = all.filter(
          (it) => it.checkVisibility({ visibilityProperty: true }) && it.getClientRects().length > 0 && !it.matches(':disabled') && it.tabIndex >= 0,
        )
        for (const [index, it] of shown.entries()) it.dataset.wanted = String(index)
        // One of a group of radio buttons takes the focus for all.
        return shown.filter((it) => !it.matches('input[type=radio]')).map((it) => Number(it.dataset.wanted))
      })
      expect(wanted.length).toBeGreaterThan(8)
      await page.evaluate(() => {
        document.body.tabIndex = -1
        document.body.focus()
      })
      const reached = new Set<number>()
      for (let turn = 0; turn < wanted.length + 20 && reached.size < wanted.length; turn++) {
        await page.keyboard.press('Tab')
        const focused = await page.evaluate(() => {
          const it = document.activeElement
          if (!(it instanceof HTMLElement || it instanceof SVGElement) || it === document.body) return undefined
          const { left, right, top, bottom } = it.getBoundingClientRect()
          const parts = [it, ...it.querySelectorAll('*')].map((part) => getComputedStyle(part))
          return {
            index: it.dataset.wanted === undefined ? -1 : Number(it.dataset.wanted),
            html: it.outerHTML.slice(0, 120),
            isMarked: parts.some(({ outlineStyle, outlineWidth }) => outlineStyle !== 'none' && outlineWidth !== '0px') || it instanceof SVGElement,
            isInView: right > 0 && left < innerWidth && bottom > 0 && top < innerHeight,
          }
        })
        if (!focused || focused.index < 0) continue
        reached.add(focused.index)
        expect(focused, focused.html).toMatchObject({ isMarked: true, isInView: true })
      }
      expect(wanted.filter((index) => !reached.has(index))).toEqual([])
    })
  },
)

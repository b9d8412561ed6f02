import type { Page } from 'playwright-core'

/** Sum of the layout shifts of a page since it was opened, by the Layout Instability API: 0 is none, 0.1 is where people begin to mind. */
export function layoutShift(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise((answer) => {
        let shift = 0
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) shift += 'value' in entry ? Number(entry.value) : 0
        }).observe({ type: 'layout-shift', buffered: true })
        setTimeout(() => answer(shift), 300)
      }),
  )
}

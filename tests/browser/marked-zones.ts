import type { Page } from 'playwright-core'

/** Whether the mark of the zone lies in the part of the sheet that is shown, and that part is enlarged. */
export function isInWindow(page: Page): Promise<boolean> {
  return page.evaluate(() => {
    const mark = document.querySelector('[data-sheet-drawing] .zone rect')?.getBoundingClientRect()
    const area = document.querySelector('[data-sheet-window]')?.getBoundingClientRect()
    if (!mark || !area) return false
    return mark.left >= area.left && mark.right <= area.right && mark.top >= area.top && mark.bottom <= area.bottom && mark.width > area.width / 20
  })
}

/** The zones of the sheet that is shown, and for each whether its mark is drawn. */
export function markedZones(page: Page): Promise<boolean[]> {
  return page.locator('[data-sheet-drawing] .zone rect').evaluateAll((rects) => rects.map((rect) => getComputedStyle(rect).stroke !== 'none'))
}

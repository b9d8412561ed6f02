import type { Browser, Page } from 'playwright-core'
import { expect } from 'vitest'
import { type OpenedPage, openPage } from './chromium.ts'

/** Opens an empty page, acts on it, and expects that nothing went wrong on it. It is closed in any case. */
export async function usePage(
  browser: Browser,
  options: Parameters<typeof openPage>[1],
  act: (page: Page, opened: OpenedPage) => Promise<void>,
): Promise<void> {
  const opened = await openPage(browser, options)
  try {
    await act(opened.page, opened)
    expect(opened.faults()).toEqual([])
  } finally {
    await opened.close()
  }
}

import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { linkCheck } from './check-links.ts'
import type { RenderPage } from './compile-pages.ts'
import { handOver, type SiteInput } from './handover.ts'
import type { PageReader, ReadPage } from './read-page.ts'

/** A page of the built site, and what was read of it. */
export interface WrittenPage {
  path: string
  html: string
  read: ReadPage
}

/**
 * Writes the pages into `outDir`, where styles, drawings and pictures are already, in the order of their paths, and tells which of
 * their links lead nowhere. `onPage` is given each as it is written.
 */
export async function renderSite(
  input: SiteInput,
  outDir: string,
  render: RenderPage,
  reader: PageReader,
  onPage: (page: WrittenPage) => Promise<void> = async () => undefined,
): Promise<{ broken: string[] }> {
  handOver(input)
  const links = linkCheck()
  for (const page of input.pages.toSorted((a, b) => (a.path < b.path ? -1 : 1))) {
    const { path } = page
    const html = await render(page)
    mkdirSync(dirname(join(outDir, path)), { recursive: true })
    writeFileSync(join(outDir, path), html)
    const read = reader.read(html)
    links.add(path, read)
    await onPage({ path, html, read })
  }
  reader.keep()
  return { broken: links.broken(outDir) }
}

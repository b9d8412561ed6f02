import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { type DefaultTreeAdapterTypes, parse } from 'parse5'
import { linkCheck } from './check-links.ts'
import type { RenderPage } from './compile-pages.ts'
import { handOver, type SiteInput } from './handover.ts'

/** A page of the built site as it was read: it takes longer to parse than to render, so what else is read of it uses this tree. */
export interface ReadPage {
  path: string
  html: string
  tree: DefaultTreeAdapterTypes.Document
}

/**
 * Writes the pages into `outDir`, where styles, drawings and pictures are already, in the order of their paths, and tells which of
 * their links lead nowhere. `onPage` is given each as it is written.
 */
export async function renderSite(
  input: SiteInput,
  outDir: string,
  render: RenderPage,
  onPage: (page: ReadPage) => Promise<void> = async () => undefined,
): Promise<{ broken: string[] }> {
  handOver(input)
  const links = linkCheck()
  for (const page of input.pages.toSorted((a, b) => (a.path < b.path ? -1 : 1))) {
    const { path } = page
    const html = await render(page)
    mkdirSync(dirname(join(outDir, path)), { recursive: true })
    writeFileSync(join(outDir, path), html)
    const tree = parse(html)
    links.add(path, tree)
    await onPage({ path, html, tree })
  }
  return { broken: links.broken(outDir) }
}

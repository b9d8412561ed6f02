import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'parse5'
import { linkCheck, linksOf } from '../../src/site/check-links.ts'

/** The pages of a built site by their paths, in the order in which a build writes them. */
export function pagesIn(siteDir: string): string[] {
  const paths = readdirSync(siteDir, { recursive: true, encoding: 'utf8' }).map((path) => path.replaceAll('\\', '/'))
  return paths.filter((path) => path.endsWith('.html')).sort()
}

/** Links of a folder of pages that lead nowhere. */
export function brokenLinks(siteDir: string): string[] {
  const links = linkCheck()
  for (const path of pagesIn(siteDir)) links.add(path, linksOf(parse(readFileSync(join(siteDir, path), 'utf8'))))
  return links.broken(siteDir)
}

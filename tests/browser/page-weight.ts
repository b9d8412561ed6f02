import { readdirSync, readFileSync, statSync } from 'node:fs'
import { dirname, join } from 'node:path'

export interface PageWeight {
  htmlBytes: number
  styleBytes: number
  scriptBytes: number
}

/** What a page of a built site loads before it can be read, in bytes as they lie on the disk; fonts, pictures and the styles for paper and for scripts that are off apart. */
export function pageWeight(siteDir: string, path: string): PageWeight {
  const html = readFileSync(join(siteDir, path), 'utf8').replace(/<noscript>.*?<\/noscript>/gs, '')
  const bytesOf = (pattern: RegExp) => {
    const files = new Set([...html.matchAll(pattern)].map(([, address = '']) => join(siteDir, dirname(path), address.replace(/[?#].*/, ''))))
    return [...files].reduce((sum, file) => sum + statSync(file).size, 0)
  }
  return {
    htmlBytes: Buffer.byteLength(html),
    styleBytes: bytesOf(/<link rel="stylesheet" href="([^"]+)"(?! media="print")/g),
    scriptBytes: bytesOf(/<script[^>]* src="([^"]+)"/g),
  }
}

export const totalBytes = ({ htmlBytes, styleBytes, scriptBytes }: PageWeight): number => htmlBytes + styleBytes + scriptBytes

const isText =
  /^(es\/)?((alarms|parts|procedures|set-up|components|parts-lists|front)\/.*|(alarms|drawings|procedures|lockout|manual|glossary|about))\.html$/

/** The pages that are read: without a meter, questions, a search or the list of every device. */
export const pagesOfText = (siteDir: string): string[] =>
  readdirSync(siteDir, { recursive: true, encoding: 'utf8' }).filter((path) => isText.test(path))

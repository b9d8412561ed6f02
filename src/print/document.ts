import { ownStyles } from '../site/own-styles.ts'
import { escapeHtml } from './html-tree.ts'

export interface DocumentInput {
  language: string
  title: string
  styles: string
  body: string
  /** Ids that need a place in the PDF although the text may not link to them. */
  ids: readonly string[]
}

/** Every style sheet that a page of the site may load, in the order of its pages. */
const siteStyles = ['site.css', ...ownStyles.map((name) => `${name}.css`), 'print.css']

/**
 * A whole document at the root of a site. Chromium gives a PDF a named place only for an id that something links to,
 * shown or not: hence the links that nobody sees.
 */
export function documentHtml({ language, title, styles, body, ids }: DocumentInput): string {
  const sheets = siteStyles.map((name) => `<link rel="stylesheet" href="assets/${name}">`).join('')
  const places = ids.map((id) => `<a href="#${id}"></a>`).join('')
  return `<!doctype html>
<html lang="${escapeHtml(language)}" data-theme="light"><head><meta charset="utf-8"><title>${escapeHtml(title)}</title>${sheets}<style>
${styles}
</style></head><body class="book">
${body}
<div hidden>${places}</div>
</body></html>
`
}

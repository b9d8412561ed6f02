import { changeGroups, groupOf } from './change.ts'
import { type ChangesReport, titleOf } from './report.ts'
import { detailLines, groupHeadings, headline } from './tell.ts'

/** The report as one page that needs nothing else: to be read on a screen, or printed and ticked off. */
export function reportChangesHtml(report: ChangesReport): string {
  const { changes, affected, notCompared } = report
  const groups = changeGroups.flatMap((group) => {
    const own = changes.filter((change) => groupOf(change) === group)
    if (own.length === 0) return []
    const items = own.map((change) => {
      const lines = [...detailLines(change), ...change.notes].map((line) => `<li>${marked(line)}</li>`).join('')
      const places = (affected.get(change) ?? []).map(
        ({ place, page, language, name }) =>
          `<tr><td class="tick"></td><td>${escaped(page)} (${escaped(language)})</td><td><code>${escaped(name)}</code></td><td><code>${escaped(`${place.file}:${place.line}`)}</code></td></tr>`,
      )
      const table =
        places.length === 0
          ? ''
          : `<table><thead><tr><th>Read</th><th>Page</th><th>Names</th><th>Stands at</th></tr></thead><tbody>${places.join('')}</tbody></table>`
      return `<article><h3>${marked(headline(change))}</h3>${lines === '' ? '' : `<ul>${lines}</ul>`}${table}</article>`
    })
    return [`<section class="${group}"><h2>${escaped(groupHeadings[group])} <span>(${own.length})</span></h2>${items.join('\n')}</section>`]
  })
  const left = notCompared.map(
    ({ thing, id, side }) => `<li>${escaped(thing)}${id === undefined ? '' : ` <code>${escaped(id)}</code>`} of the ${side} revision</li>`,
  )
  const title = escaped(titleOf(report))
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>${style}</style>
</head>
<body>
<h1>${title}</h1>
${groups.length === 0 ? '<p>Nothing in the data has changed.</p>' : groups.join('\n')}
${left.length === 0 ? '' : `<section><h2>Not compared, because of errors in a list</h2><ul>${left.join('')}</ul></section>`}
</body>
</html>
`
}

const style = `
:root { color-scheme: light dark; --ink: #14181b; --ground: #dfe3e6; --panel: #f7f9f9; --line: #8d969d; }
@media (prefers-color-scheme: dark) { :root { --ink: #e8ecee; --ground: #181c1f; --panel: #23292d; --line: #6b757c; } }
body { margin: 0 auto; max-width: 1000px; padding: 20px; background: var(--ground); color: var(--ink); font: 18px/1.45 "Atkinson Hyperlegible", Verdana, sans-serif; }
h1 { font-size: 1.5rem; } h2 { font-size: 1.2rem; margin: 32px 0 10px; } h2 span { font-weight: 400; } h3 { font-size: 1rem; margin: 0; }
article { background: var(--panel); border: 1px solid var(--line); border-radius: 3px; padding: 12px 16px; margin: 8px 0; break-inside: avoid; overflow-wrap: anywhere; }
.dangerous article, .energy article { border-left: 10px solid var(--ink); }
ul { margin: 6px 0 0; padding-left: 1.2em; }
code { font-family: "IBM Plex Mono", Consolas, monospace; font-size: .92em; }
table { border-collapse: collapse; width: 100%; margin-top: 8px; font-size: .9rem; } th, td { text-align: left; padding: 5px 10px 5px 0; border-top: 1px solid var(--line); vertical-align: top; }
th { font-weight: 400; border: 0; white-space: nowrap; } .tick { width: 48px; } .tick::before { content: ""; display: block; width: 18px; height: 18px; border: 2px solid var(--line); }
@media print { body { background: none; color: #000; font-size: 11pt; padding: 0; } article { background: none; } }
`

const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
/** Names in backticks as code. */
const marked = (text: string) => escaped(text).replace(/`([^`]*)`/g, '<code>$1</code>')

// Shows what the check found in the preview: beside the block it is about, and the rest above the page.
import { markFor } from './mark-for.ts'
import { markWords } from './mark-words.ts'

interface PreviewFinding {
  file: string
  line: number
  severity: 'error' | 'warning' | 'note'
  /** `file:line:column`. */
  where: string
  message: string
  rule: string
  note?: string
  help?: string
  /** Words that the finding is about, where it is about their wording: the pieces between elements. */
  words?: string[]
}

interface PreviewReport {
  /** Whether the page is of the files that were checked, and not of an earlier build. */
  current: boolean
  findings: PreviewFinding[]
}

const style = `
.fettle-found{margin:.5rem 0;padding:.5rem .75rem;border:2px solid;border-left-width:.5rem;background:#fff;color:#111;font:1rem/1.4 sans-serif}
.fettle-found p{margin:0;overflow-wrap:anywhere}
.fettle-found summary{cursor:pointer}
.fettle-note{border-style:dotted}.fettle-warning{border-style:dashed}
.fettle-margin{position:absolute;width:18px;min-height:18px;padding:0;border:0;border-left:6px double currentColor;background:none;color:inherit;cursor:pointer}
.fettle-margin::before{content:'';position:absolute;inset:-6px -8px}
.fettle-margin[aria-expanded=true]{border-left-style:solid}
::highlight(fettle-wording){text-decoration:underline dotted 2px}
`

function box(finding: PreviewFinding): HTMLElement {
  const found = document.createElement('aside')
  found.className = `fettle-found fettle-${finding.severity}`
  const { where, severity, message, rule, note, help } = finding
  for (const line of [`${where}: ${severity}: ${message} [${rule}]`, note && `note: ${note}`, help && `help: ${help}`]) {
    if (!line) continue
    const words = document.createElement('p')
    words.textContent = line
    found.append(words)
  }
  return found
}

function banner({ current }: PreviewReport, elsewhere: readonly PreviewFinding[], here: number): HTMLElement {
  const top = document.createElement('details')
  top.className = `fettle-found fettle-${current ? 'note' : 'error'}`
  top.open = !current
  const summary = document.createElement('summary')
  const counts = `${here} found in this page, ${elsewhere.length} elsewhere`
  summary.textContent = current ? counts : `Not built: this is the last build without errors. ${counts}`
  top.append(summary, ...elsewhere.map(box))
  return top
}

function start(): void {
  const written = document.getElementById('fettle-findings')?.textContent
  if (!written) return
  const report: PreviewReport = JSON.parse(written)
  const marks = [...document.querySelectorAll<HTMLElement>('[data-source-file]')].map((element) => ({
    element,
    file: element.dataset.sourceFile ?? '',
    line: Number(element.dataset.sourceLine),
  }))
  const elsewhere: PreviewFinding[] = []
  for (const finding of report.findings) {
    const mark = markFor(finding, marks)
    if (!mark) {
      elsewhere.push(finding)
      continue
    }
    const found = box(finding)
    mark.element.before(found)
    if (finding.words) markWords({ words: finding.words, after: mark.element, found, label: `${finding.severity}: ${finding.message}` })
  }
  if (report.findings.length === 0 && report.current) return
  const css = document.createElement('style')
  css.textContent = style
  document.head.append(css)
  document.body.prepend(banner(report, elsewhere, report.findings.length - elsewhere.length))
}

start()
new EventSource('/.built').onmessage = () => location.reload()

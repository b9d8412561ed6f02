// Shows what the check found in the preview: beside the block it is about, and the rest above the page.
import { markFor } from './mark-for.ts'

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
    if (mark) mark.element.before(box(finding))
    else elsewhere.push(finding)
  }
  if (report.findings.length === 0 && report.current) return
  const css = document.createElement('style')
  css.textContent = style
  document.head.append(css)
  document.body.prepend(banner(report, elsewhere, report.findings.length - elsewhere.length))
}

start()
new EventSource('/.built').onmessage = () => location.reload()

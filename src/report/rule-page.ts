/** What a rule's page of cases says to a reader. */
export interface RulePage {
  /** The words under its title. */
  prose: string
  /** The first case in which the rule speaks: its name, and the whole report. */
  example?: { name: string; report: string }
  /** What the rule advises in its cases, each advice once. */
  waysOut: readonly string[]
}

interface Section {
  name: string
  words: string[]
  /** Lines of its `findings` block. */
  report: string[]
}

/** Reads the page of a rule: `##` cases with fenced files and a `findings` block each. */
export function readRulePage(page: string, id: string): RulePage {
  const [top, ...cases] = sectionsOf(page)
  const firing = cases.filter(({ report }) => report.some((line) => line.endsWith(`[${id}]`)))
  const [first] = firing
  return {
    prose: (top?.words ?? []).join('\n').trim(),
    ...(first ? { example: { name: first.name, report: first.report.join('\n').trim() } } : {}),
    waysOut: [...new Set(firing.flatMap(({ report }) => adviceIn(report, id)))],
  }
}

/** The page up to its first case, and each case. A heading or fence inside a fenced block is text. */
function sectionsOf(page: string): Section[] {
  let section: Section = { name: '', words: [], report: [] }
  const sections = [section]
  let fence: { end: string; findings: boolean } | undefined
  for (const line of page.split(/\r?\n/)) {
    if (fence) {
      if (line.trimEnd() === fence.end) fence = undefined
      else if (fence.findings) section.report.push(line)
      continue
    }
    const [, end, lang = ''] = /^(`{3,})(\w*)/.exec(line) ?? []
    const [, heading] = /^## (.*)$/.exec(line) ?? []
    if (end !== undefined) fence = { end, findings: lang === 'findings' }
    else if (heading !== undefined) {
      section = { name: heading.trim(), words: [], report: [] }
      sections.push(section)
    } else if (!line.startsWith('# ')) section.words.push(line)
  }
  return sections
}

/** The advice of the findings of a rule: it stands after their first lines. */
function adviceIn(report: readonly string[], id: string): string[] {
  let own = false
  return report.flatMap((line) => {
    const [, rule] = /^\S.*: (?:error|warning|note): .*\[([a-z0-9-]+)\]$/.exec(line) ?? []
    if (rule !== undefined) own = rule === id
    const [, advice] = /^ {2}help: (.*)$/.exec(line) ?? []
    return own && advice !== undefined ? [advice] : []
  })
}

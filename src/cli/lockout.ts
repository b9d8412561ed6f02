import { advice, suggestFrom } from '../check/suggest.ts'
import { type Lockout, lockoutOfPage, waitInSequence } from '../energy/lockout-of-page.ts'
import { type Graph, graphOf } from '../model/graph.ts'
import { lockoutPhases } from '../model/lockout-phases.ts'
import { isIn, type Machine } from '../model/machine.ts'
import { shownBody } from '../model/shown-body.ts'
import { speak, type Words } from '../model/words.ts'
import { phaseLabel } from '../site/parts/said.ts'
import { waitText } from '../site/parts/stored-energy.ts'
import { stepText } from '../site/step-text.ts'
import { type Labels, labelsOf } from '../site/words/labels.ts'
import { machineToPrint } from './load.ts'
import { type Options, UsageError } from './options.ts'

/** Prints the sequence of one lockout. Nothing is printed of a folder with errors: its sequence may be wrong. */
export async function run(options: Options): Promise<number> {
  const [path = '.', id] = options.words
  if (id === undefined) throw new UsageError('it takes the name or the number of a lockout')
  const machine = await machineToPrint(path, options, 'lockout', 'lockout')
  if (!machine) return 1
  const graph = graphOf(machine)
  const pages = graph.pagesIn('lockout')
  const page = pages.find(({ name, frontmatter }) => name === id || frontmatter.number === id)
  if (!page) {
    const near = advice(suggestFrom(pages.map(({ name }) => name))(id), 'lockout', `it has ${pages.map(({ name }) => name).join(', ') || 'none'}`)
    throw new UsageError(`the machine has no lockout \`${id}\`; ${near}`)
  }
  const language = options.get('language') ?? machine.sourceLanguage
  const labels = labelsOf(language)
  if (!labels || !isIn(page, language)) throw new UsageError(`lockout \`${id}\` is not in the language \`${language}\``)
  const printed: Printed = { lockout: lockoutOfPage(page, graph, shownBody(page, language)), machine, graph, labels, language }
  process.stdout.write(options.get('format') === 'json' ? `${JSON.stringify(recordOf(printed), null, 2)}\n` : textOf(printed))
  return 0
}

interface Printed {
  lockout: Lockout
  machine: Machine
  graph: Graph
  labels: Labels
  language: string
}

/** The contract of `--format json`: fields are added, never renamed. */
function recordOf(printed: Printed) {
  const { lockout } = printed
  const said = sayer(printed)
  const texts = stepTexts(printed)
  return {
    id: lockout.page.name,
    number: lockout.page.frontmatter.number,
    points: lockout.points.map((it) => ({
      point: it.point.value,
      tag: it.tag.value,
      device: it.device,
      safe: said(it.safe),
      service: said(it.service),
      place: said(it.place),
      hardware: said(it.hardware),
      lockable: it.lockable,
      tagAt: it.tagOut && said(it.tagOut.at),
      sources: lockout.sources.filter(({ isolation }) => isolation.includes(it)).map(({ id }) => id.value),
    })),
    steps: lockout.steps.map(({ phase, point, source, stillEnergised }, index) => ({ phase, text: texts[index], point, source, stillEnergised })),
    waits: lockout.sources.flatMap((source) => {
      const wait = waitInSequence(source)
      if (!wait) return []
      const noticeSeconds = source.delayNoticeS?.value
      if ('notComputed' in wait) return { source: source.id.value, notComputed: wait.notComputed, noticeSeconds }
      const { seconds, basis, formula, inputs } = wait
      const statedFrom = basis === 'stated' && source.waitBasis ? said(source.waitBasis) : undefined
      return { source: source.id.value, seconds, basis, statedFrom, formula, inputs: formula === undefined ? undefined : inputs, noticeSeconds }
    }),
  }
}

function textOf(printed: Printed): string {
  const { lockout, machine, labels, language } = printed
  const { page, points, sources, steps } = lockout
  const said = sayer(printed)
  const texts = stepTexts(printed)
  const lines = [
    `${page.frontmatter.number}  ${page.translations.get(language)?.frontmatter.title ?? page.frontmatter.title}`,
    `${machine.file.model}, ${labels.serial} ${machine.unit.serial}, ${labels.revision} ${machine.file.revision}`,
    '',
    labels.standingCaution,
    '',
    labels.isolationBoard,
    ...points.map((it) => `  ${it.point.value.padEnd(4)}${it.tag.value.padEnd(10)}${said(it.safe)}  ·  ${said(it.place)}  ·  ${said(it.hardware)}`),
    ...sources.flatMap((source) => {
      const wait = waitText(source, labels, language)
      return wait ? [`  ${said(source.name)}: ${wait.text}${wait.basis ? `  ·  ${said(wait.basis)}` : ''}`] : []
    }),
    ...lockoutPhases.flatMap((phase) => {
      const own = texts.filter((_, index) => steps[index]?.phase === phase)
      return own.length === 0 ? [] : ['', phaseLabel(labels, phase), ...own.map((text, index) => `  ${String(index + 1).padStart(2)}. ${text}`)]
    }),
  ]
  return `${lines.join('\n')}\n`
}

const sayer =
  ({ language, machine }: Printed) =>
  (words: Words) =>
    speak(words, language, machine.sourceLanguage).text

function stepTexts({ lockout, machine, graph, labels, language }: Printed): string[] {
  const speaker = { labels, language, say: (words: Words) => speak(words, language, machine.sourceLanguage) }
  return lockout.steps.map((step) => stepText(step, lockout, graph, speaker))
}

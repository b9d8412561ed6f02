import { advice, suggestFrom } from '../check/suggest.ts'
import { lockoutOfPage, waitInSequence } from '../energy/lockout-of-page.ts'
import { graphOf } from '../model/graph.ts'
import { lockoutPhases } from '../model/lockout-phases.ts'
import { isIn } from '../model/machine.ts'
import { speak, type Words } from '../model/words.ts'
import { shownBody } from '../site/older-text.ts'
import { phaseLabel } from '../site/parts/said.ts'
import { waitText } from '../site/parts/stored-energy.ts'
import { stepText } from '../site/step-text.ts'
import { labelsOf } from '../site/words/labels.ts'
import { checkFolder, countFindings } from './load.ts'
import { type Options, UsageError } from './options.ts'

/** Prints the sequence of one lockout. Nothing is printed of a folder with errors: its sequence may be wrong. */
export async function run(options: Options): Promise<number> {
  const [path = '.', id] = options.words
  if (id === undefined) throw new UsageError('it takes the name or the number of a lockout')
  const { machine, findings } = await checkFolder(path, options)
  const { errors } = countFindings(findings)
  if (!machine || errors > 0) {
    process.stderr.write(
      `fettle lockout: the folder has ${errors} error${errors === 1 ? '' : 's'}, and a lockout from it may be wrong; \`fettle check\` shows them\n`,
    )
    return 1
  }
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
  const lockout = lockoutOfPage(page, graph, shownBody(page, language))
  const say = (words: Words) => speak(words, language, machine.sourceLanguage)
  const said = (words: Words) => say(words).text
  const speaker = { labels, language, say }
  const points = lockout.points.map(({ point, tag, device, safe, service, place, hardware, lockable, tagOut }) => ({
    point: point.value,
    tag: tag.value,
    device,
    safe: said(safe),
    service: said(service),
    place: said(place),
    hardware: said(hardware),
    lockable,
    ...(tagOut ? { tagAt: said(tagOut.at) } : {}),
    sources: lockout.sources.filter(({ isolation }) => isolation.some((it) => it.point.value === point.value)).map((source) => source.id.value),
  }))
  const steps = lockout.steps.map((step) => ({
    phase: step.phase,
    text: stepText(step, lockout, graph, speaker),
    ...(step.point === undefined ? {} : { point: step.point }),
    ...(step.source === undefined ? {} : { source: step.source }),
    ...(step.stillEnergised === undefined ? {} : { stillEnergised: step.stillEnergised }),
  }))
  const waits = lockout.sources.flatMap((source): Record<string, unknown>[] => {
    const wait = waitInSequence(source)
    if (!wait) return []
    if ('notComputed' in wait) return [{ source: source.id.value, notComputed: wait.notComputed }]
    const { seconds, basis, formula, inputs } = wait
    const stated = basis === 'stated' && source.waitBasis ? { statedFrom: said(source.waitBasis) } : {}
    return [{ source: source.id.value, seconds, basis, ...stated, ...(formula === undefined ? {} : { formula, inputs }) }]
  })
  if (options.get('format') === 'json') {
    process.stdout.write(`${JSON.stringify({ id: page.name, number: page.frontmatter.number, points, steps, waits }, null, 2)}\n`)
    return 0
  }
  const title = page.translations.get(language)?.frontmatter.title ?? page.frontmatter.title
  const lines = [
    `${page.frontmatter.number}  ${title}`,
    `${machine.file.model}, ${labels.serial} ${machine.unit.serial}, ${labels.revision} ${machine.file.revision}`,
    '',
    labels.standingCaution,
    '',
    labels.isolationBoard,
    ...points.map((it) => `  ${it.point.padEnd(4)}${it.tag.padEnd(10)}${it.safe}  ·  ${it.place}  ·  ${it.hardware}`),
    ...lockout.sources.flatMap((source) => {
      const wait = waitText(source, labels, language)
      return wait ? [`  ${said(source.name)}: ${wait.text}${wait.basis ? `  ·  ${said(wait.basis)}` : ''}`] : []
    }),
    ...lockoutPhases.flatMap((phase) => {
      const own = steps.filter((step) => step.phase === phase)
      return own.length === 0 ? [] : ['', phaseLabel(labels, phase), ...own.map(({ text }, index) => `  ${String(index + 1).padStart(2)}. ${text}`)]
    }),
  ]
  process.stdout.write(`${lines.join('\n')}\n`)
  return 0
}

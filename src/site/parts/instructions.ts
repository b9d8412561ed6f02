import { legalBasis } from '../../instructions/legal-basis.ts'
import type { Context } from '../context.ts'
import { fill } from '../words/fill.ts'
import type { Labels } from '../words/labels.ts'

/** Whether this version is the original or a translation of it; undefined where machine.yaml does not say which is. */
export function versionLabel({ machine, language, labels }: Context): string | undefined {
  const original = machine.file.manual?.original
  if (!original) return undefined
  return original.includes(language) ? labels.original : labels.translationOfOriginal
}

/** How the manual is given, as names and texts; empty where machine.yaml does not say. */
export function instructionFacts(context: Context): [name: string, text: string][] {
  const { labels, machine } = context
  const { manual } = machine.file
  if (!manual) return []
  const { digital, paper } = manual
  const version = versionLabel(context)
  return [
    [
      labels.instructionsLaw,
      { 'Directive 2006/42/EC': labels.lawDirective, 'Regulation (EU) 2023/1230': labels.lawRegulation }[legalBasis(manual.placedOnMarket)],
    ],
    ...(version === undefined ? [] : [[labels.instructionsVersion, version] satisfies [string, string]]),
    ...(manual.form === 'digital' && digital ? [[labels.instructionsDigital, digitalText(labels, digital)] satisfies [string, string]] : []),
    ...(manual.form === 'digital' && paper?.isFree
      ? [[labels.instructionsPaper, fill(labels.instructionsPaperFree, { days: paper.withinDays })] satisfies [string, string]]
      : []),
  ]
}

type Digital = NonNullable<NonNullable<Context['machine']['file']['manual']>['digital']>

function digitalText(labels: Labels, { onlineUntil, accessOn, canBeSaved }: Digital): string {
  const names = { machine: labels.accessMachine, packaging: labels.accessPackaging, papers: labels.accessPapers }
  const online = fill(labels.instructionsOnline, { date: onlineUntil, where: accessOn.map((it) => names[it]).join(', ') })
  return canBeSaved ? `${online}; ${labels.instructionsSaved}` : online
}

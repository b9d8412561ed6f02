import type { Coverage } from '../../model/coverage.ts'
import { fill } from '../words/fill.ts'
import { type Labels, labelsOf } from '../words/labels.ts'

/** What a share is of, in the language of the page. */
export function coverageLabel(labels: Labels, { kind, language = '' }: Pick<Coverage, 'kind' | 'language'>): string {
  return {
    'devices with a description': labels.coveredDescribed,
    'devices with a page': labels.coveredPage,
    'devices with a drawing': labels.coveredDrawing,
    'devices with a place': labels.coveredPlace,
    'sensors with a lesson': labels.coveredLesson,
    'devices with limits computed': labels.coveredLimits,
    'alarms with a recovery': labels.coveredRecovery,
    'maintenance tasks with an interval': labels.coveredInterval,
    'wear parts with a task': labels.coveredTask,
    'drawing sheets shown': labels.coveredSheets,
    'drawings referred to': labels.coveredDrawings,
    'pages written': labels.coveredPages,
    'pages in': fill(labels.coveredLanguage, { language: labelsOf(language)?.languageName ?? language }),
    'pages that must be in': fill(labels.coveredRequired, { language: labelsOf(language)?.languageName ?? language }),
  }[kind]
}

import { panelOf } from '../../model/panel.ts'
import { leastArcMin, preferredArcMin, seenHeightMm } from '../../panel/panel-sizes.ts'
import type { Rule } from '../rule.ts'

export const panelTextTooSmall: Rule = {
  id: 'panel-text-too-small',
  severity: 'warning',
  summary: 'The text of the panel is asked to be smaller than can be read at its distance.',
  why: 'Whoever stands at the machine has to bend to the screen, or reads a 6 for an 8.',
  source: 'ISO 9241-303: 20 to 22 minutes of arc are preferred, 16 the least',

  *check({ file, placeOf }) {
    const panel = panelOf(file)
    if (!panel || panel.textArcMin >= leastArcMin) return
    const heightMm = (arcMin: number) => seenHeightMm(panel.distanceMm, arcMin).toFixed(1)
    yield {
      message: `text of ${panel.textArcMin} minutes of arc is too small to read`,
      place: placeOf(['panel', 'textArcMin']),
      note: `at ${panel.distanceMm} mm its capitals are ${heightMm(panel.textArcMin)} mm high; ${leastArcMin} minutes of arc are ${heightMm(leastArcMin)} mm, ${preferredArcMin} are ${heightMm(preferredArcMin)} mm`,
      help: `write ${leastArcMin} or more, or leave \`textArcMin\` out for ${preferredArcMin}`,
    }
  },
}

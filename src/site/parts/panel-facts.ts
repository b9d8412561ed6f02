import type { MachinePanel } from '../../model/panel.ts'
import { panelSizes } from '../../panel/panel-sizes.ts'
import type { Context } from '../context.ts'
import { inLanguage } from '../words/decimal.ts'
import { fill } from '../words/fill.ts'

/** Name and value of what is computed for the machine's own screen, in the language of the page. */
export function panelFacts({ labels, language }: Pick<Context, 'labels' | 'language'>, panel: MachinePanel): [string, string][] {
  const { diagonalMm, widthPx, heightPx, distanceMm, touch, textArcMin, backToStartMin } = panel
  const { capitalMm, smallestShare, targetMm } = panelSizes(panel)
  const said = (value: number, digits: number) => inLanguage(String(Number(value.toFixed(digits))), language)
  const text = (share: number) => fill(labels.panelTextIs, { heightMm: said(capitalMm * share, 2), arcMin: said(textArcMin * share, 1) })
  return [
    [labels.panelScreen, fill(labels.panelScreenIs, { diagonalMm: said(diagonalMm, 0), inches: said(diagonalMm / 25.4, 1), widthPx, heightPx })],
    [labels.panelDistance, fill(labels.panelDistanceIs, { distanceMm: said(distanceMm, 0) })],
    [labels.panelText, text(1)],
    [labels.panelSmall, text(smallestShare)],
    [labels.panelTarget, fill(touch === 'gloves' ? labels.panelTargetGloves : labels.panelTargetBare, { targetMm: said(targetMm, 1) })],
    [labels.panelBack, backToStartMin === 0 ? labels.panelBackNever : fill(labels.panelBackIs, { minutes: said(backToStartMin, 1) })],
  ]
}

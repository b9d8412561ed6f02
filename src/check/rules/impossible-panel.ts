import { panelOf } from '../../model/panel.ts'
import { type PanelFault, panelFault } from '../../panel/panel-faults.ts'
import type { Problem } from '../../source/finding.ts'
import type { Rule } from '../rule.ts'

export const impossiblePanel: Rule = {
  id: 'impossible-panel',
  severity: 'error',
  summary: 'No screen has this diagonal with this number of pixels.',
  why: 'Text and targets are computed from it: they would be too small to read and to touch, or fill the screen.',
  source: 'house rule; the range of pixels is common practice',

  *check({ file, placeOf }) {
    const panel = panelOf(file)
    if (!panel) return
    const key = file.panel?.diagonalMm === undefined ? 'diagonalInch' : 'diagonalMm'
    const fault = panelFault(panel, key === 'diagonalMm' ? 'mm' : 'in')
    if (!fault) return
    const { message, help } = said(fault, panel, file.panel?.[key])
    yield { message, place: placeOf(['panel', fault.kind === 'shape' ? 'widthPx' : key]), help }
  },
}

type Said = Pick<Problem, 'message'> & { help: string }

function said(
  fault: PanelFault,
  { widthPx, heightPx, diagonalMm }: { widthPx: number; heightPx: number; diagonalMm: number },
  written: number | undefined,
): Said {
  const size = `${widthPx} × ${heightPx} pixels`
  if (fault.kind === 'shape')
    return {
      message: `no screen of ${size} is made: one side is ${fault.ratio.toFixed(1)} times the other`,
      help: 'compare `widthPx` and `heightPx` with the data sheet of the panel',
    }
  return {
    message: `no screen of ${size} has a diagonal of ${diagonalMm.toFixed(0)} mm: a pixel would be ${fault.pitchMm.toPrecision(2)} mm wide`,
    help:
      fault.unit === undefined
        ? 'compare diagonal and pixels with the data sheet of the panel'
        : `write \`diagonal${fault.unit === 'in' ? 'Inch' : 'Mm'}: ${written}\` if ${fault.unit === 'in' ? 'inches' : 'mm'} are meant`,
  }
}

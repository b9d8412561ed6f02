import { type Panel, pitchMmOf } from './panel-sizes.ts'

/** Distance in mm between two pixels of screens that are made, with room to spare: from a telephone to a screen on a wall. Common practice. */
const finestMm = 0.04
const coarsestMm = 0.8

/** No screen is longer than four times its height. Common practice: the widest bars in trade are 32:9. */
const longest = 4

export type PanelFault = { kind: 'shape'; ratio: number } | { kind: 'pitch'; pitchMm: number; unit: 'in' | 'mm' | undefined }

const isMade = (pitchMm: number) => pitchMm >= finestMm && pitchMm <= coarsestMm

/**
 * Why no such screen exists: its shape, or pixels too fine or too coarse for its size. `unit` is the one in which the same
 * number would be a screen.
 */
export function panelFault(panel: Pick<Panel, 'diagonalMm' | 'widthPx' | 'heightPx'>, writtenIn: 'in' | 'mm'): PanelFault | undefined {
  const { widthPx, heightPx, diagonalMm } = panel
  const ratio = Math.max(widthPx, heightPx) / Math.min(widthPx, heightPx)
  if (ratio > longest) return { kind: 'shape', ratio }
  const pitchMm = pitchMmOf(panel)
  if (isMade(pitchMm)) return undefined
  const other = writtenIn === 'in' ? diagonalMm / 25.4 : diagonalMm * 25.4
  const unit = writtenIn === 'in' ? 'mm' : 'in'
  return { kind: 'pitch', pitchMm, unit: isMade(pitchMmOf({ ...panel, diagonalMm: other })) ? unit : undefined }
}

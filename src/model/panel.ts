import type { MachineFile } from './schema/machine-file.ts'

/** The screen on the machine, with what holds where machine.yaml says nothing. */
export interface MachinePanel {
  diagonalMm: number
  widthPx: number
  heightPx: number
  distanceMm: number
  touch: 'gloves' | 'bare'
  /** Angle in minutes of arc under which a capital letter of the text is seen. */
  textArcMin: number
  /** Time without a touch in minutes after which it goes back to the start page; 0: never. */
  backToStartMin: number
}

const mmPerInch = 25.4

/** Undefined where machine.yaml describes no screen. */
export function panelOf({ panel }: Pick<MachineFile, 'panel'>): MachinePanel | undefined {
  if (!panel) return undefined
  const { diagonalInch = 0, diagonalMm = diagonalInch * mmPerInch, touch = 'gloves', textArcMin = 20, backToStartMin = 10 } = panel
  const { widthPx, heightPx, distanceMm } = panel
  return { diagonalMm, widthPx, heightPx, distanceMm, touch, textArcMin, backToStartMin }
}

/** A screen, where its reader stands, and the hand that touches it. */
export interface Panel {
  /** From corner to corner of the picture. */
  diagonalMm: number
  widthPx: number
  heightPx: number
  /** From the eye to the screen. */
  distanceMm: number
  touch: 'gloves' | 'bare'
  /** Angle in minutes of arc under which a capital letter of the text is seen. */
  textArcMin: number
}

export interface PanelSizes {
  /** From one pixel to the next; pixels are taken to be square. */
  pitchMm: number
  /** Height of a capital letter of the text. */
  capitalMm: number
  /** Size of the letters of the text, which is the root size of the pages; never below what the angle asks for. */
  rootPx: number
  /** Smallest letters of a page as a share of the text, from 0.8 up. */
  smallestShare: number
  targetMm: number
  targetPx: number
}

/** Preferred height of a capital letter, and the least, in minutes of arc. Source: ISO 9241-303 (20 to 22 preferred, 16 at least). */
export const preferredArcMin = 20
export const leastArcMin = 16

/** Least width and height of what is touched, in mm. Source, from memory: MIL-STD-1472 (gloved hand), ANSI/HFES 100-2007 (bare finger). */
export const targetMm = { gloves: 15, bare: 9.5 } as const

/** Height of a capital letter as a share of the font size: Atkinson Hyperlegible, sCapHeight 668 of 1000. A test reads it from the font file. */
export const capitalShare = 0.668

/** Smallest letters of the pages as a share of the text, where the angle of the text allows it. */
const usualSmallestShare = 0.8

/** Height in mm that is seen under an angle: h = 2 d tan(a / 2). Source: ISO 9241-303. */
export function seenHeightMm(distanceMm: number, arcMin: number): number {
  return 2 * distanceMm * Math.tan((arcMin / 60 / 2) * (Math.PI / 180))
}

export function pitchMmOf({ diagonalMm, widthPx, heightPx }: Pick<Panel, 'diagonalMm' | 'widthPx' | 'heightPx'>): number {
  return diagonalMm / Math.hypot(widthPx, heightPx)
}

/** How large text and targets must be on a panel. The values of the panel are positive. */
export function panelSizes(panel: Panel): PanelSizes {
  const pitchMm = pitchMmOf(panel)
  const capitalMm = seenHeightMm(panel.distanceMm, panel.textArcMin)
  const target = targetMm[panel.touch]
  return {
    pitchMm,
    capitalMm,
    rootPx: Math.ceil((capitalMm / pitchMm / capitalShare) * 100) / 100,
    smallestShare: Math.max(usualSmallestShare, Math.min(1, leastArcMin / panel.textArcMin)),
    targetMm: target,
    targetPx: Math.ceil(target / pitchMm),
  }
}

import type { SignalWord } from './signal-word.ts'

/** How the panels of a manual look: as ANSI Z535 has them, or as the hazard severity panel of ISO 3864-2. */
export type MessageForm = 'z535' | 'iso-3864-2'

export interface Panel {
  /** Screen approximation of the safety colour, `#rrggbb`: no standard states sRGB values. */
  ground: string
  letters: string
  italic: boolean
  /** Triangle of the alert symbol and the mark in it; undefined where the word has none. */
  alert: { triangle: string; mark: string; border: string } | undefined
}

const black = '#000000'
const white = '#ffffff'

/**
 * The panel of a signal word. Letters on the grounds have a contrast of 4.5 or more by the WCAG formula.
 *
 * ISO 3864-2 knows three levels of injury and no NOTICE. There property damage keeps its word, so that a language has
 * the same four words in both forms, and its panel is plain black on white: no colour of a risk level, and not the
 * blue that ISO 3864-1 keeps for mandatory action.
 *
 * Sources: ANSI Z535.1 and Z535.4 (colours and letters), symbol form and italic from secondary texts; ISO 3864-2 by
 * way of RAL 3001, 2010 and 1003. Black is #000000: signal black RAL 9004 on orange RAL 2010 has a contrast of 3.6 only.
 */
export function panelOf(word: SignalWord, form: MessageForm): Panel {
  return panels[form][word]
}

const w001 = { triangle: '#f9a800', mark: black, border: black }

const panels: Readonly<Record<MessageForm, Readonly<Record<SignalWord, Panel>>>> = {
  z535: {
    danger: { ground: '#c8102e', letters: white, italic: false, alert: { triangle: white, mark: '#c8102e', border: white } },
    warning: { ground: '#ff8200', letters: black, italic: false, alert: { triangle: black, mark: '#ff8200', border: black } },
    caution: { ground: '#ffd100', letters: black, italic: false, alert: { triangle: black, mark: '#ffd100', border: black } },
    notice: { ground: '#005a98', letters: white, italic: true, alert: undefined },
  },
  'iso-3864-2': {
    danger: { ground: '#9b2423', letters: white, italic: false, alert: w001 },
    warning: { ground: '#d05d29', letters: black, italic: false, alert: w001 },
    caution: { ground: '#f9a800', letters: black, italic: false, alert: w001 },
    notice: { ground: white, letters: black, italic: false, alert: undefined },
  },
}

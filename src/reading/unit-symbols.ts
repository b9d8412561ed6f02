/** Symbols that make one measure with the number before them; spelled-out units (`minutes`) are ordinary words. */
const simple = new Set(
  `% ‰ ° °C °F ′ ″ m g s t h d l L A V W N J K T Pa bar mbar Hz Ω ohm Wb F H C S lm lx cd mol rad sr dB dBA dB(A dB(C min sec rpm rev U
  VDC VAC Vdc Vac VA var kvar psi psig psia inHg inH2O inWC in ft yd mi lb lbs lbf oz gal hp ksi cfm scfm gpm fpm ipm btu BTU Btu AWG pt qt
  ppm vol deg wk hr hrs mo yr Nl l Nm kWh Wh Ah mAh mH2O mmHg Mbit kbit Gbit bit B kB MB GB TB baud px dpi pH`.split(/\s+/),
)
const prefixed = /^(?:[TGMkhdcmµμnp]|da)(?:m|g|s|l|L|A|V|W|N|J|K|T|Pa|bar|Hz|Ω|ohm|F|H|S|VA|var|Wh|Ah|Nm|B|bit|t|rad|mol|lm|lx)$/

/** What may follow a unit and still belong to it: `24 V DC`, `82 deg. C`, `70 vol. %`, `45 N m`. */
const followers: Readonly<Record<string, RegExp>> = {
  V: /^(?:DC|AC|CC|CA|RMS|[da]\.?c|c\.?[ca]|rms)$/,
  A: /^(?:DC|AC|CC|CA|RMS|[da]\.?c|c\.?[ca]|rms)$/,
  '°': /^[CFK]$/,
  deg: /^[CF]$/,
  vol: /^%$/,
  N: /^m$/,
  lbf: /^(?:ft|in)$/,
  ft: /^(?:lb|lbf|lbs)$/,
  in: /^(?:lb|lbf|lbs)$/,
}

/** `N·m`, `mm/s`, `rev./min`, `min⁻¹`, `m³/h`, `1/min`: each part a symbol. */
export function isUnit(text: string): boolean {
  if (isSymbol(text)) return true
  if (!/[·⋅*/^²³⁻.-]/.test(text)) return false
  return (
    text
      .replace(/⁻?[¹²³⁴]|\^-?\d|(?<=\p{L})[23]/gu, '')
      .split(/[·⋅*/.-]+/)
      .every((part) => part === '' || part === '1' || part === 'r.p.m' || isSymbol(part)) && /\p{L}/u.test(text)
  )
}

export const continuesUnit = (unit: string, next: string): boolean => followers[unit]?.test(next) ?? false

const isSymbol = (text: string) => simple.has(text) || prefixed.test(text) || /^[rc]\.p\.[mh]$/.test(text)

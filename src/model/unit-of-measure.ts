const pieces = ['pc', 'pcs', 'piece', 'pieces', 'ea', 'each', 'unit', 'units', 'st', 'stk', 'stück', 'pza', 'pzas', 'ud', 'uds', 'u', 'nr', 'no']

/** Whether a quantity in this unit counts single things. A quantity without a unit does. */
export function countsPieces(unit: string | undefined): boolean {
  return unit === undefined || pieces.includes(unit.toLowerCase().replace(/\.$/, ''))
}

/** Symbol -> the prefixes that the trade writes before it. Source: SI brochure, 9th edition, and common practice. */
const prefixed: Readonly<Record<string, string>> = {
  m: 'kcdmµμn',
  g: 'kmµμ',
  s: 'mµμn',
  A: 'kmµμn',
  V: 'kMmµμ',
  W: 'kMGmµμ',
  Ω: 'kMGm',
  ohm: 'kMm',
  Hz: 'kMG',
  N: 'kMm',
  Pa: 'hkMGm',
  J: 'kMGm',
  F: 'mµμnp',
  S: 'mµμ',
  H: 'mµμ',
  T: 'mµμ',
  l: 'mcdhµμ',
  L: 'mµμ',
  bar: 'm',
  Wh: 'kMG',
  VA: 'kM',
  var: 'kM',
  Ah: 'mk',
  K: 'm',
  mol: 'mk',
  rad: 'm',
  lx: 'k',
  B: 'kMG',
  bit: 'kMG',
}

const plain = `1 % ‰ ° ′ ″ °C °F pH ppm ppb min h d day days week weeks month months year years a t lm cd sr dB dB(A) dBA NTU cSt cP Nm kNm mNm
  rpm r rev in inch " ' ft yd mi gal qt pt lb lbs lbf oz psi psig psia barg bara mbarg inHg inWC mmHg mmWC mWC Torr kp hp CV BTU cfm scfm gpm
  VDC VAC Vdc Vac mVDC litre litres liter liters metre metres meter meters set sets pair pairs roll rolls box boxes bag bags pack packs kit kits
  can cans tube tubes bottle bottles sheet sheets length lengths lot lots reel reels drum drums pulse pulses imp inc count counts digit digits
  step steps stroke strokes cycle cycles turn turns juego juegos par pares rollo rollos caja cajas bote botes`.split(/\s+/)

const symbols: ReadonlySet<string> = new Set([
  ...plain,
  ...pieces,
  ...Object.entries(prefixed).flatMap(([symbol, prefixes]) => [symbol, ...[...prefixes].map((prefix) => prefix + symbol)]),
])
const inLowerCase = Map.groupBy(symbols, (symbol) => symbol.toLowerCase())

/** Other ways to write a unit that are met in exports. Common practice. */
const meant: Readonly<Record<string, string>> = {
  degc: '°C',
  'deg c': '°C',
  'deg. c': '°C',
  ºc: '°C',
  '° c': '°C',
  c: '°C',
  degf: '°F',
  deg: '°',
  sec: 's',
  secs: 's',
  hr: 'h',
  hrs: 'h',
  mins: 'min',
  amp: 'A',
  amps: 'A',
  volt: 'V',
  volts: 'V',
  ohms: 'Ω',
  kgs: 'kg',
  ltr: 'l',
  mtr: 'm',
  'u/min': '1/min',
}

/** What a voltage or a pressure is measured against: `V d.c.`, `bar (g)`, `V c.c.` */
const qualifier = /(?:\s+|(?=\())\(?(?:a\.?c\.?|d\.?c\.?|c\.?[ac]\.?|abs\.?|rms|g|a)\)?$/i

/** Whether a text is a unit: SI and trade units, their products and powers, and things in a time: `kg·m²`, `m3/h`, `crates/min`. */
export function isUnit(text: string): boolean {
  const factors = text.replace(qualifier, '').split(/[·⋅*/\s]/)
  return factors.every((factor, index) => {
    const base = factor.replace(/(?<=\D)(?:\^?[-−]?\d|[⁻¹²³]+)$/, '')
    return symbols.has(base) || symbols.has(factor) || (index === 0 && /^\p{L}{3,}\/[^/]+$/u.test(text))
  })
}

/** The unit that was meant by a text that is none, where only one can be. */
export function unitMeant(text: string): string | undefined {
  const lower = text.toLowerCase()
  const [found, other] = meant[lower] !== undefined ? [meant[lower]] : (inLowerCase.get(lower) ?? [])
  return other === undefined ? found : undefined
}

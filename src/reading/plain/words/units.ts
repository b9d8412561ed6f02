import { wordSet } from './word-set.ts'

/** Symbols of units, as they are written. Source: SI brochure, 9th edition, tables 2, 4, 7 and 8; bar and VA: common practice. */
export const symbolsOfUnits = wordSet(`
  m mm cm km µm μm nm kg g mg t s ms µs μs min h d A mA kA µA V kV mV W kW MW mW N kN J kJ MJ K °C Pa kPa MPa hPa bar mbar Hz kHz MHz GHz rad lm lx
  mol L l mL ml Ω kΩ MΩ mΩ VA kVA Ah mAh Wh kWh dB VDC VAC rpm
`)

const wrong: readonly (readonly [right: string, wrong: string])[] = [
  ['kg', 'Kg KG kgs Kgs KGS kilos kgr'],
  ['g', 'gr grs gms'],
  ['mm', 'MM Mm mms'],
  ['cm', 'CM cms'],
  ['m', 'mtr mtrs Mtr Mtrs mts'],
  ['km', 'Km KM kms'],
  ['µm', 'micron microns'],
  ['s', 'sec secs Sec Secs seg segs'],
  ['ms', 'msec msecs'],
  ['min', 'mins Min Mins'],
  ['h', 'hr hrs Hr Hrs HRS'],
  ['kW', 'KW Kw kw'],
  ['kWh', 'KWH Kwh KWh kwh'],
  ['kV', 'KV Kv kv'],
  ['kVA', 'KVA Kva kva'],
  ['V', 'v'],
  ['Hz', 'hz HZ'],
  ['kHz', 'KHz Khz KHZ khz'],
  ['MHz', 'Mhz mhz MHZ'],
  ['kN', 'KN'],
  ['kPa', 'Kpa KPa KPA kpa'],
  ['MPa', 'Mpa MPA'],
  ['bar', 'Bar BAR bars'],
  ['L', 'ltr ltrs Ltr Ltrs lts Lts'],
  ['mL', 'cc ccs'],
  ['N·m', 'Nm NM'],
  ['°C', '°c degC'],
  ['°F', '°f degF'],
]

/** Spellings that are against the SI or the style of the manuals, and what is right. A unit in full, "volts", is a word and is left alone. */
export const rightUnits: ReadonlyMap<string, string> = new Map(
  wrong.flatMap(([right, spellings]) => spellings.split(' ').map((spelling) => [spelling, right] as const)),
)

/** Single letters that are a unit even right behind a number; others are more often part of a name: "3D", "10K". */
export const gluedLetters = wordSet('m g s V W A N h t L l')

/** Units outside the SI. Source: ISO 80000-1:2022, annex; SI brochure, 9th edition, chapter 4. */
export const notSi = wordSet(
  'psi PSI Psi psig psia °F degF inHg ft lb lbs Lbs LBS lbf oz gal gals gpm GPM cfm CFM scfm fpm hp HP BTU Btu kgf kp mmHg atm inch inches feet foot pounds ounces gallons',
)

/** Words before a number with a letter that name a thing: "terminal 2A" is no current. */
export const namingWords = wordSet(`
  terminal sheet step fig figure connector valve zone station type class model group row line table drawing version slot channel position format
  port pin fuse contact sensor section size grade series no part borne hoja paso figura conector válvula zona tipo clase modelo fila línea tabla
  plano canal posición formato puerto contacto
`)

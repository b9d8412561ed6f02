/**
 * Words of the trade that have the form of a tag, letters and a number, and name no device. The whole word must
 * fit. All are common practice, from memory. A list is short where its letters are device letters too: PT, CR, RS.
 */
const forms: readonly string[] = [
  // One letter: threads, fits, lamp caps, paper, keys, phases, motor ends, potentials. M12, H7, E27, A4, F5, L1, U1
  '[A-Za-z]\\d{1,2}',
  // Threads, pipes and fits
  'M\\d{1,2}[Xx×]\\d+',
  'Tr\\d{1,3}(?:[Xx×]\\d+)?',
  '(?:NPT|NPS|BSP|DN)\\d{1,4}',
  'PN(?:6|10|16|25|40|63|64|100|160|250|320|400)',
  'IT\\d{1,2}',
  // Protection and classes
  'IP[X\\d]{2}[A-HK]?',
  'IK\\d{2}',
  'NEMA\\d{1,2}[A-Z]?',
  'SIL\\d',
  'C(?:AT|at)\\d[A-Za-z]?',
  'FFP\\d',
  // Sensors and signals
  'P[Tt](?:50|100|200|500|1000)',
  'N[Ii](?:100|120|1000)',
  'C[Uu](?:10|50|100)',
  '(?:NTC|PTC|KTY|TTL)\\d+',
  '(?:RS|EIA)(?:232|422|485)',
  // Plugs, cables, batteries and lamps
  'RJ(?:11|12|45)',
  'USB\\d',
  'AWG\\d{1,2}',
  'CR(?:1220|1616|1632|2016|2025|2032|2430|2450)',
  'LR(?:03|1|6|06|14|20|44)',
  'GU\\d{1,2}',
  'MR(?:11|16)',
  'HDMI\\d',
  // Materials, oils and goods
  'S(?:185|235|275|355|420|460|690|700)(?:[A-Z]\\d?)*',
  'S[Tt](?:37|52)',
  'F[Ee](?:360|430|510)',
  'C(?:45|60)[EK]?',
  'PA(?:6|11|12|46|66)',
  'GJ[LS]\\d{3}',
  'HRC\\d{2}',
  '(?:NBR|FKM|EPDM|PUR)\\d{2}',
  '(?:VG|HL|HLP|CLP)(?:10|15|22|32|46|68|100|150|220|320|460|680)',
  'NLGI\\d{1,3}',
  'UN\\d{4}',
  'CO2|H2O|SF6|NaOH',
  'R(?:22|32|134[aA]|290|404[aA]|407[cC]|410[aA]|744)',
  // Standards and regulations, glued to their number
  '(?:ISO|IEC|EN|DIN|BS|ANSI|NFPA|UL|CSA|VDE|ASTM|AISI|SAE|ASME|IEEE|OSHA|ISA|JIS|UNE|VDI|RAL|ATEX)\\d{1,6}',
  // Belts, chains and bearings
  'AT(?:3|5|10|20)',
  'HTD\\d{1,2}',
  '(?:SP|XP)[ABCZ]\\d{3,4}',
  // Controllers and software
  '(?:UTF|CRC|SHA)\\d{1,3}',
  'H26[45]',
  'IP[Vv][46]',
]

const anyForm = new RegExp(`^(?:${forms.join('|')})$`, 'u')

/** A number with its unit: `24VDC`, `400V`, `10MM2`. */
const quantity =
  /^\d+(?:V(?:AC|DC)?|[UM]?A|[KM]?W|K?VA|[KMG]?HZ|[KM]?OHM|M?BAR|[KMH]?PA|[UCKD]?M(?:M2?)?|MIN|M?S|H|K?NM?|K?G|T|M?L|C|F|K|RPM|PSI|IN|POL|X\d+)$/

/** Whether a word of this form means something in the trade by itself, whatever letters a machine uses for its devices. */
export function isTradeWord(word: string): boolean {
  return anyForm.test(word) || quantity.test(word.toUpperCase())
}

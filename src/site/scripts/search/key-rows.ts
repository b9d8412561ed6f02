/** The letters on the screen, in the order that readers of the language know from other keyboards. */
export interface KeyRows {
  rows: readonly string[]
  /** What each letter becomes after the accent key. */
  accents?: Readonly<Record<string, string>>
}

const english: KeyRows = { rows: ['QWERTYUIOP', 'ASDFGHJKL', 'ZXCVBNM'] }

const byLanguage: Readonly<Record<string, KeyRows>> = {
  en: english,
  es: { rows: ['QWERTYUIOP', 'ASDFGHJKLÑ', 'ZXCVBNM'], accents: { A: 'Á', E: 'É', I: 'Í', O: 'Ó', U: 'Ú' } },
}

/** The keys of a language; the English ones for a language that has none of its own, as search reads letters without accents. */
export function keyRows(language: string): KeyRows {
  return byLanguage[language.split('-')[0] ?? ''] ?? english
}

/** Beside the letters, as on a counting board: numbers are most of what is typed at a machine. */
export const numberKeys: readonly string[] = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '-', '0', '.']

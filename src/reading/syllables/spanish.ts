/**
 * Syllables of a Spanish word in small letters with its accents. A weak vowel (i, u) without accent joins its neighbour; two strong ones part, and
 * so does an accented í or ú beside a strong one. An h between vowels changes nothing. Source: rules of diphthong and hiatus as schools teach them
 * (common practice).
 */
export function spanishSyllables(word: string): number {
  const plain = word
    .replace(/qu|gu(?=[eiéí])/g, 'q')
    .replace(/y(?=[aeiouáéíóú])/g, 'j')
    .replaceAll('y', 'i')
    .replace(/(?<=[aeiouáéíóúü])h(?=[aeiouáéíóúü])/g, '')
  const groups = plain.match(/[aeiouáéíóúü]+/g) ?? []
  const hiatuses = groups.reduce((sum, group) => sum + hiatusesIn(group), 0)
  return Math.max(1, groups.length + hiatuses)
}

function hiatusesIn(group: string): number {
  let count = 0
  for (let at = 1; at < group.length; at++) if (areApart(group[at - 1] ?? '', group[at] ?? '')) count++
  return count
}

/** `aéreo`, `línea` and `envío` part, `agua` and `construir` do not. */
function areApart(left: string, right: string): boolean {
  if (left === right) return true
  if (/[iuü]/.test(left) || /[iuü]/.test(right)) return false
  return !(/[íú]/.test(left) && /[íú]/.test(right))
}

/** Two vowels side by side that are two syllables although they could be one. */
const split = new RegExp(
  [
    // be- and ge- before a vowel: beeinflussen, geeignet, beurteilen, geerdet
    '^(?:un|mit|ab|an|auf|aus|ein|um|vor|zu)?[bg]e(?=e(?:n[dg]|r[db]|hr)|ur|inhalt|impf)',
    // Linie, Folien, Batterien, Medium
    '(?<=lin|ser|fol|akt|mater|famil|präm|stud|bakter|spez|immobil|ker)i(?=e)',
    '(?<!^d|^w|sch)i(?=en$)',
    '(?<!^d|[bvg]e[r]?d)i(?=en[tz])',
    'i(?=ell|enis|etät|eur?s)',
    'e(?=um$|us$|ität)',
    '(?<=^k|^mikr|^z)o(?=o)',
    '(?<=element|teile|lade|anzeige|eingab)e(?=e)',
  ].join('|'),
  'g',
)
const nucleus = /eau|eu|äu|ei|ai|au|ie|ee|aa|oo|ey|ay|oy|ui(?=$)|[aeiouäöüyéàáèê]/g

/**
 * Syllables of a German word in small letters: vowels, with ei, ai, au, eu, äu, ie, aa, ee and oo as one. Seams of compounds are known only where they are
 * frequent; all other pairs of vowels part (Material, Radius, aktuell).
 */
export function germanSyllables(word: string): number {
  const plain = word
    .replaceAll('qu', 'q')
    .replace(/^y(?=[aeiouäöü])/, 'j')
    .replace(/(?<=^|[ck])(?:te|bea)am|(?<=^|[^aeiou])(?:team|beam|steam)/g, 'tem')
  return Math.max(1, (plain.match(nucleus)?.length ?? 0) + (plain.match(split)?.length ?? 0))
}

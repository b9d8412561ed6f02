const vowel = 'aeiouyàâäéèêëîïôöùûüœæ'
const lastE = new RegExp(`(?<=[${vowel}].*)(?:es?)$`)
/** Vowels that are one nucleus; i, u and ou glide into the vowel after them (pression, huile, ouest). */
const nucleus = /(?:(?:ou|[iyu])(?=[aàâeéèêoôiîœ]))?(?:eau|aoû|œ[ui]|e[uû]|o[uùûiî]|a[iîu]|ei|[aeiouyàâäéèêëîïôöùûüœæ])/g

/**
 * Syllables of a French word in small letters as spoken: an e or es at the end is mute where the word has another vowel. The silent -ent of a verb
 * cannot be told from the -ent of a noun, and counts.
 */
export function frenchSyllables(word: string): number {
  const plain = word
    .replace(/qu|gu(?=[eiéèêî])/g, 'q')
    .replace(/(?<=g)e(?=[aoâô])/g, '')
    .replace(new RegExp(`(?<=[${vowel}])y(?=[${vowel}])`, 'g'), 'ij')
    .replace(lastE, '')
    .replace(/i(?=ll)(?<=[eou]i)/g, '')
    // Behind two consonants the i is a syllable of its own: client, ouvrier.
    .replace(/(?<=[bcdfgptv][lr])i(?=[aeéèo])/g, 'ij')
  return Math.max(1, plain.match(nucleus)?.length ?? 0)
}

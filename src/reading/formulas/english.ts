import { formula, kincaid } from './formula.ts'

/** School years of the United States. Calibrated on 531 Navy trainees with passages of training manuals. */
export const fleschKincaidGrade = formula(
  ['words', 'sentences', 'syllables'],
  kincaid,
  ({ words, sentences, syllables }) => 0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59,
)

/** Ease, about 0 (hardest) to 100, up to 121.22. */
export const fleschEase = formula(
  ['words', 'sentences', 'syllables'],
  'Flesch 1948, Journal of Applied Psychology 32(3) 221–233',
  ({ words, sentences, syllables }) => 206.835 - 1.015 * (words / sentences) - 84.6 * (syllables / words),
)

/**
 * School years, from the share of words of one syllable among 150; valid from 5 to 12. Sentences do not count, so it suits lists and short pages.
 * A text of another length is scaled to 150 words; numbers, tags and abbreviations are left out.
 */
export const forcast = formula(
  ['oneSyllable', 'wordTokens'],
  'Caylor, Sticht 1973 (HumRRO) p. 3; Caylor, Sticht, Fox, Ford 1973',
  ({ oneSyllable, wordTokens }) => 20 - (oneSyllable * 150) / wordTokens / 10,
)

/** School years. Hard words are all of three or more syllables: Gunning's exceptions (names, easy compounds, -ed and -es) are not taken out. */
export const gunningFog = formula(
  ['words', 'sentences', 'polysyllables'],
  'Gunning 1952, The Technique of Clear Writing; edition of 1968 p. 38',
  ({ words, sentences, polysyllables }) => 0.4 * (words / sentences + (100 * polysyllables) / words),
)

/** School years for full comprehension, so one or two above Flesch–Kincaid. A text of less than 30 sentences is scaled to 30. */
export const smog = formula(
  ['sentences', 'polysyllables'],
  'McLaughlin 1969, Journal of Reading 12(8) 639–646, equation D',
  ({ sentences, polysyllables }) => 1.043 * Math.sqrt((polysyllables * 30) / sentences) + 3.1291,
)

/** School years, in the rounded form that is in use. */
export const colemanLiau = formula(
  ['words', 'sentences', 'letters'],
  'short form of Coleman, Liau 1975',
  ({ words, sentences, letters }) => (0.0588 * 100 * letters) / words - (0.296 * 100 * sentences) / words - 15.8,
)

/** School years. Strokes of the typewriter are counted as letters and digits, without punctuation. */
export const automatedReadability = formula(
  ['words', 'sentences', 'letters'],
  'Smith, Senter 1967, AMRL-TR-66-220 p. 8',
  ({ words, sentences, letters }) => 0.5 * (words / sentences) + 4.71 * (letters / words) - 21.43,
)

import { formula } from './formula.ts'

const kincaid = 'Kincaid, Fishburne, Rogers, Chissom 1975, Research Branch Report 8-75 p. 14'

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

/** The regression that `forcast` rounds. */
export const forcastRegression = formula(
  ['oneSyllable', 'wordTokens'],
  'Caylor, Sticht 1973 (HumRRO) p. 3',
  ({ oneSyllable, wordTokens }) => 20.43 - 0.11 * ((oneSyllable * 150) / wordTokens),
)

/** School years. Hard words are all of three or more syllables: Gunning's exceptions (names, easy compounds, -ed and -es) are not taken out. */
export const gunningFog = formula(
  ['words', 'sentences', 'polysyllables'],
  'Gunning 1952, The Technique of Clear Writing; edition of 1968 p. 38',
  ({ words, sentences, polysyllables }) => 0.4 * (words / sentences + (100 * polysyllables) / words),
)

export const gunningFogNavy = formula(
  ['words', 'sentences', 'polysyllables'],
  kincaid,
  ({ words, sentences, polysyllables }) => ((words + 2 * polysyllables) / sentences - 3) / 2,
)

/** School years for full comprehension, so one or two above Flesch–Kincaid. A text of less than 30 sentences is scaled to 30. */
export const smog = formula(
  ['sentences', 'polysyllables'],
  'McLaughlin 1969, Journal of Reading 12(8) 639–646, equation D',
  ({ sentences, polysyllables }) => 1.043 * Math.sqrt((polysyllables * 30) / sentences) + 3.1291,
)

/** Without the nearest perfect square that one takes by hand. */
export const smogQuick = formula(
  ['sentences', 'polysyllables'],
  'McLaughlin 1969, Journal of Reading 12(8) 639–646',
  ({ sentences, polysyllables }) => 3 + Math.sqrt((polysyllables * 30) / sentences),
)

/** School years, in the rounded form that is in use. */
export const colemanLiau = formula(
  ['words', 'sentences', 'letters'],
  'short form of Coleman, Liau 1975',
  ({ words, sentences, letters }) => (0.0588 * 100 * letters) / words - (0.296 * 100 * sentences) / words - 15.8,
)

/** School years, in the two published steps; at most 0.01 from the short form. */
export const colemanLiauByCloze = formula(
  ['words', 'sentences', 'letters'],
  'Coleman, Liau 1975, Journal of Applied Psychology 60(2) 283–284',
  ({ words, sentences, letters }) => {
    const clozePercent = 141.8401 - (0.21459 * 100 * letters) / words + (1.079812 * 100 * sentences) / words
    return (-27.4004 * clozePercent) / 100 + 23.06395
  },
)

/** School years. Strokes of the typewriter are counted as letters and digits, without punctuation. */
export const automatedReadability = formula(
  ['words', 'sentences', 'letters'],
  'Smith, Senter 1967, AMRL-TR-66-220 p. 8',
  ({ words, sentences, letters }) => 0.5 * (words / sentences) + 4.71 * (letters / words) - 21.43,
)

export const automatedReadabilityNavy = formula(
  ['words', 'sentences', 'letters'],
  kincaid,
  ({ words, sentences, letters }) => 0.37 * (words / sentences) + 5.84 * (letters / words) - 26.01,
)

/** Target 30, too hard above 40. */
export const armyClarity = formula(
  ['words', 'sentences', 'polysyllables'],
  'DA Pam 600-67 § 4-3',
  ({ words, sentences, polysyllables }) => words / sentences + (100 * polysyllables) / words,
)

/** School years. */
export const daleChall1948 = formula(
  ['words', 'sentences', 'unfamiliar'],
  'Dale, Chall 1948, Educational Research Bulletin 27',
  ({ words, sentences, unfamiliar }) => 0.1579 * ((100 * unfamiliar) / words) + 0.0496 * (words / sentences) + 3.6365,
)

/** Cloze score in percent: 58 and more is grade 1, 15 and less grade 16. */
export const daleChallCloze1995 = formula(
  ['words', 'sentences', 'unfamiliar'],
  'Chall, Dale 1995, Readability Revisited p. 66',
  ({ words, sentences, unfamiliar }) => 64 - 0.95 * ((100 * unfamiliar) / words) - 0.69 * (words / sentences),
)

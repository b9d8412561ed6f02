import { byAverages, formula, kincaid } from './formula.ts'

// Forms that no language takes here: its syllables or words on a list are not counted, or another form stands for it. Published figures are
// computed again with them.

/** The regression that `forcast` rounds. */
export const forcastRegression = formula(
  ['oneSyllable', 'wordTokens'],
  'Caylor, Sticht 1973 (HumRRO) p. 3',
  ({ oneSyllable, wordTokens }) => 20.43 - 0.11 * ((oneSyllable * 150) / wordTokens),
)

export const gunningFogNavy = formula(
  ['words', 'sentences', 'polysyllables'],
  kincaid,
  ({ words, sentences, polysyllables }) => ((words + 2 * polysyllables) / sentences - 3) / 2,
)

/** Without the nearest perfect square that one takes by hand. */
export const smogQuick = formula(
  ['sentences', 'polysyllables'],
  'McLaughlin 1969, Journal of Reading 12(8) 639–646',
  ({ sentences, polysyllables }) => 3 + Math.sqrt((polysyllables * 30) / sentences),
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
  'Dale, Chall 1948, Educational Research Bulletin 27 (from memory)',
  ({ words, sentences, unfamiliar }) => 0.1579 * ((100 * unfamiliar) / words) + 0.0496 * (words / sentences) + 3.6365,
)

/** Cloze score in percent: 58 and more is grade 1, 15 and less grade 16. */
export const daleChallCloze1995 = formula(
  ['words', 'sentences', 'unfamiliar'],
  'Chall, Dale 1995, Readability Revisited p. 66',
  ({ words, sentences, unfamiliar }) => 64 - 0.95 * ((100 * unfamiliar) / words) - 0.69 * (words / sentences),
)

export const kandelMoles209 = byAverages('Kandel, Moles 1958, Cahiers d’Études de Radio-Télévision (from memory), form 209', 209, 1.15, 68)

/** Dutch, ease. */
export const douma = byAverages('Douma 1960', 206.84, 0.93, 77)

export const brouwer = byAverages('Brouwer 1963, index A', 195, 2, 200 / 3)

/** Italian, ease. */
export const fleschVacca = byAverages('Franchina, Vacca 1986 (from memory)', 217, 1.3, 60)

/** Portuguese, ease. */
export const martins = byAverages('Martins et al. 1996 (from memory)', 248.835, 1.015, 84.6)

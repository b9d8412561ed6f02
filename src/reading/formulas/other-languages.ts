import { byAverages, formula } from './formula.ts'

/** Spanish, ease. */
export const fernandezHuerta = byAverages('Fernández Huerta 1959, Consigna 214, 29–32; sentence length as Law 2011 read it', 206.84, 1.02, 60)

/** Spanish, ease: below 40 very hard, 40 to 55 somewhat hard, 55 to 65 normal, 65 to 80 quite easy, above very easy (INFLESZ, Barrio-Cantalejo 2008). */
export const szigrisztPazos = byAverages('Szigriszt Pazos 1993, thesis, Madrid', 206.835, 1, 62.3)

/** German, ease. */
export const amstad = byAverages('Amstad 1978, thesis, Zürich', 180, 1, 58.5)

/** French, ease. Two forms are in use, up to 10 points apart. This one is the more common. */
export const kandelMoles207 = byAverages('Kandel, Moles 1958, Cahiers d’Études de Radio-Télévision (from memory), form 207', 207, 1.015, 73.6)

/** Italian, ease: below 80 hard for an elementary, below 60 for a middle, below 40 for a high school. */
export const gulpease = formula(
  ['words', 'sentences', 'letters'],
  'Lucisano, Piemontese 1988',
  ({ words, sentences, letters }) => 89 + (300 * sentences - 10 * letters) / words,
)

/** Any language: up to 24 very easy, 34 easy, 44 standard, 54 hard, above very hard. */
export const lix = formula(['words', 'sentences', 'long'], 'Björnsson 1968', ({ words, sentences, long }) => words / sentences + (100 * long) / words)

/** Any language: long words a sentence. */
export const rix = formula(['sentences', 'long'], 'Anderson 1983, Journal of Reading 26(6)', ({ sentences, long }) => long / sentences)

const wienerSource = 'Bamberger, Vanecek 1984 pp. 83–84'
const wienerCounts = ['words', 'sentences', 'polysyllables', 'long', 'oneSyllable'] as const

/** The four Wiener Sachtextformeln: school years 4 to 15 of Austria. */
export const wiener1 = formula(
  wienerCounts,
  wienerSource,
  ({ words, sentences, polysyllables, long, oneSyllable }) =>
    (19.35 * polysyllables + 12.97 * long - 3.27 * oneSyllable) / words + 0.1672 * (words / sentences) - 0.875,
)
export const wiener2 = formula(
  wienerCounts,
  wienerSource,
  ({ words, sentences, polysyllables, long }) => (20.07 * polysyllables + 13.73 * long) / words + 0.1682 * (words / sentences) - 2.779,
)
export const wiener3 = formula(
  wienerCounts,
  wienerSource,
  ({ words, sentences, polysyllables }) => (29.63 * polysyllables) / words + 0.1905 * (words / sentences) - 1.1144,
)
export const wiener4 = formula(
  wienerCounts,
  wienerSource,
  ({ words, sentences, polysyllables }) => (27.44 * polysyllables) / words + 0.2656 * (words / sentences) - 1.693,
)

/** The table from which signal words follow, in one line. Source: ANSI Z535.6, annex C, in its manner. */
export const wordTable =
  'the table: death or serious injury with accident `will` and injury `will`: danger; death or serious injury otherwise: warning; minor or moderate injury: caution; property damage: notice'

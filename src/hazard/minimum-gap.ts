/** The gap in mm below which a moving part can crush a part of the body. A hand is also wrist and fist. Source: ISO 13854, table 1. */
export const minimumGapMm = {
  body: 500,
  head: 300,
  leg: 180,
  foot: 120,
  toes: 50,
  arm: 120,
  hand: 100,
  finger: 25,
} as const

/** Hot water and the seconds in which it burns badly at the latest. Source: table of a hospital's burns institute (secondary texts). */
const scaldsWithinS: readonly (readonly [temperatureC: number, withinS: number])[] = [
  [68, 1],
  [66, 1.5],
  [63, 3],
  [60, 5],
  [57, 10],
  [55, 30],
  [52, 120],
]

/** Seconds within which water of a temperature in °C burns badly; undefined below 52 °C, where the table gives no such bound. */
export function scaldWithinS(temperatureC: number): number | undefined {
  return scaldsWithinS.find(([fromC]) => temperatureC >= fromC)?.[1]
}

/**
 * Where a rising function has a value, between two arguments; the nearer of them for a value that is beyond its end.
 * Halves the interval until a number of the computer separates it no further.
 */
export function invert(rising: (x: number) => number, value: number, from: number, to: number): number {
  let [low, high] = [from, to]
  for (let step = 0; step < 200; step++) {
    const middle = low + (high - low) / 2
    if (middle <= low || middle >= high) break
    if (rising(middle) < value) low = middle
    else high = middle
  }
  return Math.abs(rising(low) - value) <= Math.abs(rising(high) - value) ? low : high
}

/** The integral of a smooth function, by Simpson's rule. */
export function integral(of: (x: number) => number, from: number, to: number, intervals = 512): number {
  const step = (to - from) / intervals
  let sum = of(from) + of(to)
  for (let index = 1; index < intervals; index++) sum += (index % 2 === 0 ? 2 : 4) * of(from + index * step)
  return (sum * step) / 3
}

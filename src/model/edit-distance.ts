/**
 * How many slips lead from one text to the other: a character too many, too few, wrong, or two neighbours
 * swapped (optimal string alignment). `limit + 1` stands for any higher number.
 */
export function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1
  // What the texts share at both ends needs no slip, and takes most of a tag.
  let start = 0
  let [endA, endB] = [a.length, b.length]
  while (start < endA && start < endB && a.charCodeAt(start) === b.charCodeAt(start)) start++
  while (endA > start && endB > start && a.charCodeAt(endA - 1) === b.charCodeAt(endB - 1)) {
    endA--
    endB--
  }
  let twoAgo: number[] = []
  let last: number[] = []
  for (let j = 0; j <= endB - start; j++) last.push(j)
  for (let i = 1; i <= endA - start; i++) {
    const own = a.charCodeAt(start + i - 1)
    const before = a.charCodeAt(start + i - 2)
    const row = [i]
    let least = i
    for (let j = 1; j <= endB - start; j++) {
      const other = b.charCodeAt(start + j - 1)
      let best = Math.min((last[j - 1] ?? 0) + (own === other ? 0 : 1), (last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1)
      if (i > 1 && j > 1 && before === other && own === b.charCodeAt(start + j - 2)) best = Math.min(best, (twoAgo[j - 2] ?? 0) + 1)
      row.push(best)
      if (best < least) least = best
    }
    if (least > limit) return limit + 1
    twoAgo = last
    last = row
  }
  return Math.min(last[endB - start] ?? 0, limit + 1)
}

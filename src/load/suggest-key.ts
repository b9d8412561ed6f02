/** The one name that is most likely meant by a misspelt key, if any is near: same letters, or one edit apart. */
export function suggestKey(written: string, known: readonly string[]): string | undefined {
  const near = known.filter((name) => withinOneEdit(written.toLowerCase(), name.toLowerCase()))
  return near.length === 1 ? near[0] : undefined
}

/** Whether one insertion, deletion, replacement or swap of neighbours turns `a` into `b`. */
function withinOneEdit(a: string, b: string): boolean {
  let start = 0
  while (start < a.length && start < b.length && a[start] === b[start]) start++
  let endA = a.length
  let endB = b.length
  while (endA > start && endB > start && a[endA - 1] === b[endB - 1]) {
    endA--
    endB--
  }
  const [left, right] = [a.slice(start, endA), b.slice(start, endB)]
  return (left.length <= 1 && right.length <= 1) || (left.length === 2 && right.length === 2 && left[0] === right[1] && left[1] === right[0])
}

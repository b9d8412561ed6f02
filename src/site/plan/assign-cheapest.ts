/**
 * Gives each row a column of its own so that the costs add up to the least: the Hungarian method, O(rows² × columns).
 * `costs` has as many columns as rows or more. Of equal solutions always the same one. RangeError where columns are too few.
 */
export function assignCheapest(costs: readonly (readonly number[])[]): number[] {
  const rows = costs.length
  const columns = costs[0]?.length ?? 0
  if (columns < rows) throw new RangeError(`${rows} rows and ${columns} columns`)
  // Row and column 0 stand for none.
  const rowPrices = new Array<number>(rows + 1).fill(0)
  const columnPrices = new Array<number>(columns + 1).fill(0)
  const rowOf = new Array<number>(columns + 1).fill(0)
  for (let row = 1; row <= rows; row++) {
    const least = new Array<number>(columns + 1).fill(Number.POSITIVE_INFINITY)
    const before = new Array<number>(columns + 1).fill(0)
    const used = new Array<boolean>(columns + 1).fill(false)
    let column = 0
    rowOf[0] = row
    do {
      used[column] = true
      const from = at(rowOf, column)
      let step = Number.POSITIVE_INFINITY
      let next = 0
      for (let to = 1; to <= columns; to++) {
        if (used[to]) continue
        const cost = (costs[from - 1]?.[to - 1] ?? 0) - at(rowPrices, from) - at(columnPrices, to)
        if (cost < at(least, to)) {
          least[to] = cost
          before[to] = column
        }
        if (at(least, to) < step) {
          step = at(least, to)
          next = to
        }
      }
      for (let to = 0; to <= columns; to++) {
        if (used[to]) {
          rowPrices[at(rowOf, to)] = at(rowPrices, at(rowOf, to)) + step
          columnPrices[to] = at(columnPrices, to) - step
        } else least[to] = at(least, to) - step
      }
      column = next
    } while (rowOf[column] !== 0)
    while (column !== 0) {
      const previous = at(before, column)
      rowOf[column] = at(rowOf, previous)
      column = previous
    }
  }
  const columnOf = new Array<number>(rows).fill(0)
  for (let column = 1; column <= columns; column++) if (at(rowOf, column) > 0) columnOf[at(rowOf, column) - 1] = column - 1
  return columnOf
}

const at = (list: readonly number[], index: number) => list[index] ?? 0

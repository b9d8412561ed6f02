/**
 * Gives each row at most one column so that the sum of the gains is as high as it can be: the assignment problem, with
 * the potentials of the Hungarian method (H. W. Kuhn 1955, J. Munkres 1957). `gains[row][column]` are finite and not
 * negative, every row equally long. Returns the column of each row; undefined where there are fewer columns than rows.
 * Time grows with the square of the shorter side times the longer one.
 */
export function assign(gains: readonly (readonly number[])[]): (number | undefined)[] {
  const rows = gains.length
  const columns = gains[0]?.length ?? 0
  if (rows > columns) return transposed(assign(Array.from({ length: columns }, (_, column) => gains.map((row) => row[column] ?? 0))), rows)
  const rowPotential = new Array<number>(rows + 1).fill(0)
  const columnPotential = new Array<number>(columns + 1).fill(0)
  /** Column -> row, both from 1; 0 is nobody. */
  const holder = new Array<number>(columns + 1).fill(0)
  for (let row = 1; row <= rows; row++) {
    holder[0] = row
    const cameFrom = new Array<number>(columns + 1).fill(0)
    const slack = new Array<number>(columns + 1).fill(Number.POSITIVE_INFINITY)
    const used = new Set<number>()
    let at = 0
    while (holder[at] !== 0) {
      used.add(at)
      const here = holder[at] ?? 0
      let least = Number.POSITIVE_INFINITY
      let next = 0
      for (let column = 1; column <= columns; column++) {
        if (used.has(column)) continue
        const cost = -(gains[here - 1]?.[column - 1] ?? 0) - (rowPotential[here] ?? 0) - (columnPotential[column] ?? 0)
        if (cost < (slack[column] ?? 0)) {
          slack[column] = cost
          cameFrom[column] = at
        }
        if ((slack[column] ?? 0) < least) {
          least = slack[column] ?? 0
          next = column
        }
      }
      for (let column = 0; column <= columns; column++) {
        if (used.has(column)) {
          const held = holder[column] ?? 0
          rowPotential[held] = (rowPotential[held] ?? 0) + least
          columnPotential[column] = (columnPotential[column] ?? 0) - least
        } else slack[column] = (slack[column] ?? 0) - least
      }
      at = next
    }
    while (at !== 0) {
      const from = cameFrom[at] ?? 0
      holder[at] = holder[from] ?? 0
      at = from
    }
  }
  const chosen = new Array<number | undefined>(rows).fill(undefined)
  for (let column = 1; column <= columns; column++) if (holder[column]) chosen[(holder[column] ?? 0) - 1] = column - 1
  return chosen
}

function transposed(rowOfColumn: readonly (number | undefined)[], rows: number): (number | undefined)[] {
  const chosen = new Array<number | undefined>(rows).fill(undefined)
  rowOfColumn.forEach((row, column) => {
    if (row !== undefined) chosen[row] = column
  })
  return chosen
}

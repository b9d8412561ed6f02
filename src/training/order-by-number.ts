/**
 * Lessons by their numbers, of which `needs` gives those of each, in the order that can be taught: at each place the lowest number
 * whose needs are met. Without those that a loop holds up.
 */
export function orderByNumber(needs: readonly (readonly number[])[]): number[] {
  const neededBy = needs.map((): number[] => [])
  needs.forEach((list, lesson) => {
    for (const need of list) neededBy[need]?.push(lesson)
  })
  const open = needs.map((list) => list.length)
  const ready = open.flatMap((count, lesson) => (count === 0 ? [lesson] : []))
  const order: number[] = []
  for (let lesson = ready.shift(); lesson !== undefined; lesson = ready.shift()) {
    order.push(lesson)
    for (const next of neededBy[lesson] ?? []) {
      const left = (open[next] ?? 0) - 1
      open[next] = left
      if (left === 0) insert(next, ready)
    }
  }
  return order
}

function insert(number: number, ascending: number[]): void {
  const place = ascending.findIndex((other) => other > number)
  ascending.splice(place < 0 ? ascending.length : place, 0, number)
}

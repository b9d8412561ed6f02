import { type Beginning, extender, isNoWorse } from './extended-beginning.ts'
import { addMember, hasMember, isWithin, type NumberSet, numberSet } from './number-set.ts'
import type { Packing } from './packing.ts'
import { setTable } from './set-table.ts'

/** What a search may still try. Counted in steps and not in time, so that every computer gives the same answer. */
export interface Budget {
  steps: number
}

/** The best beginnings of a set: every other has one beside it here that is as good in each respect. */
export type Beginnings = (set: NumberSet) => readonly Beginning[]

/**
 * The best beginnings of every set that can be taught before the others in a plan of so many sessions; a set that has none
 * is not in such a plan. Undefined where the budget does not suffice.
 *
 * Fewer sessions, then fewer minutes in the last, are never worse for what follows (a dynamic programme over closed sets:
 * L. Schrage, K. R. Baker 1978, from memory). Beginnings that leave more time unused than the plan has to spare lead nowhere.
 */
export function beginningsOf(packing: Packing, sessions: number, budget: Budget): Beginnings | undefined {
  const count = packing.minutes.length
  const needs = packing.needs.map((list) => numberSet(count, list))
  const spareMinutes = sessions * packing.limitMinutes - packing.minutes.reduce((sum, minutes) => sum + minutes, 0)
  const none = numberSet(count)
  const extend = extender(packing)
  const table = setTable(none.length)
  const beginnings: Beginning[][] = []
  const taughtMinutes: number[] = []
  const keep = (set: NumberSet, minutes: number, beginning: Beginning) => {
    const number = table.add(set)
    const known = beginnings[number]
    if (known) keepBest(known, beginning)
    else {
      beginnings.push([beginning])
      taughtMinutes.push(minutes)
    }
    budget.steps -= known?.length ?? 0
  }

  keep(none, 0, { sessions: 1, load: 0, open: none })
  const [from, set] = [numberSet(count), numberSet(count)]
  // A set is reached from smaller ones only, so all its beginnings are known when its turn comes.
  for (let number = 0; number < table.size; number++) {
    from.set(table.at(number))
    const begun = beginnings[number] ?? []
    for (let lesson = 0; lesson < count; lesson++) {
      if (hasMember(from, lesson) || !isWithin(needs[lesson] ?? none, from)) continue
      set.set(from)
      addMember(set, lesson)
      const minutes = (taughtMinutes[number] ?? 0) + (packing.minutes[lesson] ?? 0)
      for (const beginning of begun) {
        budget.steps -= 1
        const next = extend(beginning, lesson)
        const unusedMinutes = (next.sessions - 1) * packing.limitMinutes - (minutes - next.load)
        if (next.sessions <= sessions && unusedMinutes <= spareMinutes) keep(set, minutes, next)
      }
    }
    if (budget.steps < 0) return undefined
  }
  return (asked) => beginnings[table.find(asked) ?? -1] ?? []
}

function keepBest(beginnings: Beginning[], next: Beginning): void {
  if (beginnings.some((other) => isNoWorse(other, next))) return
  const kept = beginnings.filter((other) => !isNoWorse(next, other))
  beginnings.splice(0, beginnings.length, ...kept, next)
}

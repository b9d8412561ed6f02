import { isDisjoint, isWithin, type NumberSet, numberSet, withMember } from './number-set.ts'
import type { Packing } from './packing.ts'

/** One way to begin with a set of lessons: its sessions, and what the last of them holds. */
export interface Beginning {
  sessions: number
  /** Minutes of the last session. */
  load: number
  /** The lessons of the last session that are to be signed off before something outside the set. */
  open: NumberSet
}

/** What a beginning becomes with one lesson more: it goes into the last session if that takes it. */
export function extender(packing: Packing): (beginning: Beginning, lesson: number) => Beginning {
  const count = packing.minutes.length
  const signedOff = packing.signedOff.map((list) => numberSet(count, list))
  const none = numberSet(count)
  return ({ sessions, load, open }, lesson) => {
    const minutes = packing.minutes[lesson] ?? 0
    const fits = load + minutes <= packing.limitMinutes && isDisjoint(signedOff[lesson] ?? none, open)
    const before = fits ? open : none
    return {
      sessions: fits ? sessions : sessions + 1,
      load: fits ? load + minutes : minutes,
      open: packing.signsOff[lesson]?.length ? withMember(before, lesson) : before,
    }
  }
}

/** Whether one is as good as the other in each respect, whatever follows: sooner, and waited for by no more. */
export function isNoWorse(one: Beginning, other: Beginning): boolean {
  const ahead = one.sessions < other.sessions || (one.sessions === other.sessions && one.load <= other.load)
  return ahead && isWithin(one.open, other.open)
}

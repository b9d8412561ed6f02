import { orderByNumber } from './order-by-number.ts'
import { minutesOf, type Packing, reversed } from './packing.ts'

/** A number of sessions that no plan can do with less of. `packing` has no loop, and no lesson is above the limit. */
export function lowerBound(packing: Packing): number {
  const { minutes } = packing
  const [before, behind] = [earliestSessions(packing), earliestSessions(reversed(packing))]
  return Math.max(
    ...[0, ...minutes].map((short) => boundWithoutNeeds(packing, short)),
    ...minutes.map((_, lesson) => (before[lesson] ?? 1) + (behind[lesson] ?? 1) - 1),
  )
}

/**
 * Sessions that it takes without regard to needs: no two lessons above half the limit share one, and of the others, down
 * to `shortMinutes`, those that find no room beside them take more (S. Martello, P. Toth 1990, from memory).
 */
function boundWithoutNeeds({ minutes, limitMinutes }: Packing, shortMinutes: number): number {
  if (2 * shortMinutes > limitMinutes) return 0
  const long = minutes.filter((length) => 2 * length > limitMinutes)
  const beside = long.filter((length) => length <= limitMinutes - shortMinutes)
  const others = minutes.filter((length) => 2 * length <= limitMinutes && length >= shortMinutes)
  const room = beside.reduce((sum, length) => sum + limitMinutes - length, 0)
  const toPlace = others.reduce((sum, length) => sum + length, 0)
  return long.length + Math.max(0, Math.ceil((toPlace - room) / limitMinutes))
}

/** The earliest session, from 1, that each lesson can stand in: for what it needs takes its minutes, and waits for signatures. */
export function earliestSessions(packing: Packing): number[] {
  const { minutes, needs, signedOff, limitMinutes } = packing
  const sessions = minutes.map(() => 1)
  const ahead = minutes.map(() => new Set<number>())
  for (const lesson of orderByNumber(needs)) {
    const own = ahead[lesson] ?? new Set()
    for (const need of needs[lesson] ?? []) {
      own.add(need)
      for (const further of ahead[need] ?? []) own.add(further)
    }
    sessions[lesson] = Math.max(
      Math.ceil((minutesOf([...own], packing) + (minutes[lesson] ?? 0)) / limitMinutes),
      ...(needs[lesson] ?? []).map((need) => sessions[need] ?? 1),
      ...(signedOff[lesson] ?? []).map((need) => (sessions[need] ?? 1) + 1),
    )
  }
  return sessions
}

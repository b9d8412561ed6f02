import type { IsolationPoint } from '../../model/machine.ts'
import type { Located } from '../../source/place.ts'
import { actionOfPoint, isolatingWords, meaningOfPosition } from '../point-positions.ts'
import type { Rule } from '../rule.ts'

export const positionDoesNotIsolate: Rule = {
  id: 'position-does-not-isolate',
  severity: 'error',
  summary: 'The safe position of an isolation point is the one in service, or lets the energy through.',
  why: 'People set the point as they are told, hang a lock on it, and work on a live machine.',
  source: '29 CFR 1910.147(d)(3) and (d)(4)(ii): the lock holds the device in a safe or off position',
  guards: 'people',

  *check({ points }, graph) {
    for (const point of points) {
      const { safe, service, device } = point
      const id = point.point.value
      const same = sameIn(point)
      const kind = device.replace('-', ' ')
      const action = actionOfPoint(point, graph)
      const means = (said: Located<string> | undefined, language: string) => said && action && meaningOfPosition(said.value, action, language)
      const note = action && {
        note: `${action === 'vent' ? 'a valve that vents or drains' : `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`} ${isolatingWords[action]}`,
      }
      if (same) {
        yield {
          message: `the safe position of point \`${id}\` is its position in service, \`${same.value}\``,
          place: same.place,
          ...note,
          help: 'write under `safe` the position that isolates, and under `service` the other one',
        }
        continue
      }
      const [live, ...others] = Object.entries(safe).flatMap(([language, said]) =>
        means(said, language) === 'lets-through' ? [{ language, said }] : [],
      )
      const [cut] = Object.entries(service).flatMap(([language, said]) => (means(said, language) === 'isolates' ? [said] : []))
      const first = live?.said ?? cut
      if (!first) continue
      yield {
        message: live
          ? `the safe position of point \`${id}\` is \`${first.value}\``
          : `the position in service of point \`${id}\` is \`${first.value}\``,
        place: first.place,
        related: [
          ...others.map(({ said, language }) => ({ label: `the same in \`${language}\``, place: said.place })),
          ...(live && cut ? [{ label: 'this is said to be the position in service', place: cut.place }] : []),
        ],
        ...note,
        help: helpFor(live !== undefined, cut !== undefined, action === 'exhaust'),
      }
    }
  },
}

/** The safe position, in the first language in which it is the position in service. */
function sameIn({ safe, service }: IsolationPoint): Located<string> | undefined {
  return Object.entries(safe).find(([language, { value }]) => service[language]?.value.trim().toLowerCase() === value.trim().toLowerCase())?.[1]
}

function helpFor(isLive: boolean, isCut: boolean, mayVent: boolean): string {
  if (isLive && isCut)
    return mayVent ? 'exchange `safe` and `service`; where it isolates by opening, write `OPEN TO VENT`' : 'exchange `safe` and `service`'
  return isLive ? 'write under `safe` the position that isolates' : 'write under `service` the position in which the machine runs'
}

import { slowestOf, waitOfSource } from '../../energy/wait-of-source.ts'
import { derivation, secondsText, storeResults } from '../energy-stores.ts'
import type { Rule } from '../rule.ts'

export const delayNoticeAgainstWait: Rule = {
  id: 'delay-notice-against-wait',
  severity: 'error',
  summary: 'The notice on an enclosure gives a shorter time than what is inside needs, or a longer one than the manual.',
  why: 'Who opens the enclosure by the shorter of the two times meets live parts.',
  source: 'IEC 60204-1, 6.2.4; NFPA 79-2024, 6.5.1',
  guards: 'people',

  *check({ energy }) {
    for (const source of energy) {
      const { delayNoticeS: notice, waitS } = source
      if (!notice) continue
      const needed = slowestOf(storeResults(source))
      const place = notice.place
      if (needed && notice.value < needed.wait.value) {
        yield {
          message: `the notice for \`${source.id.value}\` says ${notice.value} s, and it needs ${secondsText(needed.wait.value)}`,
          place,
          related: [{ label: 'computed from this', place: needed.store.place }],
          note: derivation(needed.wait),
          help: 'change the notice on the machine and its time here, or correct the store',
        }
        continue
      }
      // Too short a waiting time is reported as such.
      if (needed && waitS !== undefined && waitS < needed.wait.value) continue
      const wait = waitOfSource(source)
      if (!wait || 'notComputed' in wait) continue
      const isShort = !needed && notice.value < wait.seconds
      if (!isShort && notice.value <= wait.seconds) continue
      yield {
        message: `the notice for \`${source.id.value}\` says ${notice.value} s, and the manual ${wait.seconds} s`,
        place,
        ...(waitS === undefined ? {} : { related: [{ label: 'the time of the manual', place: source.placeOf('waitS') }] }),
        help: 'write the longer time in both places: on the notice, and under `waitS`',
      }
    }
  },
}

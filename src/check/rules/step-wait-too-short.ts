import { waitInSequence } from '../../energy/lockout-of-page.ts'
import { slowestOf } from '../../energy/wait-of-source.ts'
import type { EnergySource } from '../../model/machine.ts'
import { secondsText, storeResults } from '../energy-stores.ts'
import type { Rule } from '../rule.ts'
import { sourceSteps } from '../source-steps.ts'
import { spokenWaits } from '../spoken-waits.ts'

/** What a step waits for where the time is that of the stored energy: common practice. */
const untilHarmless: Readonly<Record<string, RegExp>> = {
  en: /discharg|capacitor|\bbus\b|stands? still|standstill|stops? turning|runs? down|before (?:you |the |any(?:one|body)? )?(?:open|touch|work|measur|reach|loosen)/iu,
  es: /descarg|condensador|\bbus\b|se pare|quede parado|antes de (?:abrir|tocar|trabajar|medir|meter|aflojar)/iu,
}
/** A time between two tries is none to become harmless. */
const repeats = /\bagain\b|\bsecond time\b|otra vez|de nuevo|segunda vez/iu

export const stepWaitTooShort: Rule = {
  id: 'step-wait-too-short',
  severity: 'error',
  summary: 'A step waits for a shorter time than the energy source needs that it is about.',
  why: 'The reader follows the step and opens what can still move, burn or shock.',
  source: '29 CFR 1910.147(d)(5); IEC 60204-1, 6.2.4',
  guards: 'people',

  *check(machine) {
    const needs = new Map(machine.energy.flatMap((source) => neededOf(source)))
    for (const { source, language, text, standsForIt, place } of sourceSteps(machine, [...needs.keys()])) {
      const needed = needs.get(source)
      if (needed === undefined || repeats.test(text) || !(standsForIt || untilHarmless[language]?.test(text))) continue
      const short = spokenWaits(text, language).find(({ seconds }) => seconds < needed)
      if (!short) continue
      yield {
        message: `the step waits ${secondsText(short.seconds)}, and energy source \`${source.id.value}\` needs ${secondsText(needed)}`,
        place: place(short.start, short.end),
        related: [{ label: 'the time comes from here', place: source.placeOf(source.waitS === undefined ? 'store' : 'waitS') }],
        help: 'write at least that time, or leave it out: the lockout says it at each wait',
      }
    }
  },
}

/** The time in seconds that is asked for: the stated one, or the computed one where it is longer, before it is rounded up. */
function neededOf(source: EnergySource): [EnergySource, number][] {
  const wait = waitInSequence(source)
  if (!wait || 'notComputed' in wait) return []
  return [[source, wait.basis === 'stated' ? wait.seconds : (slowestOf(storeResults(source))?.wait.value ?? wait.seconds)]]
}

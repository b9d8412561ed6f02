import type { Alarm } from '../../model/machine.ts'
import type { Rule } from '../rule.ts'

export const sameAlarmText: Rule = {
  id: 'same-alarm-text',
  severity: 'note',
  summary: 'Two alarms of one area have the same text.',
  why: 'On the screen only the number tells them apart.',
  source: 'house rule',

  *check({ alarms, sourceLanguage }) {
    const first = new Map<string, Alarm>()
    const numbers = new Set<string>()
    for (const alarm of alarms) {
      // A number that is there twice is reported as such.
      if (numbers.has(alarm.number.value)) continue
      numbers.add(alarm.number.value)
      const text = alarm.text[sourceLanguage]
      if (!text) continue
      const key = JSON.stringify([alarm.area?.value, text.value.toLowerCase().replace(/\s+/g, ' ')])
      const known = first.get(key)
      if (!known) first.set(key, alarm)
      else
        yield {
          message: `alarms \`${known.number.value}\` and \`${alarm.number.value}\` have the same text`,
          place: text.place,
          related: [{ label: `\`${known.number.value}\` has it here`, place: known.text[sourceLanguage]?.place ?? known.place }],
          help: 'say in the text which device or place each one is about',
        }
    }
  },
}

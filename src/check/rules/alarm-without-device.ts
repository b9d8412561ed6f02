import type { Rule } from '../rule.ts'

export const alarmWithoutDevice: Rule = {
  id: 'alarm-without-device',
  severity: 'warning',
  summary: 'An alarm that stops or holds the machine names no device and no condition.',
  why: 'The technician does not learn where to look.',
  source: 'house rule',

  *check({ alarms, sourceLanguage }) {
    for (const { number, reaction, tags, trigger } of alarms) {
      // An alarm of the program has no device; its trigger says so.
      if (reaction.value === 'message' || tags.length > 0 || trigger?.[sourceLanguage]) continue
      yield {
        message: `alarm \`${number.value}\` names no device`,
        place: number.place,
        related: [{ label: `its reaction is \`${reaction.value}\``, place: reaction.place }],
        help: 'name the devices that raise it under `tags`, or say under `trigger` what does',
      }
    }
  },
}

import type { Alarm, Device } from '../../model/machine.ts'
import type { Place } from '../../source/place.ts'
import type { Rule } from '../rule.ts'

/** Before the name of a device that is only the condition of another one: `while DISC1 is on`, `after SOL1`. */
const condition =
  /\b(?:while|when|once|if|unless|after|before|since|until|during|with|mientras|cuando|si|después de|antes de|tras|hasta|durante|con)(?: [\p{L}-]+){0,3} $/iu

export const triggerDeviceNotListed: Rule = {
  id: 'trigger-device-not-listed',
  severity: 'warning',
  summary: 'The condition of an alarm names a device that is not among the devices of the alarm.',
  why: 'The page of the device does not show the alarm, and the alarm does not lead to the device.',
  source: 'house rule',

  *check(machine, graph) {
    const alarms = Map.groupBy(machine.alarms, ({ place }) => place.file)
    const lines = new Map([...alarms].map(([file, rows]) => [file, Map.groupBy(rows, triggerLine)]))
    const told = new Set<Alarm>()
    // Data holds no elements: its devices are bare tags.
    const inData = machine.bareTags().filter(({ prose }) => prose.where === 'data')
    for (const [prose, tags] of Map.groupBy(inData, (bare) => bare.prose)) {
      const start = prose.place(0, 1)
      const alarm = lines
        .get(start.file)
        ?.get(start.line)
        ?.find(({ trigger }) => holds(trigger?.[prose.language]?.place, start))
      if (!alarm || told.has(alarm)) continue
      const named = tags.flatMap(({ mention: { tag, start: from, end } }) => {
        const device = tag === undefined ? undefined : graph.device(tag)
        return device ? [{ device, start: from, end }] : []
      })
      const listed = new Set(alarm.tags.map(({ value }) => value))
      const anyListed = named.some(({ device }) => listed.has(device.tag.value))
      const unlisted = named.filter(({ device }) => !listed.has(device.tag.value))
      const raising = unlisted.filter(({ start: from }) => !condition.test(prose.text.slice(0, from)))
      // `When PS1 opens` is no condition of another device where no other one is listed.
      const missing = raising.length > 0 || anyListed ? raising : unlisted
      const [first] = missing
      if (!first) continue
      told.add(alarm)
      yield problemOf(alarm, [...new Set(missing.map(({ device }) => device))], prose.place(first.start, first.end))
    }
  },
}

const triggerLine = ({ trigger, place }: Alarm) => Object.values(trigger ?? {})[0]?.place.line ?? place.line

const holds = (whole: Place | undefined, at: Place) =>
  whole !== undefined && at.line === whole.line && at.column >= whole.column && at.column < whole.endColumn

function problemOf({ number, tags: [listed] }: Alarm, missing: readonly Device[], place: Place) {
  const names = missing.map(({ tag }) => `\`${tag.value}\``).join(', ')
  return {
    message: `alarm \`${number.value}\` does not list ${names}, which its condition names`,
    place,
    related: [listed ? { label: 'its devices are listed here', place: listed.place } : { label: 'the alarm lists no device', place: number.place }],
    help: `add ${names} to the devices of the alarm, or correct the condition`,
  }
}

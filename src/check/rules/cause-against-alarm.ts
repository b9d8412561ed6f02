import { textsOf } from '../../model/machine.ts'
import { attributeOf } from '../../model/mdx-elements.ts'
import { attributePlace } from '../../model/placed-messages.ts'
import { listed } from '../../model/safety-message.ts'
import type { Place } from '../../source/place.ts'
import type { Rule } from '../rule.ts'

export const causeAgainstAlarm: Rule = {
  id: 'cause-against-alarm',
  severity: 'warning',
  summary: 'A cause is looked for at a device that the alarm list does not name for the alarm.',
  why: 'The page of the device does not lead to the alarm, or the reader is sent to a device that has nothing to do with it.',
  source: 'house rule',

  *check(_machine, graph) {
    for (const page of graph.pagesIn('alarms')) {
      const alarm = graph.alarm(page.frontmatter.alarm)
      // An alarm that is not in the list, and one without devices, are reported as such.
      if (!alarm || alarm.tags.length === 0) continue
      const named = new Set(alarm.tags.map(({ value }) => value))
      // A tag that is no device here is reported as such.
      for (const text of textsOf(page))
        for (const element of text.elements('Cause'))
          for (const tag of listed(attributeOf(element, 'tags')))
            if (!named.has(tag) && graph.device(tag))
              yield {
                message: `alarm \`${alarm.number.value}\` has a cause at \`${tag}\`, and does not name it`,
                place: tagPlace(tag, attributePlace({ element, text }, 'tags'), attributeOf(element, 'tags') ?? ''),
                related: [{ label: `its devices: ${[...named].join(', ')}`, place: alarm.tags[0]?.place ?? alarm.number.place }],
                help: 'add the device to the alarm list, or correct the tag',
              }
    }
  },
}

/** The place of one tag in the list of them. */
function tagPlace(tag: string, place: Place, written: string): Place {
  if (place.line !== place.endLine) return place
  const at = ` ${written} `.indexOf(` ${tag} `)
  return { ...place, column: place.column + at, endColumn: place.column + at + tag.length }
}

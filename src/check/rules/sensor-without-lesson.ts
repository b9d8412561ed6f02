import { isSensor } from '../../model/coverage.ts'
import type { Rule } from '../rule.ts'

export const sensorWithoutLesson: Rule = {
  id: 'sensor-without-lesson',
  severity: 'note',
  summary: 'No lesson tells how sensors of a technology are checked.',
  why: 'The technician in front of the sensor has nobody who shows what to measure and where.',
  source: 'house rule',

  *check({ devices, absent }, graph) {
    // A lesson that cannot be read may be the one that is looked for.
    if ([...absent].some(([name, { reason }]) => reason === 'broken' && name.startsWith('lesson:'))) return
    const without = devices.filter((device) => isSensor(device) && graph.lessonsOf(device).length === 0)
    for (const [technology, sensors] of Map.groupBy(without, (device) => device.technology?.value)) {
      // The same place in every unit, where one sensor is fitted to all of them.
      const place = (sensors.find(({ fits }) => fits.length === 0) ?? sensors[0])?.technology?.place
      if (!place) continue
      const tags = sensors.map(({ tag }) => `\`${tag.value}\``)
      yield {
        message: `no lesson fits the technology \`${technology}\``,
        place,
        note: `${tags.length === 1 ? 'one sensor has it' : `${tags.length} sensors have it`}: ${tags.slice(0, 3).join(', ')}${tags.length > 3 ? ', …' : ''}`,
        help: `write a lesson with \`technology: [${technology}]\`, or name the sensor under \`tags\` of one`,
      }
    }
  },
}

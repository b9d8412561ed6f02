import { saysSpare } from '../../model/spare.ts'
import type { Rule } from '../rule.ts'

export const spareWithDevice: Rule = {
  id: 'spare-with-device',
  severity: 'warning',
  summary: 'A row of the I/O list is marked as spare and names a device.',
  why: 'The page of the device shows a signal that may not be wired.',
  source: 'house rule',

  *check({ signals, devices, sourceLanguage }) {
    const tags = new Set(devices.map(({ tag }) => tag.value))
    for (const { tag, signal, symbol, meaning } of signals) {
      const mark = [signal, symbol, meaning?.[sourceLanguage]].find((cell) => cell && saysSpare(cell.value))
      if (!mark || !tags.has(tag.value)) continue
      yield {
        message: `the channel is marked \`${mark.value}\` and names \`${tag.value}\``,
        place: tag.place,
        related: [{ label: 'marked as spare here', place: mark.place }],
        help: 'leave the tag empty if the channel is free, or say what the signal is',
      }
    }
  },
}

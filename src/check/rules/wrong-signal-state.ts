import { conditionOf, contradicts } from '../contact-claims.ts'
import type { Rule } from '../rule.ts'
import { signalSentences } from '../signal-sentences.ts'

export const wrongSignalState: Rule = {
  id: 'wrong-signal-state',
  severity: 'warning',
  summary: 'A sentence says that a signal is on when the I/O list says it is off, or the other way round.',
  why: 'The reader takes a good signal for a fault.',
  source: 'house rule',

  *check(_machine, graph) {
    for (const { text, prose, device, signals, place } of signalSentences(graph)) {
      const [signal, other] = signals
      if (other) continue
      const meaning = signal.meaning?.[prose.language]
      const said = meaning && meaning.place.file !== prose.place(0, 0).file ? conditionOf(text) : undefined
      const meant = meaning && conditionOf(meaning.value)
      if (!said || !meant || !contradicts(said, meant)) continue
      yield {
        message: `\`${device.tag.value}\` is ${meant.on ? 'on' : 'off'} then by the I/O list`,
        place: place(said.start, said.end),
        related: [{ label: 'what its signal means', place: meaning.place }],
        help: 'check the device and correct one of them',
      }
    }
  },
}

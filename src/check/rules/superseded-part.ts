import type { Machine, Part } from '../../model/machine.ts'
import type { Located } from '../../source/place.ts'
import type { Rule } from '../rule.ts'
import { byNumber, successorsOf } from '../successors.ts'

export const supersededPart: Rule = {
  id: 'superseded-part',
  severity: 'warning',
  summary: 'A page names a part that another one has replaced, or a device has such a part that the bill says is not fitted.',
  why: 'The reader orders a part that can no longer be had.',
  source: 'house rule',

  *check(machine) {
    const { sourceLanguage } = machine
    const parts = byNumber(machine.parts)
    for (const { name, fitted } of namedParts(machine)) {
      const part = parts.get(name.value)
      // An old part that is still fitted is what the machine has: its page shows what to order.
      if (!part?.supersededBy || (fitted && part.quantity.value > 0)) continue
      const chain = successorsOf(part, parts)
      const latest = chain?.at(-1)
      if (!chain || !latest) continue
      const [old, now] = [part, latest].map(({ description }) => description[sourceLanguage]?.value ?? '')
      const differs = old !== now
      yield {
        message: `part \`${name.value}\` is replaced by \`${latest.number.value}\``,
        place: name.place,
        related: [part, ...chain].flatMap(({ number, supersededBy }) =>
          supersededBy ? [{ label: `\`${number.value}\` is replaced by \`${supersededBy.value}\``, place: supersededBy.place }] : [],
        ),
        ...(differs ? { note: `old: ${quoted(old)}; new: ${quoted(now)}` } : {}),
        help: fitted
          ? `write \`${latest.number.value}\`, or raise the quantity of \`${name.value}\` if the old part is fitted`
          : `write \`${latest.number.value}\`${differs ? ', and check that the text around it still holds' : ''}`,
      }
    }
  },
}

const quoted = (text: string | undefined) => `"${(text ?? '').replace(/\s+/g, ' ')}"`

function namedParts({ references, devices, cards }: Machine): { name: Located<string>; fitted: boolean }[] {
  const onPages = references.filter(({ kind, page }) => kind === 'part' && page)
  const fitted: (Part['number'] | undefined)[] = [...devices, ...cards].map(({ part }) => part)
  return [
    ...onPages.map(({ id, place }) => ({ name: { value: id, place }, fitted: false })),
    ...fitted.flatMap((name) => (name ? [{ name, fitted: true }] : [])),
  ]
}

import { patternOf } from '../../model/designation.ts'
import { addressFaults } from '../address-faults.ts'
import { ioPoints } from '../io-points.ts'
import type { Rule } from '../rule.ts'

export const addressGrammar: Rule = {
  id: 'address-grammar',
  severity: 'error',
  summary: 'A controller address does not have the form of an address.',
  why: 'The technician cannot find it in the controller, and it is compared with no other address.',
  source: 'IEC 61131-3, direct representation; forms such as `I0.3` are common practice',

  *check(machine) {
    const { file, placeOf } = machine
    const pattern = file.controller?.address
    if (pattern === undefined) {
      yield* addressFaults(machine)
      return
    }
    const form = patternOf(pattern)
    const place = placeOf(['controller', 'address'])
    if (form instanceof Error) {
      const note = `${form.message.replace(/^.*: /, '').toLowerCase()}; no address was checked`
      yield { message: 'the pattern of the addresses is no regular expression', place, note }
      return
    }
    const points = ioPoints(machine)
    const faults = points.filter(({ address }) => !form.test(address.value))
    const [first] = faults
    // Where no address fits, the pattern is the one cause.
    if (first && faults.length > 1 && faults.length === points.length) {
      yield {
        message: `no address has the form \`${pattern}\``,
        place,
        related: [{ label: `the first is \`${first.address.value}\``, place: first.address.place }],
        help: 'correct the pattern, or leave it out',
      }
      return
    }
    for (const { address } of faults) {
      const message = `\`${address.value}\` is no address of this controller: it does not have the form \`${pattern}\``
      yield { message, place: address.place, related: [{ label: 'the form is set here', place }] }
    }
  },
}

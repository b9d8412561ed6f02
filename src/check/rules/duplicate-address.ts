import { duplicates } from '../duplicates.ts'
import type { Rule } from '../rule.ts'

export const duplicateAddress: Rule = {
  id: 'duplicate-address',
  severity: 'error',
  summary: 'Two signals have the same controller address.',
  why: 'One of them is wrong, and a technician measures at the wrong terminal.',
  source: 'IEC 61131-3: one location, one variable',

  *check({ signals }) {
    yield* duplicates(
      signals,
      ({ address }) => address,
      sameAddress,
      (address) => `the address \`${address}\` is used twice`,
      'correct one of the addresses',
    )
  },
}

/** Letters in either case, and `%IX0.0` for `%I0.0`: X, a bit, may be left out. Source: IEC 61131-3, direct representation. */
function sameAddress(address: string): string {
  return address
    .toUpperCase()
    .replace(/\s/g, '')
    .replace(/^%([IQM])X(?=\d)/, '%$1')
}

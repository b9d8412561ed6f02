import { sameAddress } from '../../model/controller-address.ts'
import { duplicates } from '../duplicates.ts'
import { ioPoints } from '../io-points.ts'
import type { Rule } from '../rule.ts'

export const duplicateAddress: Rule = {
  id: 'duplicate-address',
  severity: 'error',
  summary: 'Two signals have the same controller address.',
  why: 'One of them is wrong, and a technician measures at the wrong terminal.',
  source: 'IEC 61131-3: one location, one variable',

  *check(machine) {
    yield* duplicates(
      ioPoints(machine),
      ({ address }) => address,
      sameAddress,
      (address) => `the address \`${address}\` is used twice`,
      'correct one of the addresses',
    )
  },
}

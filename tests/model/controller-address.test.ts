import { expect, test } from 'vitest'
import { readAddress } from '../../src/model/controller-address.ts'

// Source: IEC 61131-3, direct representation of variables.
test.each([
  ['DG-03', '%IX0.3', 'input', 1, [0, 3]],
  ['DG-04', '%QW12.105.7', 'output', 16, [12, 105, 7]],
  ['DG-05', '%M7', 'memory', 1, [7]],
] as const)('%s: %s', (_, written, area, widthBit, levels) => expect(readAddress(written)).toEqual({ form: 'iec', area, widthBit, levels }))

test.each(['%AX0.1', 'IX0.3', '%IX', '%IX0..3', '%IX0.3x'])('DG-06: %s is no address', (written) => expect(readAddress(written)).toBeUndefined())

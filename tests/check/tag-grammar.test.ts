import { expect, test } from 'vitest'
import { tagGrammar } from '../../src/check/rules/tag-grammar.ts'
import { runRules } from '../../src/check/run.ts'
import type { Machine } from '../../src/model/machine.ts'
import { loadSound } from '../sound-machine.ts'

const [machine] = loadSound().machines
const messages = (changed: Partial<Machine>) => (machine ? [...runRules({ ...machine, ...changed }, [tagGrammar])].map(({ message }) => message) : [])

test('of one device it is the tag that is wrong, of several the system', () => {
  const file = { ...machine?.file, designation: 'iec81346' } as Machine['file']
  const devices = machine?.devices ?? []
  expect(messages({ file, devices: devices.slice(0, 1) })).toEqual(['`PS-101` is no tag: it does not begin with `=`, `+` or `-`'])
  expect(messages({ file, devices: devices.slice(0, 2) })).toEqual(['no tag follows IEC 81346'])
  expect(messages({ file, devices: [] })).toEqual([])
})

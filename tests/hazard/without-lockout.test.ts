import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Answer, conditionsOf, failingConditions, type LockoutClaim } from '../../src/hazard/without-lockout.ts'

type OneLock = Extract<LockoutClaim, { because: 'one-lock' }>
type MinorServicing = Extract<LockoutClaim, { because: 'minor-servicing' }>

const oneLock: OneLock = {
  because: 'one-lock',
  noStoredEnergy: 'yes',
  oneSource: 'yes',
  lockDeenergises: 'yes',
  lockedDuringWork: 'yes',
  oneLock: 'yes',
  lockInOwnControl: 'yes',
  noHazardToOthers: 'yes',
  noEarlierAccident: 'yes',
}
const minor: MinorServicing = {
  because: 'minor-servicing',
  duringProduction: 'yes',
  routine: 'yes',
  repetitive: 'yes',
  integral: 'yes',
  otherProtection: 'yes',
}

// Sources: 29 CFR 1910.147(c)(4)(i), note (eight conditions), and (a)(2)(ii), note (minor servicing).
test.each<[string, LockoutClaim, string[]]>([
  ['all eight hold: no written procedure is required', oneLock, []],
  ['seven hold, and there was an accident', { ...oneLock, noEarlierAccident: 'no' }, ['noEarlierAccident']],
  ['two sources, the rest holds', { ...oneLock, oneSource: 'no' }, ['oneSource']],
  ['minor servicing with other protection', minor, []],
  ['minor servicing without other protection', { ...minor, otherProtection: 'no' }, ['otherProtection']],
  ['several, in the order of the note', { ...minor, integral: 'no', routine: 'no' }, ['routine', 'integral']],
])('%s', (_, claim, failing) => {
  expect(failingConditions(claim).map(({ condition }) => condition)).toEqual(failing)
})

test('a claim stands exactly where every answer is yes', () => {
  const claims = [oneLock, minor].map((whole) => {
    const keys = conditionsOf(whole).map(({ condition }) => condition)
    return fc
      .array(fc.constantFrom<Answer>('yes', 'no'), { minLength: keys.length, maxLength: keys.length })
      .map((answers) => ({ claim: { ...whole, ...Object.fromEntries(keys.map((key, index) => [key, answers[index]])) } as LockoutClaim, answers }))
  })
  fc.assert(
    fc.property(fc.oneof(...claims), ({ claim, answers }) => {
      expect(failingConditions(claim)).toHaveLength(answers.filter((answer) => answer === 'no').length)
    }),
  )
})

import { describe, expect, test } from 'vitest'
import { findingsOf, inShort, kindsOf } from './read.ts'

const step = (text: string) => inShort(findingsOf('step', text))

// Source: ASD-STE100 Issue 9, rule 5.4.
describe('a condition', () => {
  test.each([
    ['Open the guard when the motor stops.', ['late-condition: when the motor stops']],
    ['When the motor stops, open the guard.', []],
    ['When the motor stops open the guard.', ['missing-comma: stops open → stops, open']],
    ['If lamp H3 is red press RESET.', ['missing-comma: red press → red, press']],
    ['If the pump leaks oil the machine stops.', ['no-command: If the pump leaks oil the machine stops.']],
    ['Call the supervisor if you may not lock out.', ['late-condition: if you may not lock out']],
    ['Check if the lamp is on.', []],
    ['Make sure that the lamp lights when you press S2.', []],
    ['Change the seal if necessary.', []],
    ['Remove the key (if one is fitted) from the shaft.', []],
    ['Open the guard only when the motor has stopped.', []],
    ['Do not open the guard when the belt moves.', []],
    ['Move the lift once down and up.', []],
    ['Wait until the lamp goes out.', []],
    ['When operators open the guard, stop the belt.', []],
    ['When oil and water mix the seal swells.', ['no-command: When oil and water mix the seal swells.']],
    ['When people open the door the machine stops.', ['no-command: When people open the door the machine stops.']],
    ['Before you let the motor drive the belt, shut the door.', []],
    ['If it still climbs, turn Q1 off.', []],
    ['Look at HV921 if the gauge shows nothing.', ['late-condition: if the gauge shows nothing']],
    ['If the gauge shows nothing look at HV921.', ['missing-comma: nothing look → nothing, look']],
    ['If you let it drive the belt, stop.', []],
    ['Write down when the pump starts.', []],
    ['Ask the operator if the lamp was on.', []],
    ['Test the brake when the lift is empty.', ['late-condition: when the lift is empty']],
    ['Look what happens when the coil gets voltage.', []],
  ])('%s', (text, found) => {
    expect(step(text)).toEqual(found)
  })

  test('is no matter in a paragraph', () => {
    expect(kindsOf('paragraph', 'Take the lid off when the crate is empty.')).toEqual([])
  })
})

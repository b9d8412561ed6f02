import { describe, expect, test } from 'vitest'
import { noCommand } from '../../../src/reading/plain/no-command.ts'
import { passive } from '../../../src/reading/plain/passive.ts'
import { actives, noOrders, orders, passives, states } from './cases.ts'
import { findingsOf, inShort, kindsOf, viewsOf } from './read.ts'

const passivesOf = (text: string) => viewsOf('step', text).flatMap((view) => passive(view) ?? [])
const ordersNothing = (text: string) => noCommand(viewsOf('step', text)) !== undefined
const step = (text: string) => inShort(findingsOf('step', text))

// Source: ASD-STE100 Issue 9, rules 3.6 and 3.3.
describe('a passive in a step', () => {
  test('is found: at least 29 of 30', () => {
    expect(passives.filter((text) => passivesOf(text).length > 0).length).toBeGreaterThanOrEqual(29)
  })

  test('is not seen in the active: at most 1 of 30', () => {
    expect(actives.filter((text) => passivesOf(text).length > 0).length).toBeLessThanOrEqual(1)
  })

  test('is never sure where the participle can tell a state', () => {
    expect(states.flatMap(passivesOf).filter(({ sure }) => sure)).toEqual([])
  })

  test.each([
    ['Ask why the emergency stop was pressed.', []],
    ['Write down the parts that were changed.', []],
    ['Measure while the shaft is turned by hand.', []],
    ['Look at the drain. It must be closed.', []],
    ['Wait until the oil is cool enough to be handled.', []],
    ['Make sure all bolts are removed.', []],
    ['Never hold the box while being driven by the belts.', []],
    ['Lift the cover. It is held by two clips.', ['passive: is held']],
    ['Stop the pump. The filter has to be replaced.', ['passive: be replaced']],
    ['Wait until the alarm is reset by the operator.', ['passive: is reset']],
  ])('%s', (text, found) => {
    expect(step(text)).toEqual(found)
  })

  test('is left alone in a description', () => {
    expect(kindsOf('paragraph', 'The valve is opened by the operator.')).toEqual([])
  })
})

// Source: ASD-STE100 Issue 9, rule 5.3.
describe('a step', () => {
  test('that orders is known: at least 38 of 40', () => {
    expect(orders.filter((text) => !ordersNothing(text)).length).toBeGreaterThanOrEqual(38)
  })

  test('that orders nothing is found: at least 18 of 20', () => {
    expect(noOrders.filter(ordersNothing).length).toBeGreaterThanOrEqual(18)
  })

  test.each([
    'Degauss the coil.',
    'Reseal the joint.',
    'Back out the screw.',
    'Have the boiler inspected.',
    'Check packing gland adjustment.',
    'Scroll down to "Settings".',
    'DO NOT scratch the seal face.',
    'Using a wrench, unscrew the bolts.',
    'Carefully and slowly loosen the plug.',
    'Should the scratches still be there, change the sleeve.',
    'With more than 0.5 mm of play change both bushings.',
    'At a flow meter look for air in the pipe.',
    'At a flow meter look for air in the pipe, and for dirt.',
    'The tunnel is hot: let it cool.',
    'The belt has a smooth side, thread the belt with this side down.',
    'Is the lamp on?',
    'Be careful not to scratch the seal face.',
    'The pump stands still. Open the valve.',
    'LO-1',
  ])('orders: %s', (text) => {
    expect(kindsOf('step', text)).not.toContain('no-command')
  })

  test.each([
    'A qualified electrical person measures the voltage.',
    'Wire colours are in the table.',
    'Belt tension is set with the screw.',
    'Overload relay F2 has tripped.',
    'Level switches stop the pump.',
    'Bearing inspection.',
  ])('orders nothing: %s', (text) => {
    expect(kindsOf('step', text)).toEqual(['no-command'])
  })

  test('is found once where a passive is why it orders nothing', () => {
    expect(step('The filter must be replaced every 500 hours.')).toEqual(['passive: be replaced'])
    expect(step('The tank is filled with oil.')).toEqual(['no-command: The tank is filled with oil.'])
  })

  test('is not what a paragraph has to be', () => {
    expect(kindsOf('paragraph', 'The valve opens.')).toEqual([])
  })
})

// Source: ASD-STE100 Issue 9, rule 5.2.
describe('one instruction in a sentence', () => {
  test.each([
    ['Close valve V12 and open valve V13.', 'open valve V13'],
    ['Stop the pump, close the valve and drain the tank.', 'close the valve and drain the tank'],
    ['Select automatic, press PB051, and watch two stacks.', 'press PB051, and watch two stacks'],
    ['Set the pressure to 6 bar and press Enter twice.', 'press Enter twice'],
    ['Press PB051 and look along the infeed.', 'look along the infeed'],
    ['Unlock the doors and open them.', 'open them'],
    ['Mark the position, then remove the sensor.', 'remove the sensor'],
    ['If the lamp is red, press S2, then take the cover off.', 'take the cover off'],
    ['When the motor stops, open the guard and take the box out.', 'take the box out'],
  ])('%s', (text, words) => {
    expect(step(text)).toEqual([`several-instructions: ${words}`])
  })

  test.each([
    'Press S2 and hold it for 3 s.',
    'Hold the cover and remove the bolts.',
    'Push the knob in and turn it to the left.',
    'Press the lever by hand and let it go.',
    'Press PB052 and wait until the machine stands still.',
    'Clean and dry the part.',
    'Clean, dry and grease the part.',
    'Make sure all nuts, snap rings, and other parts are off.',
    'Fire the boiler in short intervals, otherwise it gets too hot.',
    'Read, understand, and follow the instructions.',
    'Turn both keys at the same time and open the door.',
    'Look for people inside, open doors and pressed buttons.',
    'Check the pump and drain valve.',
    'Find terminal X2 and wire W14.',
    'Move the pusher out and back once.',
    'Use the crank to turn and lift the table.',
    'Set the time, date and language.',
    'Look at the motor and drive of the belt.',
    'With the jack in the lowered, level position, take the cover off.',
    'Close valve V12. Open valve V13.',
    'Stop the pump and do not open the guard.',
  ])('none too many: %s', (text) => {
    expect(step(text)).toEqual([])
  })

  test('is no matter in a paragraph', () => {
    expect(kindsOf('paragraph', 'Close valve V12 and open valve V13.')).toEqual([])
  })
})

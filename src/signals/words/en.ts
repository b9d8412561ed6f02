import { enCauses } from './en-causes.ts'
import { enStuck } from './en-stuck.ts'
import type { SignalWords } from './words.ts'

export const en: SignalWords = {
  faults: {
    healthy: { diagnosis: 'The circuit is healthy.', nextStep: 'Record the readings.' },
    'signal-open': {
      diagnosis: 'The signal wire is open between sensor and card.',
      nextStep: 'Check the plug, the terminal and the core of the signal wire.',
    },
    'l-plus-open': {
      diagnosis: 'L+ does not reach the sensor.',
      nextStep: 'Check the fuse, the L+ distribution and the wire from there to the sensor.',
    },
    'l-minus-open': {
      diagnosis: 'The 0 V pole does not reach the sensor.',
      nextStep: 'Check the 0 V terminal and the wire from there to the sensor.',
    },
    'signal-shorted-to-l-plus': {
      diagnosis: 'The signal wire touches L+.',
      nextStep: 'With the supply off, take the signal core off at both ends and test its insulation.',
    },
    'signal-shorted-to-l-minus': {
      diagnosis: 'The signal wire touches 0 V or earth.',
      nextStep: 'With the supply off, take the signal core off at both ends and test its insulation.',
    },
    'supply-reversed': {
      diagnosis: 'The supply of the sensor is reversed.',
      nextStep: 'With the supply off, swap brown and blue. A sensor without protection may be lost.',
    },
    'device-is-npn': { diagnosis: 'The sensor is NPN and the input is sinking.', nextStep: 'Compare the part number with the bill of materials.' },
    'device-is-pnp': { diagnosis: 'The sensor is PNP and the input is sourcing.', nextStep: 'Compare the part number with the bill of materials.' },
    'contact-inverted': {
      diagnosis: 'The sensor switches the other way round: NC for NO, or dark for light operate.',
      nextStep: 'Compare the part number and the setting with the I/O list.',
    },
    'never-senses': {
      diagnosis: 'The sensor does not see the target.',
      nextStep: 'Compare gap, material and size of the target with the limits. Clean the face or the lens.',
    },
    'always-senses': {
      diagnosis: 'The sensor sees a target that is not there.',
      nextStep: 'Take the target beyond the off limit. Look for metal in the background, build-up and a wrong mount.',
    },
    'low-supply': {
      diagnosis: 'The supply is low, or the line drops too much.',
      nextStep: 'Measure the supply at its source and at the sensor, and compare.',
    },
    'card-common-open': { diagnosis: 'The common of the card is not connected.', nextStep: 'Check the common terminal of the card.' },
    'card-channel-failed': {
      diagnosis: 'The channel of the card has failed.',
      nextStep: 'Have the wire moved to a spare channel, and the address changed with it.',
    },
    'tag-stays-off': {
      diagnosis: 'The card sees the signal and the tag does not: wrong address, wrong mapping, or a bit that is forced to 0.',
      nextStep: 'Compare the address with the I/O list and look for forced bits.',
    },
    'tag-stays-on': {
      diagnosis: 'The card sees the signal go and the tag does not: wrong address, wrong mapping, or a bit that is forced to 1.',
      nextStep: 'Compare the address with the I/O list and look for forced bits.',
    },
    leakage: {
      diagnosis: 'A leakage or a coupled voltage holds the input between off and on.',
      nextStep: 'Compare the leakage of the sensor with the input. A bleeder, or a Type 2 or 3 input, may be needed.',
    },
    'cores-swapped': { diagnosis: 'The signal arrives on another channel.', nextStep: 'Compare the cores at the terminal strip with the drawing.' },
    'drop-too-high': {
      diagnosis: 'The sensor drops too much for this input.',
      nextStep: 'Compare supply less drop with the on limit. A Type 2 or 3 input may be needed.',
    },
    'load-too-small': {
      diagnosis: 'The input draws less than the least load of the sensor.',
      nextStep: 'Compare the input current with the minimum load. A bleeder may be needed.',
    },
    'contact-stays-open': {
      diagnosis: 'The contact stays open.',
      nextStep: 'Look whether the actuator reaches its operating point, then test the contact with the supply off.',
    },
    'contact-stays-closed': {
      diagnosis: 'The contact stays closed.',
      nextStep: 'Look whether the actuator comes back, then test the contact with the supply off.',
    },
    'poor-contact': {
      diagnosis: 'The contact drops voltage while it is closed.',
      nextStep: 'Repeat the reading under load. Replace the contact if it stays.',
    },
    'line-shorted': { diagnosis: 'The line to the sensor is shorted.', nextStep: 'Take the line off at the amplifier and measure its resistance.' },
    'no-state': {
      diagnosis: 'The current lies between the two states.',
      nextStep: 'Compare the gap with the limit, and type and line resistance with the amplifier.',
    },
    'amplifier-inverted': {
      diagnosis: 'The amplifier is set the other way round.',
      nextStep: 'Compare the direction setting of the amplifier with the I/O list.',
    },
    'amplifier-without-supply': { diagnosis: 'The amplifier has no supply.', nextStep: 'Check the supply terminals and the fuse of the amplifier.' },
  },
  ...enCauses,
  ...enStuck,
  stretches: {
    target: 'target and mounting',
    supply: 'supply',
    device: 'device',
    'signal-wire': 'signal wire',
    terminal: 'terminal',
    card: 'card',
    address: 'address and program',
  },
  points: {
    'input-at-card': 'input terminal to 0 V of the card',
    'supply-at-sensor': 'brown to blue at the sensor',
    'output-at-sensor': 'black to blue at the sensor',
    'brown-to-common': 'brown at the sensor to 0 V of the cabinet',
    'input-to-cabinet': 'input terminal to 0 V of the cabinet',
    'across-sensor': 'across the sensor',
    'feed-at-sensor': 'feed at the sensor to the opposite pole',
    'loop-current': 'current in the loop',
  },
  indicators: {
    tag: 'tag in the controller',
    'card-led': 'LED of the channel on the card',
    'output-led': 'output LED of the sensor',
    'other-led': 'LED of another channel that changes with the target',
    'fault-led': 'line fault LED of the amplifier',
  },
  lights: { lit: 'on', dark: 'off', unsteady: 'flickers or glows' },
  states: { target: 'with target', none: 'without target' },
  seen: {
    actuated: 'actuated',
    'at rest': 'at rest',
    'guard open': 'guard open',
    'guard closed': 'guard closed',
    'field free': 'field free',
    'field interrupted': 'field interrupted',
  },
  levels: {
    driven: 'on: the supply, less the drop of the sensor',
    live: 'the switched pole, no drop',
    released: 'off: leakage only',
    return: 'no signal',
    'low-side': 'no signal, or the drop of the sensor',
    between: 'between off and on',
    weak: 'weak: less than it should be',
    swings: 'unsteady',
    'full-supply': 'the supply',
    'low-supply': 'less than the supply',
    'sagging-supply': 'less than the supply, unsteady',
    'reversed-supply': 'the supply, reversed',
    nothing: 'nothing',
    drop: 'the drop of the sensor',
    'high-drop': 'more than the sensor may drop here',
    rest: 'the supply',
    'contact-drop': 'more than 0.5 V',
    'high-impedance': 'high impedance',
    'low-impedance': 'low impedance',
    'namur-between': 'between the two states',
    'line-break': 'line break',
    'line-short': 'short circuit',
  },
  refusals: {
    'material-without-factor': 'Not computed: no correction factor is on record for this material. Take it from the data sheet, or measure.',
    'target-smaller-than-standard':
      'Not computed: the target is smaller than the standard target. Only the curve of the data sheet says how far it is seen.',
    'no-assured-distance': 'Not computed: the rule of the assured distance does not hold for this kind of sensor. Use the range of the data sheet.',
    'retro-reflective-gain': 'Not computed: the excess gain of a retro-reflective sensor follows no simple law. Use the curve of the data sheet.',
    'diffuse-gain': 'Not computed: the excess gain of a diffuse sensor follows no simple law. Use the curve of the data sheet.',
    'alternating-current-coil': 'Not computed: the resistance of an a.c. coil says little about its current.',
    'coil-with-electronics': 'Not computed: a coil with electronics shows no resistance that means anything.',
    'outside-class-range': 'Not computed: the tolerance class does not reach to this temperature.',
    'safety-approval': 'Not judged: a reading shows that a signal arrives. It does not validate a safety function.',
    'pnp-on-sourcing-input': 'A PNP sensor cannot drive a sourcing input: the input reads 0 in every state.',
    'npn-on-sinking-input': 'An NPN sensor cannot drive a sinking input: the input reads 0 in every state.',
    'not-this-pairing': 'This sensor does not go with this card.',
  },
  unread: {
    empty: 'Type a value with its unit.',
    'no-number': 'This is no number.',
    'not-one-number': 'Type the number without spaces or marks between thousands.',
    'no-unit': 'Type the unit too: the same number means another thing in another unit.',
    'unknown-unit': 'This unit is not known. Mind capital and small letters.',
    'wrong-dimension': 'This unit measures something else.',
  },
}

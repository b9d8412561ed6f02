import type { SignalWords } from './words.ts'

/** Faults of signals that are no switched inputs. */
export const enCauses: Pick<SignalWords, 'causes' | 'healthy'> = {
  causes: {
    'loop-open': {
      diagnosis: 'The loop is open, has no supply, or its poles are swapped.',
      nextStep: 'Check the fuse, the supply and the polarity at the transmitter.',
    },
    'transmitter-reports-low': {
      diagnosis: 'The transmitter reports a failure with a low current.',
      nextStep: 'Read the state of the transmitter, and check its sensor.',
    },
    'loop-starved': {
      diagnosis: 'The loop cannot drive the current: too much resistance or too little supply.',
      nextStep: 'Compare loop resistance and supply with the loop budget.',
    },
    'transmitter-reports-high': {
      diagnosis: 'The transmitter reports a failure with a high current.',
      nextStep: 'Read the state of the transmitter, and check its sensor.',
    },
    'transmitter-shorted': {
      diagnosis: 'The loop is shorted across the transmitter.',
      nextStep: 'With the supply off, take the loop off at the transmitter and test its insulation.',
    },
    'loop-fed-twice': {
      diagnosis: 'The loop is fed twice: by the card and by the transmitter.',
      nextStep: 'Compare card and transmitter with the drawing: only one of them may feed the loop.',
    },
    'element-open': {
      diagnosis: 'The element or one of its leads is open.',
      nextStep: 'Measure the element at its head and at the card, and compare.',
    },
    'element-shorted': { diagnosis: 'The element or its leads are shorted.', nextStep: 'Measure the element at its head with the leads off.' },
    'thermocouple-shorted': {
      diagnosis: 'The cable is shorted: the card shows the temperature of the short circuit.',
      nextStep: 'Take the thermocouple off at its head and look whether the card reports a break.',
    },
    'thermocouple-reversed': {
      diagnosis: 'The leads of the thermocouple are swapped.',
      nextStep: 'Compare the colours of the leads with the standard that the drawing names.',
    },
    'thermocouple-type-wrong': {
      diagnosis: 'The card is set to another type than the thermocouple is.',
      nextStep: 'Compare the type of the thermocouple with the setting of the card.',
    },
    'voltage-open': {
      diagnosis: 'The signal wire is open, or the transmitter has no supply.',
      nextStep: 'Measure at the plug of the transmitter: its supply first, then its signal.',
    },
    'voltage-reversed': { diagnosis: 'The poles of the signal are swapped.', nextStep: 'Compare the cores at the terminal with the drawing.' },
    'voltage-touches-supply': {
      diagnosis: 'The signal wire touches L+.',
      nextStep: 'With the supply off, take the signal core off at both ends and test its insulation.',
    },
    'voltage-common-open': {
      diagnosis: 'The 0 V of the transmitter does not reach the card.',
      nextStep: 'Check the 0 V wire at the transmitter and at the card.',
    },
    'voltage-loaded': {
      diagnosis: 'Something loads the signal: a second input, a wet plug, or a card for current.',
      nextStep: 'Take the wire off at the card and measure again. Compare the card with the drawing.',
    },
    'voltage-offset': {
      diagnosis: 'The 0 V of transmitter and card differ, or the range is set wrong.',
      nextStep: 'Measure between both 0 V terminals. Compare the range with the I/O list.',
    },
    'thermocouple-open': {
      diagnosis: 'The thermocouple or its cable is open, or a joint is poor.',
      nextStep: 'Measure at the head and at the terminal, and compare.',
    },
    'thermocouple-of-other-type': {
      diagnosis: 'The thermocouple is of another type.',
      nextStep: 'Compare its part number and its colours with the bill of materials.',
    },
    'thermocouple-cable-wrong': {
      diagnosis: 'A piece of the cable is of another metal, copper for instance.',
      nextStep: 'Follow the cable from the head to the card. Every piece must be of the type of the thermocouple.',
    },
    'command-missing': {
      diagnosis: 'The program does not command the output.',
      nextStep: 'Find the condition that the step waits for, and look for a bit that is forced to 0.',
    },
    'output-dark': {
      diagnosis: 'The output of the card stays off, or the address is wrong.',
      nextStep:
        'Compare the address with the I/O list. Look at the suppressor of the load before the wire goes to a spare output: a coil without one kills outputs.',
    },
    'card-without-load-supply': {
      diagnosis: 'The outputs of the card have no supply.',
      nextStep: 'Check the fuse and the supply terminals of this group of outputs.',
    },
    'output-sinks': {
      diagnosis: 'The card switches 0 V, and the load is wired for a card that switches L+.',
      nextStep: 'Compare the part number of the card with the bill of materials.',
    },
    'output-stays-on': {
      diagnosis: 'The output stays on without a command.',
      nextStep: 'Look for a bit that is forced to 1, then for L+ on the wire. If the wire is dead when it is off the card, the output has failed.',
    },
    'output-overloaded': {
      diagnosis: 'The load draws more than the output may carry.',
      nextStep: 'Count the loads on this output. Compare the part of the load with the bill of materials.',
    },
    'load-shorted': {
      diagnosis: 'The load or its cable is shorted. The output protects itself.',
      nextStep: 'With the supply off, measure the load alone, then the cable alone.',
    },
    'suppressor-conducts': {
      diagnosis: 'The suppressor conducts: the poles of the load are swapped, or the suppressor has failed.',
      nextStep: 'With the supply off, compare plus and minus at the load with the drawing. Then measure without the suppressor.',
    },
    'load-wire-open': { diagnosis: 'The wire is open between card and load.', nextStep: 'Check the wire, the plug and the 0 V at the load.' },
    'line-drops': {
      diagnosis: 'The line drops too much on its way to the load.',
      nextStep: 'Look for a loose terminal. Measure at each terminal while the load is on.',
    },
    'load-open': { diagnosis: 'The load itself is open.', nextStep: 'With the supply off and the plug off, measure the load. Replace it.' },
    'turns-shorted': {
      diagnosis: 'The load has too little resistance: shorted turns, or another coil.',
      nextStep: 'Compare the plate of the coil with the bill of materials, then replace it.',
    },
    'load-of-higher-resistance': {
      diagnosis: 'The load has too much resistance: a coil for another voltage or of less power.',
      nextStep: 'Compare the plate of the coil with the bill of materials.',
    },
    'output-supply-low': { diagnosis: 'The supply is low.', nextStep: 'Measure the supply at its source, then take branches off one by one.' },
    'winding-open': {
      diagnosis: 'A winding, or its wire, is open.',
      nextStep: 'Measure again in the terminal box of the motor, with the wires off.',
    },
    'windings-differ': {
      diagnosis: 'The windings differ: shorted turns or a bad joint.',
      nextStep: 'Look at links and joints in the terminal box. Then test the insulation, and replace the motor if it stays.',
    },
    'phase-missing': {
      diagnosis: 'One phase carries no current.',
      nextStep: 'Switch off at once. Check the breaker, the contactor and the wire of this phase.',
    },
    'phases-differ': {
      diagnosis: 'The phases carry different currents.',
      nextStep: 'Measure the three line voltages. If they are equal, measure the windings.',
    },
    'motor-overloaded': {
      diagnosis: 'The motor draws more than its plate says.',
      nextStep: 'Lock out and look whether what it drives runs free. Then look at the supply voltage.',
    },
    'encoder-without-supply': {
      diagnosis: 'The encoder has too little supply.',
      nextStep: 'Check the fuse, the plug and the supply at the terminals.',
    },
    'encoder-stands': { diagnosis: 'The shaft of the encoder stands still.', nextStep: 'Lock out. Look for a loose coupling or a broken shaft.' },
    'channel-a-open': {
      diagnosis: 'Channel A does not arrive.',
      nextStep: 'Check the plug and the core of channel A. With the core off at the card, tell wire from encoder.',
    },
    'channel-b-open': {
      diagnosis: 'Channel B does not arrive.',
      nextStep: 'Check the plug and the core of channel B. With the core off at the card, tell wire from encoder.',
    },
    'channels-swapped': {
      diagnosis: 'Channels A and B are swapped: it counts backwards.',
      nextStep: 'Compare the cores at the terminal with the drawing.',
    },
    'edges-set-wrong': {
      diagnosis: 'The card counts one or two edges of each pulse, and not four.',
      nextStep: 'Compare the setting of the card with the I/O list.',
    },
    'pulses-lost': {
      diagnosis: 'The card loses pulses: input filter, poor level, or too high a speed.',
      nextStep: 'Compare the filter of the input with the pulses. Measure the level of both channels.',
    },
    'pulses-added': {
      diagnosis: 'Pulses are added: a motor cable or an open screen.',
      nextStep: 'Check the screen at the cabinet. Look where the cable runs beside a motor cable.',
    },
    'encoder-of-other-resolution': {
      diagnosis: 'The encoder has another number of pulses.',
      nextStep: 'Compare its part number with the bill of materials.',
    },
    'flow-none': { diagnosis: 'Nothing flows.', nextStep: 'Look at the valves, the pump and the strainer.' },
    'flow-without-supply': {
      diagnosis: 'The flow meter has too little supply.',
      nextStep: 'Check the fuse, the plug and the supply at the terminals.',
    },
    'flow-sensor-dead': {
      diagnosis: 'Liquid flows, and the flow meter gives no pulses.',
      nextStep: 'Lock out. Look for a stuck rotor. If it turns free, exchange the flow meter.',
    },
    'flow-wire-open': {
      diagnosis: 'The pulses do not arrive at the card.',
      nextStep: 'Check the plug and the signal core from the flow meter to the terminal.',
    },
    'flow-not-counted': {
      diagnosis: 'The card gets the pulses and the controller shows no flow.',
      nextStep: 'Compare the channel and its address with the I/O list. Look whether the counter is enabled.',
    },
    'flow-factor-wrong': {
      diagnosis: 'The controller has another number of pulses for a litre.',
      nextStep: 'Compare the factor in the controller with the plate of the flow meter.',
    },
    'flow-pulses-lost': {
      diagnosis: 'The card loses pulses: its filter is slow, or the level is poor.',
      nextStep: 'Compare the filter of the input with the pulses. Measure the level at the terminal.',
    },
    'flow-pulses-added': {
      diagnosis: 'Pulses are added: a motor cable or an open screen.',
      nextStep: 'Check the screen at the cabinet. Look where the cable runs beside a motor cable.',
    },
    'flow-does-not-stop': { diagnosis: 'Liquid still flows when it should stand.', nextStep: 'Look for a valve that leaks or does not close.' },
    'flow-otherwise': {
      diagnosis: 'The flow meter may be right: another flow than in service.',
      nextStep: 'Measure the flow with a vessel and a watch, and enter it.',
    },
    'flow-of-other-meter': {
      diagnosis: 'The flow meter has another number of pulses for a litre, or is worn.',
      nextStep: 'Compare its part number with the bill of materials.',
    },
    'turns-at-other-speed': {
      diagnosis: 'The encoder is right: the shaft turns at another speed.',
      nextStep: 'Measure the speed of the shaft, and enter it.',
    },
  },
  healthy: {
    output: { diagnosis: 'The electrical side is in order.', nextStep: 'If nothing moves or lights, look at the valve, the air or the load itself.' },
    encoder: { diagnosis: 'The encoder is in order.', nextStep: 'Compare the position on the screen with a rule.' },
    flow: { diagnosis: 'The flow meter is in order.', nextStep: 'Compare the litres of a batch with a scale or a vessel.' },
  },
}

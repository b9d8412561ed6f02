import type { SignalWords } from './words.ts'

export const enStuck: Pick<SignalWords, 'healthySafety' | 'stuck'> = {
  healthySafety: {
    diagnosis: 'What was read is as expected. It approves no safety function.',
    nextStep: 'Record the readings. A competent person validates the safety function.',
  },
  stuck: {
    actuated: {
      diagnosis: 'The device stays actuated.',
      nextStep: 'Compare the set point with the process, and look for what holds it: dirt, wear, a blocked port.',
    },
    'at rest': {
      diagnosis: 'The device stays at rest.',
      nextStep: 'Compare the set point with the process, and look for what keeps the process from it: a closed valve, a blocked port, a worn lever.',
    },
    'guard open': {
      diagnosis: 'The guard is reported open, and it is closed.',
      nextStep: 'Check that it closes fully, and look at its actuator: place, gap, damage. Never bridge it.',
    },
    'guard closed': {
      diagnosis: 'The guard is reported closed, and it is open.',
      nextStep: 'Take the machine out of use and lock it out. A competent person finds the fault.',
    },
    'field free': {
      diagnosis: 'The field is reported free, and something is in it.',
      nextStep: 'Take the machine out of use and lock it out. A competent person finds the fault.',
    },
    'field interrupted': {
      diagnosis: 'The field is reported interrupted, and it is free.',
      nextStep: 'Clean both covers and check their alignment. Look for what reaches into the field. Never bridge it.',
    },
    pulse: {
      diagnosis: 'The flow meter stays as in a pulse.',
      nextStep: 'Let the liquid flow. If nothing changes, lock out and look for a stuck rotor.',
    },
    'between pulses': {
      diagnosis: 'The flow meter gives no pulse.',
      nextStep: 'Let the liquid flow. If nothing changes, lock out and look for a stuck rotor.',
    },
  },
}

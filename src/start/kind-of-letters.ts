/**
 * What the letters of a tag stand for, to begin with: writers correct it in the device list.
 * Common practice of letter codes in the manner of NFPA 79, from memory.
 */
const kinds: Readonly<Record<string, string>> = {
  CB: 'circuit breaker',
  CON: 'contactor',
  CR: 'control relay',
  DISC: 'disconnect switch',
  ES: 'emergency stop button',
  FS: 'flow switch',
  FLS: 'float switch',
  FU: 'fuse',
  HTR: 'heater',
  LS: 'limit switch',
  LT: 'pilot light',
  MTR: 'motor',
  PB: 'push button',
  PEC: 'photoelectric sensor',
  PRS: 'proximity switch',
  PS: 'pressure switch',
  PT: 'pressure transmitter',
  PWS: 'power supply',
  SOL: 'solenoid valve',
  SS: 'selector switch',
  TE: 'temperature sensor',
  TS: 'temperature switch',
}

/** Undefined where the letters have no usual meaning. */
export function kindOfLetters(tag: string): string | undefined {
  return kinds[/\p{Lu}+/u.exec(tag)?.[0] ?? '']
}

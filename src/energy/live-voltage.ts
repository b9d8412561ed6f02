/** Whether live parts at a voltage in volt must be guarded. Source: 29 CFR 1910.303(g)(2)(i). */
export function mustBeGuarded(voltageV: number): boolean {
  return voltageV >= 50
}

/** Seconds in which a power capacitor must fall to 50 V. Source: NEC 460.6 (up to 1000 V) and 460.28 (above). */
export function capacitorBankLimitS(ratedVoltageV: number): number {
  return ratedVoltageV <= 1000 ? 60 : 300
}

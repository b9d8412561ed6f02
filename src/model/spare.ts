const spare =
  /^(?:[a-z]{1,3}_)?x?(?:spare|reserved?|reserva|unused|not[ _]used|free|libre)(?:[ _-]*(?:[ad][io]|input|output|channel|point))?[ _.-]*\d*$/i

/** Whether a text of an I/O list marks a channel that is kept free: `Spare`, `SPARE_12`, `I_Reserve3`, `-`. Common practice. */
export function saysSpare(text: string): boolean {
  return /^[-\u2013\u2014_]+$/.test(text) || spare.test(text)
}

/** Whether a text is a number as we take it: digits, a decimal point, a minus sign, and nothing that parts thousands. */
export function isDecimal(text: string): boolean {
  return /^-?\d+(\.\d+)?$/.test(text)
}

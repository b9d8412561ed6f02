/** Whether a text is a number as we take it: digits, a decimal point, a minus sign, and nothing that parts thousands. */
export function isDecimal(text: string): boolean {
  return /^-?\d+(\.\d+)?$/.test(text)
}

export type DecimalSign = 'point' | 'comma'

/** A number as a list writes it, or what is wrong with it. The sign that is not the decimal sign may part thousands: it is refused. */
export function readNumber(text: string, sign: DecimalSign): number | { problem: string; help?: string } {
  if (sign === 'comma' && /^-?[\d.,]*\.[\d.,]*$/.test(text))
    return {
      problem: `has a point: \`${text}\``,
      help: 'machine.yaml says `decimal: comma`: write the number with a decimal comma and no other separator',
    }
  const point = sign === 'comma' ? text.replace(',', '.') : text
  if (isDecimal(point)) return Number(point)
  const all = 'or say `decimal: comma` for the file in machine.yaml where all its numbers are written so'
  if (/^-?\d{1,3},\d{3}$/.test(text))
    return {
      problem: `has a comma that may part thousands: \`${text}\``,
      help: `write the number with a decimal point and no other separator, ${all}`,
    }
  if (/^-?\d+,\d+$/.test(text)) return { problem: `has a decimal comma: \`${text}\``, help: `write \`${text.replace(',', '.')}\`, ${all}` }
  return { problem: `takes a number, and holds \`${text}\`` }
}

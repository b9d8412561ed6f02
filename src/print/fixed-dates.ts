/** Sets the two dates of a PDF to the start of a day (`2026-09-14`), so that equal content gives equal bytes. The length stays. */
export function fixDates(pdf: Uint8Array, date: string): Uint8Array {
  const text = Buffer.from(pdf).toString('latin1')
  const day = date.replaceAll('-', '')
  const fixed = text.replace(/\/(CreationDate|ModDate) ?\(D:\d{14}([^)]*)\)/g, (whole) =>
    whole.replace(/D:\d{14}[^)]*/, (stamp) => `D:${day}000000+00'00'`.slice(0, stamp.length).padEnd(stamp.length)),
  )
  return new Uint8Array(Buffer.from(fixed, 'latin1'))
}

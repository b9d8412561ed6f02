import { highestBitOf, locationKey, readAddress, spanOf } from '../../model/controller-address.ts'
import type { Rule } from '../rule.ts'

export const addressNotInIoList: Rule = {
  id: 'address-not-in-io-list',
  severity: 'warning',
  summary: 'The controller has a variable at an input or output that the I/O list does not have.',
  why: 'The program uses a signal that the manual says nothing of.',
  source: 'house rule',

  *check(machine) {
    const { ioList, symbols } = machine
    if (!ioList || !symbols) return
    const known = machine.file.controller?.wordNumbers
    const bitsOf = bitReader(known ? [known] : ['bytes', 'words'], highestBitOf(machine))
    const listed = new Set(ioList.map(({ symbol }) => symbol?.value.toUpperCase()))
    const locations = new Set(ioList.map(({ address }) => locationKey(address.value)))
    const bits = new Set(ioList.flatMap(({ address }) => bitsOf(address.value)))
    for (const { name, address } of symbols) {
      const read = address && readAddress(address.value)
      if (!read || read.area === 'memory' || read.levels.length === 0) continue
      // The same name at another address is reported as such.
      if (listed.has(name.value.toUpperCase())) continue
      if (locations.has(locationKey(address.value)) || bitsOf(address.value).some((bit) => bits.has(bit))) continue
      yield {
        message: `no signal has the address \`${address.value}\` of the variable \`${name.value}\``,
        place: address.place,
        help: 'add the signal to the I/O list, or take the variable out of the program',
      }
    }
  },
}

/** Tells the bits that an address takes, in every way of counting that may hold; none for an address of another form. */
function bitReader(counts: readonly ('bytes' | 'words')[], highestBit: number): (address: string) => string[] {
  return (address) => {
    const read = readAddress(address)
    return counts.flatMap((count) => {
      const span = read && spanOf(read, count, highestBit)
      return span ? Array.from({ length: span.end - span.start }, (_, index) => `${count} ${read.area} ${span.start + index}`) : []
    })
  }
}

import { bitOf, type ControllerAddress, highestBitOf, readAddress } from '../model/controller-address.ts'
import type { Machine } from '../model/machine.ts'
import type { Problem } from '../source/finding.ts'
import type { Located } from '../source/place.ts'
import { ioPoints } from './io-points.ts'

const formNames = { iec: 'IEC 61131-3', letters: 'letters with byte and bit' } as const

/** What is wrong with the addresses of a machine that sets no pattern. Forms that we do not know are left alone. */
export function* addressFaults(machine: Machine): Iterable<Problem> {
  const points = ioPoints(machine).map(({ address }) => ({ address, read: readAddress(address.value) }))
  const usual = usualForm(points)
  const highestBit = highestBitOf(machine)
  for (const { address, read } of points) {
    const limit = read?.form === 'letters' ? (machine.file.controller?.highestBit ?? 7) : highestBit
    if (!read) yield* misspelt(address, usual?.form)
    else if (usual && read.form !== usual.form) yield* oddOneOut(address, usual)
    else yield* bitTooHigh(address, read, limit, machine.file.controller?.highestBit !== undefined)
  }
}

interface Usual {
  form: ControllerAddress['form']
  first: Located<string>
}

/** The form that at least five addresses have for each one in the other form; undefined where both are in use. */
function usualForm(points: readonly { address: Located<string>; read: ControllerAddress | undefined }[]): Usual | undefined {
  const byForm = Map.groupBy(points, ({ read }) => read?.form)
  const [iec, letters] = [byForm.get('iec') ?? [], byForm.get('letters') ?? []]
  const [more, fewer] = iec.length >= letters.length ? [iec, letters] : [letters, iec]
  const [first] = more
  return first?.read && more.length >= 5 * fewer.length ? { form: first.read.form, first: first.address } : undefined
}

function* misspelt(address: Located<string>, usual: ControllerAddress['form'] | undefined): Iterable<Problem> {
  const meant = corrected(address.value, usual)
  const help = meant === undefined ? 'write it as the controller shows it' : `write \`${meant}\``
  if (address.value.startsWith('%')) {
    const [fitting] = /^%(?:[IQM](?:[XBWDL]?(?:\d+(?:\.\d+)*\.?)?)?)?/i.exec(address.value) ?? ['']
    const found = address.value[fitting.length]
    const reason = found === undefined ? 'something is missing at its end' : found === ' ' ? 'it holds a space' : `\`${found}\` cannot stand there`
    const place = { ...address.place, column: Math.min(address.place.column + fitting.length, address.place.endColumn) }
    yield { message: `\`${address.value}\` is no controller address: ${reason}`, place, note: 'a `%` begins an address of IEC 61131-3', help }
  } else if (meant !== undefined) {
    yield { message: `\`${address.value}\` is no controller address`, place: address.place, help }
  }
}

/** The address of the usual form that differs by a comma, a space, a letter O or a lost `%`. */
function corrected(written: string, usual: ControllerAddress['form'] | undefined): string | undefined {
  const text = written
    .replace(/\s/g, '')
    .replaceAll(',', '.')
    .replace(/(?<=[\d.]|[IEQAMXBWDL])O/gi, '0')
  return [text, `%${text}`].find((it) => it !== written && usual !== undefined && readAddress(it)?.form === usual)
}

function* oddOneOut(address: Located<string>, { form, first }: Usual): Iterable<Problem> {
  yield {
    message: `\`${address.value}\` has another form than the other addresses`,
    place: address.place,
    related: [{ label: `the usual form, ${formNames[form]}`, place: first.place }],
    help: 'write it as the controller shows it',
  }
}

function* bitTooHigh(address: Located<string>, read: ControllerAddress, limit: number, stated: boolean): Iterable<Problem> {
  const bit = bitOf(read)
  if (bit === undefined || bit <= limit) return
  const column = address.place.endColumn - String(bit).length
  yield {
    message: `\`${address.value}\`: there is no bit ${bit}, the highest is ${limit}`,
    place: address.value.endsWith(String(bit)) ? { ...address.place, column } : address.place,
    note: stated
      ? 'machine.yaml says so under `controller`'
      : read.form === 'letters'
        ? 'the number before the point counts bytes'
        : 'no more than one in 16 addresses has a bit above 7',
    help: stated ? 'correct the address' : 'correct the address, or set `highestBit` under `controller` in machine.yaml',
  }
}

import { once, remembered } from '../../source/once.ts'
import { type Named, otherNames } from './known-names.ts'
import { numberReader, type ReadNumbers } from './number-reader.ts'
import { type ReadTags, tagReader } from './tag-reader.ts'

export interface WordReader {
  /** None where the device list could not be read. */
  readTags: ReadTags
  /** A kind whose list could not be read is left out. */
  readNumbers: ReadNumbers
}

/** Reads words for all units of a folder: a text that no option changes is cut and searched once, whatever the number of units. */
export function wordReader(names: Named): WordReader {
  const tags = once(() => (names.unread.has('tag') ? () => [] : tagReader(names)))
  const numbers = once(() =>
    numberReader(
      {
        drawing: numbersOf(names, 'drawing', names.drawings),
        part: numbersOf(names, 'part', names.parts),
        alarm: numbersOf(names, 'alarm', names.alarms),
      },
      new Set([...otherNames(names), ...names.devices.map(({ tag }) => tag.value)]),
    ),
  )
  return {
    readTags: remembered((text: string) => tags()(text)),
    readNumbers: remembered((text: string) => numbers()(text)),
  }
}

function numbersOf({ unread, absent }: Named, kind: 'drawing' | 'part' | 'alarm', rows: readonly { number: { value: string } }[]): Set<string> {
  if (unread.has(kind)) return new Set()
  const gone = [...absent.keys()].flatMap((name) => (name.startsWith(`${kind}:`) ? [name.slice(kind.length + 1)] : []))
  return new Set([...rows.map(({ number }) => number.value), ...gone])
}

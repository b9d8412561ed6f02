import type { Machine } from '../model/machine.ts'
import type { Words } from '../model/words.ts'
import type { Sink } from './load-rules.ts'
import type { Memory } from './memory.ts'

/** What devices and parts are called, by language: the same object as long as all of them are called the same. */
export function describedIn(rows: readonly { description: Words }[], memory: Memory, sink: Sink): Machine['described'] {
  const said = rows.flatMap(({ description }) => Object.entries(description).map(([language, { value }]) => ({ language, value })))
  const from = said.flatMap(({ language, value }) => [language, value])
  return memory('described', from, sink, () => {
    const byLanguage = Map.groupBy(said, ({ language }) => language)
    return Object.fromEntries([...byLanguage].map(([language, all]) => [language, all.map(({ value }) => value)]))
  })
}

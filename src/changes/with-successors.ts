import type { Change } from './change.ts'
import type { MachineRecords } from './records.ts'

/** What to order where a part was replaced. */
export function withSuccessors(it: Change, old: MachineRecords, now: MachineRecords): Change {
  if (it.kind !== 'part-replaced' && it.kind !== 'superseded') return it
  const table = it.thing === 'drawing' ? 'drawings' : 'parts'
  const successor = new Map([...old.tables[table], ...now.tables[table]].map(({ values }) => [values.number ?? '', values.supersededBy]))
  const replaced = it.details.find(({ field }) => field === 'part')
  const starts = replaced ? [replaced.was, replaced.is] : [it.is ?? '']
  const chains = starts.map((number) => chainFrom(number, successor)).filter((chain) => chain.length > 1)
  // The chain from the old part often runs through the new one.
  const told = chains.filter((chain) => !chains.some((other) => other !== chain && other.includes(chain[0] ?? '')))
  return { ...it, notes: [...it.notes, ...told.map((chain) => `the list replaces ${chain.map((number) => `\`${number}\``).join(' by ')}`)] }
}

function chainFrom(number: string, successor: ReadonlyMap<string, string | undefined>): string[] {
  const chain = [number]
  for (let next = successor.get(number); next !== undefined && !chain.includes(next); next = successor.get(next)) chain.push(next)
  return chain
}

import { compare } from '../source/place.ts'
import { assign } from './assign.ts'
import { type Candidate, components, type Pair } from './components.ts'
import { likenessOf } from './likeness.ts'
import { closeness, type Marked, marked, scorePair, settledTexts, type Traits } from './score.ts'

/** Up to this many pairs of one name, link or text are all compared; of more, each row with its neighbours in order. */
const largestBlock = 4096
const neighbours = 16
/** Up to this many rows a side, ties are settled by the best sum; more are taken in order. */
const largestTie = 64

/**
 * Finds what became of each row: the best pair first, among those that share a name, a link or a text, down to a
 * threshold; where several are equally good, the choice with the most facts around that agree. The order of the rows
 * does not matter, and the pairs are the same when old and new are exchanged.
 */
export function matchBestPairs(old: readonly Traits[], now: readonly Traits[]): Pair[] {
  const [left, right] = [inOrder(old), inOrder(now)]
  const turned = compare(left.keys.join('\n'), right.keys.join('\n')) > 0
  const pairs = turned ? matchOrdered(right, left).map((pair) => ({ old: pair.now, now: pair.old })) : matchOrdered(left, right)
  return pairs.map((pair) => ({ old: left.positions[pair.old] ?? 0, now: right.positions[pair.now] ?? 0 })).sort((a, b) => a.old - b.old)
}

interface Ordered {
  rows: Marked[]
  positions: number[]
  /** All that is known of a row, as one text. */
  keys: string[]
}

function inOrder(rows: readonly Traits[]): Ordered {
  const keyed = rows.map((row, position) => ({ row, position, key: JSON.stringify([row.id, row.text, row.links, row.kin, row.around]) }))
  keyed.sort((a, b) => compare(a.key, b.key))
  return { rows: keyed.map(({ row }) => marked(row)), positions: keyed.map(({ position }) => position), keys: keyed.map(({ key }) => key) }
}

function matchOrdered(left: Ordered, right: Ordered): Pair[] {
  const [old, now] = [left.rows, right.rows]
  const pairs: Pair[] = []
  const takenOld = new Set<number>()
  const takenNow = new Set<number>()
  const take = (pair: Pair) => {
    pairs.push({ old: pair.old, now: pair.now })
    takenOld.add(pair.old)
    takenNow.add(pair.now)
  }
  for (const pair of sameRows(left.keys, right.keys)) take(pair)
  const candidates = candidatesOf(old, now, takenOld, takenNow)
  for (let start = 0; start < candidates.length; ) {
    let end = start
    while (candidates[end]?.score === candidates[start]?.score) end++
    const level = candidates.slice(start, end).filter((it) => !takenOld.has(it.old) && !takenNow.has(it.now))
    for (const tie of components(level)) for (const pair of settle(tie, old, now)) take(pair)
    start = end
  }
  return pairs
}

/** Rows that are in both lists as they stand. Both lists are in order. */
function sameRows(old: readonly string[], now: readonly string[]): Pair[] {
  const pairs: Pair[] = []
  for (let i = 0, j = 0; i < old.length && j < now.length; ) {
    const order = compare(old[i] ?? '', now[j] ?? '')
    if (order === 0) pairs.push({ old: i, now: j })
    if (order <= 0) i++
    if (order >= 0) j++
  }
  return pairs
}

/** Every pair above the threshold of rows that are not taken, the best first. */
function candidatesOf(old: readonly Marked[], now: readonly Marked[], takenOld: ReadonlySet<number>, takenNow: ReadonlySet<number>): Candidate[] {
  const likeness = likenessOf()
  const settled = settledTexts(old, now)
  const [oldNames, nowNames] = [new Set(old.map(({ id }) => id)), new Set(now.map(({ id }) => id))]
  const found = new Map<number, Candidate>()
  const seen = new Set<number>()
  const consider = (i: number, j: number) => {
    const [a, b] = [old[i], now[j]]
    const key = i * now.length + j
    if (!a || !b || seen.has(key)) return
    seen.add(key)
    const score = scorePair(a, b, likeness, settled, !nowNames.has(a.id) && !oldNames.has(b.id))
    if (score !== undefined) found.set(key, { old: i, now: j, score })
  }
  const [before, after] = [blocksOf(old, takenOld), blocksOf(now, takenNow)]
  for (const [block, rows] of before) {
    const others = after.get(block) ?? []
    if (rows.length * others.length <= largestBlock) for (const i of rows) for (const j of others) consider(i, j)
    else
      rows.forEach((i, at) => {
        const middle = Math.round((at * others.length) / rows.length)
        for (const j of others.slice(Math.max(0, middle - neighbours), middle + neighbours)) consider(i, j)
      })
  }
  return [...found.values()].sort((a, b) => b.score - a.score || a.old - b.old || a.now - b.now)
}

/** What a pair must share to come near the threshold -> the rows that have it and are not taken. */
function blocksOf(rows: readonly Marked[], taken: ReadonlySet<number>): Map<string, number[]> {
  const blocks = new Map<string, number[]>()
  rows.forEach(({ spelling, plain, links, product }, index) => {
    if (taken.has(index)) return
    const names = [`id ${spelling}`, ...links.map((link) => `link ${link}`), ...(product === undefined ? [] : [`product ${product}`])]
    for (const name of plain === '' ? names : [...names, `text ${plain}`]) {
      const block = blocks.get(name)
      if (!block) blocks.set(name, [index])
      else if (block.at(-1) !== index) block.push(index)
    }
  })
  return blocks
}

/** As many pairs as there can be among equally good ones, with as many facts around that agree as there can be. */
function settle(tie: readonly Candidate[], old: readonly Traits[], now: readonly Traits[]): Pair[] {
  if (tie.length === 1) return [...tie]
  const rows = [...new Set(tie.map((it) => it.old))].sort((a, b) => a - b)
  const columns = [...new Set(tie.map((it) => it.now))].sort((a, b) => a - b)
  const [rowAt, columnAt] = [new Map(rows.map((row, at) => [row, at])), new Map(columns.map((column, at) => [column, at]))]
  if (rows.length > largestTie || columns.length > largestTie) return inTurn(tie)
  const gains = rows.map(() => columns.map(() => 0))
  const order = rows.length * columns.length + 1
  for (const candidate of tie) {
    const [i = 0, j = 0] = [rowAt.get(candidate.old), columnAt.get(candidate.now)]
    const [a, b] = [old[candidate.old], now[candidate.now]]
    const row = gains[i]
    // First the number of pairs, then the facts around, then the order of the names.
    if (a && b && row) row[j] = 1e9 + closeness(a, b) * 1e5 - Math.abs(i - j) / order
  }
  return assign(gains).flatMap((j, i) => (j === undefined || gains[i]?.[j] === 0 ? [] : [{ old: rows[i] ?? 0, now: columns[j] ?? 0 }]))
}

function inTurn(tie: readonly Candidate[]): Pair[] {
  const [takenOld, takenNow] = [new Set<number>(), new Set<number>()]
  return tie.filter(({ old, now }) => {
    if (takenOld.has(old) || takenNow.has(now)) return false
    takenOld.add(old)
    takenNow.add(now)
    return true
  })
}

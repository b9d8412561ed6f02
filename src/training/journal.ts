import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import { canonicalJson, type Json } from './canonical-json.ts'
import { type RecordProblem, readRecord } from './read-record.ts'
import type { TrainingRecord } from './record.ts'

/** A link of the chain: `hash` is the SHA-256, in hex, of the canonical JSON of the other three. */
export interface Entry {
  /** From 0. */
  readonly seq: number
  /** Hash of the entry before, 64 zeros for the first. */
  readonly prev: string
  readonly body: TrainingRecord
  readonly hash: string
}

/** What is wrong at which entry, counted from 0. The first that is wrong stands for what follows from it. */
export type JournalProblem = { readonly entry: number } & (
  | { readonly wrong: 'unreadable' | 'shape' | 'content' | 'previous' | 'cut-off' | 'diverges' }
  | { readonly wrong: 'sequence'; readonly found: number }
  | { readonly wrong: 'record'; readonly problem: RecordProblem }
)

/** `prev` of the first entry. */
export const noEntry = '0'.repeat(64)

const hashOf = (seq: number, prev: string, body: TrainingRecord) => bytesToHex(sha256(utf8ToBytes(canonicalJson(json({ seq, prev, body })))))

/** The entry that a record becomes behind the last one. RangeError for what is no record. */
export function entryAfter(last: Pick<Entry, 'seq' | 'hash'> | undefined, body: TrainingRecord): Entry {
  const read = readRecord(body)
  if ('problem' in read) throw new RangeError(`no record: ${read.problem.path} ${read.problem.wrong}`)
  const [seq, prev] = last ? [last.seq + 1, last.hash] : [0, noEntry]
  return { seq, prev, body, hash: hashOf(seq, prev, body) }
}

/** A value as the entry behind the last one, or what is wrong with it. */
export function entryOf(value: unknown, last: Pick<Entry, 'seq' | 'hash'> | undefined): { entry: Entry } | { problem: JournalProblem } {
  const entry = last ? last.seq + 1 : 0
  if (!isEntry(value)) return { problem: { entry, wrong: 'shape' } }
  const { seq, prev, hash, body } = value
  if (seq !== entry) return { problem: { entry, wrong: 'sequence', found: seq } }
  if (hash !== hashIfAny(value)) return { problem: { entry, wrong: 'content' } }
  if (prev !== (last?.hash ?? noEntry)) return { problem: { entry, wrong: 'previous' } }
  const read = readRecord(body)
  return 'problem' in read ? { problem: { entry, wrong: 'record', problem: read.problem } } : { entry: { seq, prev, body: read.record, hash } }
}

/** Undefined for what no JSON can be made of. */
function hashIfAny({ seq, prev, body }: Entry): string | undefined {
  try {
    return hashOf(seq, prev, body)
  } catch {
    return undefined
  }
}

/** Checks what is said to be a whole journal. */
export function verifyJournal(values: readonly unknown[]): { entries: Entry[] } | { problem: JournalProblem } {
  const entries: Entry[] = []
  for (const value of values) {
    const read = entryOf(value, entries[entries.length - 1])
    if ('problem' in read) return read
    entries.push(read.entry)
  }
  return { entries }
}

function isEntry(value: unknown): value is Entry {
  if (typeof value !== 'object' || value === null || Object.keys(value).sort().join() !== 'body,hash,prev,seq') return false
  const { seq, prev, hash, body } = value as Record<string, unknown>
  return Number.isSafeInteger(seq) && typeof prev === 'string' && typeof hash === 'string' && typeof body === 'object' && body !== null
}

/** Interfaces have no index signature; what is in them is JSON all the same. */
export const json = (value: object): Json => value as Json

import type { DataRow, Partly } from './records.ts'

/** One list in two revisions, and which row became which. */
export interface MatchedRows {
  old: readonly DataRow[]
  now: readonly DataRow[]
  nowOf: ReadonlyMap<DataRow, DataRow>
  oldOf: ReadonlyMap<DataRow, DataRow>
  /** Name -> its row; the first of several. */
  oldById: ReadonlyMap<string, DataRow>
  nowById: ReadonlyMap<string, DataRow>
}

/** What can be said for sure of a list of which a part could not be read. */
export interface Sureness {
  /** Whether both rows were read whole, and neither name may stand in what is lost. */
  ofPair(was: DataRow, is: DataRow): boolean
  /** Whether a row without a partner has none in what could not be read either. */
  ofLone: Readonly<{ old: boolean; now: boolean }>
  /** Names of one revision of which it is not sure that the other does not have them, or under which name. */
  unsure: Readonly<{ old: readonly string[]; now: readonly string[] }>
}

export function surenessOf(idOf: (row: DataRow) => string, matched: MatchedRows, partly: Partly): Sureness {
  const { old, now, nowOf, oldOf, oldById, nowById } = matched
  const isLost = {
    old: (is: DataRow) => partly.old && !oldById.has(idOf(is)),
    now: (was: DataRow) => partly.now && !nowById.has(idOf(was)),
  }
  const ofPair = (was: DataRow, is: DataRow) => !was.unread && !is.unread && !isLost.now(was) && !isLost.old(is)
  // A row that was read in part and has no partner may be any of those that have none.
  const ofLone = {
    old: !partly.now && !now.some((row) => row.unread && !oldOf.has(row)),
    now: !partly.old && !old.some((row) => row.unread && !nowOf.has(row)),
  }
  const names = (rows: readonly DataRow[], others: ReadonlyMap<string, DataRow>, isSure: (row: DataRow) => boolean) =>
    rows.filter((row) => !row.unread && !others.has(idOf(row)) && !isSure(row)).map(idOf)
  return {
    ofPair,
    ofLone,
    unsure: {
      old: names(old, nowById, (was) => partnerIsSure(was, nowOf.get(was), ofPair, ofLone.old)),
      now: names(now, oldById, (is) => partnerIsSure(is, oldOf.get(is), (own, other) => ofPair(other, own), ofLone.now)),
    },
  }
}

function partnerIsSure(row: DataRow, partner: DataRow | undefined, ofPair: Sureness['ofPair'], ofLone: boolean): boolean {
  return partner ? ofPair(row, partner) : ofLone
}

import { type Band, within } from '../verdict.ts'
import { type Cause, type CauseId, named } from './cause.ts'

export type FieldValues<F extends string> = Readonly<Partial<Record<F, number>>>

/** What a fault makes each field read, in the unit of the field; one that is absent may read anything. */
export interface FieldRow<F extends string> {
  id: CauseId | 'healthy'
  /** How often it is met, against the other rows. Common practice; 10 for a healthy circuit. */
  weight: number
  reads: Readonly<Partial<Record<F, Band>>>
}

export interface FieldFindings<F extends string> {
  /** Whether the healthy row comes first. */
  healthy: boolean
  /** Whether nothing speaks against the first row. */
  fits: boolean
  /** The likeliest first, each once; without the healthy row. */
  causes: readonly Cause[]
  /** The field that tells the first row from most of the others; absent where none does. */
  next?: F
}

/** A row that foretells a reading comes before one that allows any: as if one reading in five fell into its band by chance. */
const chance = 1 / 5

/** The rows that nothing that was read speaks against, or where there are none, those that least speaks against. */
export function fieldFindings<F extends string>(rows: readonly FieldRow<F>[], values: FieldValues<F>): FieldFindings<F> | undefined {
  const read = (Object.entries(values) as [F, number][]).filter(([, value]) => Number.isFinite(value))
  if (read.length === 0) return undefined
  const judged = rows.map((row) => {
    const verdicts = read.map(([field, value]) => {
      const band = row.reads[field]
      return band && within(value, band)
    })
    return {
      row,
      against: verdicts.filter((it) => it === false).length,
      likelihood: row.weight * chance ** verdicts.filter((it) => it === undefined).length,
    }
  })
  const least = Math.min(...judged.map(({ against }) => against))
  const fitting = judged
    .filter(({ against }) => against === least)
    .sort((a, b) => b.likelihood - a.likelihood)
    .map(({ row }) => row)
  const next = tellingField(fitting, new Set(read.map(([field]) => field)))
  return {
    healthy: fitting[0]?.id === 'healthy',
    fits: least === 0,
    causes: named(...new Set(fitting.flatMap(({ id }) => (id === 'healthy' ? [] : [id])))),
    ...(next ? { next } : {}),
  }
}

function tellingField<F extends string>([first, ...others]: readonly FieldRow<F>[], read: ReadonlySet<F>): F | undefined {
  const fields = (Object.keys(first?.reads ?? {}) as F[]).filter((field) => !read.has(field))
  const told = (field: F) => others.filter(({ id, reads }) => id !== first?.id && areApart(first?.reads[field], reads[field])).length
  const best = fields.reduce<F | undefined>((most, field) => (told(field) > (most ? told(most) : 0) ? field : most), undefined)
  return best
}

const areApart = (a: Band | undefined, b: Band | undefined) =>
  a !== undefined && b !== undefined && ((a.low ?? -Infinity) > (b.high ?? Infinity) || (b.low ?? -Infinity) > (a.high ?? Infinity))

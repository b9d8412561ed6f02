import type { FormatSetting } from './machine.ts'
import type { Turning } from './schema/tables.ts'

/** What is known of an adjuster, from any row of its setting: it stays the same, whatever the format. */
export interface Adjuster {
  low: number | undefined
  high: number | undefined
  /** In the unit of the value. */
  perTurn: number | undefined
  raises: Turning | undefined
}

/** A setting as a format wants it, and what has to be done about it. */
export interface SettingStep {
  row: FormatSetting
  /** Value under the format that is on now; undefined where that format does not have the setting. */
  from: number | undefined
  /** Change of the value, in its unit: 0 where nothing is to be done, undefined without `from`. */
  by: number | undefined
  /** Turns of the adjuster, without a sign; undefined where its pitch is not known. */
  turns: number | undefined
  turn: Turning | undefined
}

export function adjusterOf(formats: readonly FormatSetting[], setting: string): Adjuster {
  const rows = formats.filter((row) => row.setting.value === setting)
  const [low, high, perTurn] = (['low', 'high', 'perTurn'] as const).map((key) => rows.find((row) => row[key])?.[key]?.value)
  return { low, high, perTurn, raises: rows.find(({ raises }) => raises)?.raises?.value }
}

/** The products that the machine can be set up for, in the order of the list. */
export function formatsOf({ formats }: { formats: readonly FormatSetting[] }): string[] {
  return [...new Set(formats.map(({ format }) => format.value))]
}

/** Every setting of a format, in the order of the list, beside the format that is on now. Values in another unit are not subtracted. */
export function settingsFor(formats: readonly FormatSetting[], to: string, from?: string): SettingStep[] {
  return formats
    .filter(({ format }) => format.value === to)
    .map((row): SettingStep => {
      const before = formats.find(({ format, setting }) => format.value === from && setting.value === row.setting.value)
      if (!before || before.unit.value !== row.unit.value) return { row, from: undefined, by: undefined, turns: undefined, turn: undefined }
      const by = exactly(row.value.value - before.value.value, row.value.value, before.value.value)
      const { perTurn, raises } = adjusterOf(formats, row.setting.value)
      const turns = by === 0 || perTurn === undefined || perTurn <= 0 ? undefined : Math.abs(by) / perTurn
      const turn = turns === undefined || raises === undefined ? undefined : by > 0 ? raises : opposite[raises]
      return { row, from: before.value.value, by, turns, turn }
    })
}

/** Settings of the format that is on now and that the next one does not have. */
export function settingsGone(formats: readonly FormatSetting[], to: string, from: string): FormatSetting[] {
  const kept = new Set(formats.filter(({ format }) => format.value === to).map(({ setting }) => setting.value))
  return formats.filter(({ format, setting }) => format.value === from && !kept.has(setting.value))
}

const opposite: Readonly<Record<Turning, Turning>> = { clockwise: 'counter-clockwise', 'counter-clockwise': 'clockwise' }

/** A difference without the dust of binary fractions: 0.3 − 0.1 is 0.2. */
function exactly(difference: number, ...terms: readonly number[]): number {
  const decimals = Math.max(...terms.map((term) => (String(term).split('.')[1] ?? '').length))
  return Number(difference.toFixed(Math.min(decimals, 15)))
}

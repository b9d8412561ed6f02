import type { ReadData } from '../model/lost-data.ts'
import type { Machine } from '../model/machine.ts'
import { compare } from '../source/place.ts'
import { checkoutRows } from './checkout-row.ts'
import { energyRow, hazardRow, rowOf } from './data-row.ts'
import { otherRows } from './other-rows.ts'
import { type MachineRecords, type RecordTable, recordTables } from './records.ts'

/**
 * The data of the units of a machine: each row that is fitted to one of them, once. `read`: what the folder held.
 * `serial`: it is about this unit alone.
 */
export function recordsOf(machines: readonly [Machine, ...Machine[]], read?: ReadData, serial?: string): MachineRecords {
  const [{ file, sourceLanguage: source }] = machines
  const others = otherRows(machines, read, source)
  const rows = <T extends Exclude<RecordTable, 'energy' | 'hazards' | 'checkout'>>(table: T) => [
    ...[...new Set(machines.flatMap((machine): readonly object[] => machine[table]))].map((row) => rowOf(table, row, source)),
    ...others.partly(table),
  ]
  const deviceFits = new Map(machines.flatMap(({ devices }) => devices.map(({ tag, fits }) => [tag.value, fits] as const)))
  const signals = [...new Set(machines.flatMap((machine) => machine.signals))].map((signal) =>
    // A signal is fitted as its device is; only what its own row says is data of the signal.
    rowOf('signals', signal.fits === deviceFits.get(signal.tag.value) ? { ...signal, fits: [] } : signal, source),
  )
  return {
    revision: {
      id: file.id,
      model: file.model,
      document: file.document,
      revision: file.revision,
      date: file.date,
      serials: serial === undefined ? file.units.map((unit) => unit.serial) : [serial],
      ...(serial === undefined ? {} : { fitted: machines[0].unit.fitted.toSorted(compare) }),
    },
    tables: {
      devices: rows('devices'),
      signals: [...signals, ...others.partly('signals')],
      cards: rows('cards'),
      parts: rows('parts'),
      drawings: rows('drawings'),
      alarms: rows('alarms'),
      formats: rows('formats'),
      hazards: [...[...new Set(machines.flatMap(({ hazards }) => hazards ?? []))].map((it) => hazardRow(it, source)), ...others.partly('hazards')],
      energy: [...[...new Set(machines.flatMap(({ energy }) => energy))].map((it) => energyRow(it, source)), ...others.partly('energy')],
      checkout: checkoutRows(machines[0].checkout),
    },
    unlisted: recordTables.filter((table) => !file.data[table] && !(table === 'signals' && file.data.symbols)),
    leftOut: others.leftOut,
    columns: columnsOf(read, source),
    lost: (read?.lost ?? []).flatMap(({ table, extent, place }) => (extent === 'row' || table === 'symbols' ? [] : [{ table, extent, place }])),
  }
}

/** The source language has its words under the name of the column alone. */
function columnsOf(read: ReadData | undefined, sourceLanguage: string): MachineRecords['columns'] {
  const own = (name: string) => (name.endsWith(`.${sourceLanguage}`) ? name.slice(0, -sourceLanguage.length - 1) : name)
  return Object.fromEntries(recordTables.flatMap((table) => (read?.columns[table] ? [[table, read.columns[table].map(own)]] : [])))
}

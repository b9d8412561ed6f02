import type { Change } from '../../src/changes/change.ts'
import { compareRecords } from '../../src/changes/compare-records.ts'
import type { DataRow, MachineRecords, RecordTable } from '../../src/changes/records.ts'

const columns: Readonly<Record<RecordTable, readonly string[]>> = {
  devices: ['tag', 'kind', 'description', 'area', 'part', 'drawing', 'sheet'],
  signals: ['tag', 'type', 'address', 'terminal', 'signal'],
  cards: ['card', 'description', 'type', 'channels', 'slot'],
  parts: ['number', 'description', 'quantity', 'supersededBy', 'makerNumber'],
  drawings: ['number', 'title', 'kind', 'sheets', 'revision'],
  alarms: ['number', 'text', 'reaction', 'tags', 'trigger'],
  formats: ['format', 'setting', 'description', 'value', 'unit'],
  energy: ['id', 'name', 'form', 'isolation', 'waitS'],
  hazards: ['id', 'name', 'severity', 'signalWord', 'avoidance', 'symbols'],
  checkout: ['id', 'kind', 'gapMm', 'dropV'],
}

export type Lists = Partial<Record<RecordTable, readonly string[]>>

/** Records from rows with `;` between their cells, in the columns above. */
export function records(lists: Lists): MachineRecords {
  const rowsOf = (table: RecordTable) => (lists[table] ?? []).map((row) => rowOf(columns[table], row.split(';')))
  return {
    revision: { id: 'm', model: 'M 1', document: 'D', revision: 'A', date: '2026-01-01', serials: ['1'] },
    tables: {
      devices: rowsOf('devices'),
      signals: rowsOf('signals'),
      cards: rowsOf('cards'),
      parts: rowsOf('parts'),
      drawings: rowsOf('drawings'),
      alarms: rowsOf('alarms'),
      formats: rowsOf('formats'),
      energy: rowsOf('energy'),
      hazards: rowsOf('hazards'),
      checkout: rowsOf('checkout'),
    },
    leftOut: [],
    columns: {},
    unlisted: [],
    lost: [],
  }
}

function rowOf(names: readonly string[], cells: readonly string[]): DataRow {
  return { values: Object.fromEntries(names.flatMap((name, index) => (cells[index] ? [[name, cells[index]]] : []))) }
}

/** A change in one line: `device renamed A1>A2: name A1>A2 (note)`. */
export function line({ thing, kind, was, is, details, notes }: Change): string {
  const values = details.map(({ field, was, is }) => `${field} ${was}>${is}`).join(', ')
  return `${thing} ${kind} ${was ?? ''}>${is ?? ''}${values ? `: ${values}` : ''}${notes.map((note) => ` (${note})`).join('')}`
}

export const linesOf = (old: Lists, now: Lists) => compareRecords(records(old), records(now)).changes.map(line)

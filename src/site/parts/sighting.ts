import type { Graph } from '../../model/graph.ts'
import type { SheetCell } from '../../model/sheet-reference.ts'
import { zoneGridOf } from '../../model/zone-grid.ts'
import { address, slug } from '../address.ts'

/** The id of the mark round a device on a drawing sheet; drawings are linked with it. */
export function sightingId(tag: string): string {
  return `at-${slug(tag)}`
}

/** The id of the mark round a zone of a sheet. No tag has a mark of this id. */
export function zoneId(zone: string): string {
  return `zone-${slug(zone)}`
}

/** The address of a sheet that a list names, at the mark of its zone where the sheet has such a zone. */
export function sheetLink(graph: Graph, drawing: string, sheet: SheetCell | undefined): string {
  const at = address.drawing(drawing, sheet?.value)
  const opened = graph.drawing(drawing)?.sheetList.find(({ number }) => number === (sheet?.value ?? 1))
  return sheet?.zone && opened && zoneGridOf(opened)?.field(sheet.zone.value) ? `${at}#${zoneId(sheet.zone.value)}` : at
}

import { normalise } from '../model/designation.ts'
import { editDistance } from '../model/edit-distance.ts'
import type { Drawing, Reference } from '../model/machine.ts'
import { startOfFile } from '../source/place.ts'
import type { Folder } from './folder.ts'
import { loadRules, type Sink } from './load-rules.ts'
import { sheetPath } from './sheets.ts'

const isDrawing = (path: string) => /^drawings\/.*\.(svg|pdf)$/i.test(path)

/**
 * Reports drawing files that no row of a register read whole names, and no page shows as a picture. What another
 * finding tells of is left out: a row without its file, a number that is referred to and has no row.
 */
export function reportUnlistedDrawings(drawings: readonly Drawing[], references: readonly Reference[], machine: Folder, sink: Sink): void {
  const files = machine.list().filter(isDrawing)
  if (files.length === 0) return
  const listed = new Set(drawings.flatMap((drawing) => pathsOf(drawing, machine.label)))
  const pictures = new Set(references.flatMap(({ kind, id }) => (kind === 'image' ? [id] : [])))
  const told = new Set(references.flatMap(({ kind, id }) => (kind === 'drawing' ? [normalise(id)] : [])))
  const withoutFile = drawings.filter(({ sheetList }) => sheetList.some(({ exists }) => !exists)).map(({ number }) => normalise(number.value))
  const sheetCounts = new Map(drawings.map(({ number, sheets }) => [number.value, sheets.value]))
  for (const path of files) {
    if (listed.has(path) || pictures.has(path)) continue
    const stem = path.slice('drawings/'.length).replace(/\.\w+$/, '')
    const whole = stem.replace(/\.\d+$/, '')
    const names = [stem, whole].map(normalise)
    const isTold = names.some((name) => (told.has(name) && !sheetCounts.has(whole)) || withoutFile.some((it) => editDistance(it, name, 1) <= 1))
    if (isTold) continue
    const sheetCount = sheetCounts.get(whole)
    sink(loadRules.unlistedDrawing, {
      message: `the drawing register names no drawing in \`${path}\``,
      place: startOfFile(machine.label + path),
      ...(sheetCount
        ? { note: `drawing \`${whole}\` has ${sheetCount === 1 ? '1 sheet' : `${sheetCount} sheets`} in the register, and this is none of them` }
        : {}),
      help: `${sheetCount ? 'correct the number of sheets in' : 'add a row for it to'} the register, or take the file out of the folder`,
    })
  }
}

/** Where the sheets of a row may lie. Of several files for one drawing another finding tells, or the row chooses. */
function pathsOf({ number, sheets, file, sheetList, surplus }: Drawing, label: string): string[] {
  const usual = { number, sheets, file: undefined }
  return [
    ...(file ? [file.value] : []),
    ...surplus.map((place) => place.file.slice(label.length)),
    ...sheetList.flatMap(({ number: sheet }) => [sheetPath({ number, sheets, file }, sheet), sheetPath(usual, sheet)]),
    `drawings/${number.value}.pdf`,
  ]
}

import type { AffectedPlace } from './affected.ts'
import { type Change, changeGroups, groupOf } from './change.ts'
import type { Comparison } from './compare-records.ts'
import { detailLines, groupHeadings, headline } from './tell.ts'

export interface ChangesReport extends Comparison {
  affected: ReadonlyMap<Change, readonly AffectedPlace[]>
}

export const titleOf = ({ old, now }: Comparison) => `${now.model}: revision ${old.revision} (${old.date}) to revision ${now.revision} (${now.date})`

/** What a new revision of the data touches, as a person reads it: the dangerous first, then for each change the places that speak of it. */
export function reportChanges(report: ChangesReport): string {
  const { changes, affected, notCompared } = report
  const lines = [titleOf(report)]
  for (const group of changeGroups) {
    const own = changes.filter((change) => groupOf(change) === group)
    if (own.length === 0) continue
    lines.push('', `${groupHeadings[group]} (${own.length})`)
    for (const change of own) {
      lines.push(`  ${headline(change)}`)
      for (const line of [...detailLines(change), ...change.notes]) lines.push(`    ${line}`)
      for (const { place, page, language, name } of affected.get(change) ?? [])
        lines.push(`    ${place.file}:${place.line}:${place.column}: ${page} (${language}) names \`${name}\``)
    }
  }
  if (notCompared.length > 0) lines.push('', 'Not compared, because of errors that `fettle check` tells')
  for (const { thing, id, side } of notCompared) lines.push(`  ${thing}${id === undefined ? '' : ` \`${id}\``} of the ${side} revision`)
  const pages = new Set([...affected.values()].flat().map(({ page, language }) => `${page} ${language}`))
  lines.push('', `${count(changes.length, 'change')}, ${count(pages.size, 'page')} to read`)
  return `${lines.join('\n')}\n`
}

/** For other programs: `{ old, new, changes: [{ kind, group, thing, was, is, text, details, notes, affected }], notCompared }`. */
export function reportChangesJson({ old, now, changes, affected, notCompared }: ChangesReport): string {
  const report = {
    old,
    new: now,
    changes: changes.map((change) => ({
      kind: change.kind,
      group: groupOf(change),
      thing: change.thing,
      was: change.was ?? null,
      is: change.is ?? null,
      text: change.text,
      details: change.details,
      notes: change.notes,
      affected: (affected.get(change) ?? []).map(({ page, language, name, place: { file, line, column } }) => ({
        page,
        language,
        name,
        file,
        line,
        column,
      })),
    })),
    notCompared: notCompared.map(({ thing, id, side }) => ({ thing, id: id ?? null, side })),
  }
  return `${JSON.stringify(report, null, 2)}\n`
}

const count = (number: number, one: string) => `${number} ${one}${number === 1 ? '' : 's'}`

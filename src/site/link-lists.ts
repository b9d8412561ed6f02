import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Machine } from '../model/machine.ts'
import { compare } from '../source/place.ts'
import { pageKind, type SitePage, type View } from './site-map.ts'

interface LinkRow {
  kind: string
  id: string
  language: string
  path: string
}

/** Writes `links.csv` and `links.json`: the stable address of everything that an HMI project can put behind a button. */
export function writeLinkLists(machine: Machine, pages: readonly SitePage[], siteDir: string): void {
  const rows = pages
    .flatMap(({ view, path, language }): LinkRow[] => {
      const named = nameOf(view)
      return named ? [{ ...named, language, path }] : []
    })
    .sort((a, b) => compare(a.kind, b.kind) || compare(a.id, b.id) || compare(a.language, b.language))
  const cell = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
  writeFileSync(
    join(siteDir, 'links.csv'),
    `kind,id,language,path\r\n${rows.map(({ kind, id, language, path }) => `${[kind, id, language, path].map(cell).join(',')}\r\n`).join('')}`,
  )
  writeFileSync(join(siteDir, 'links.json'), `${JSON.stringify({ machine: machine.file.id, serial: machine.unit.serial, links: rows }, null, 1)}\n`)
}

function nameOf(view: View): { kind: string; id: string } | undefined {
  switch (view.kind) {
    case 'device':
      return { kind: 'tag', id: view.tag }
    case 'alarm':
    case 'part':
      return { kind: view.kind, id: view.number }
    case 'drawing':
      return { kind: 'drawing', id: view.sheet === 1 ? view.number : `${view.number}/${view.sheet}` }
    case 'format':
      return { kind: 'set-up', id: view.format }
    case 'path':
      return { kind: 'path', id: view.role }
    case 'area':
      return { kind: 'area', id: view.id }
    case 'lesson-for':
      return { kind: 'lesson', id: `${view.id.replace(/^lessons\//, '')}/${view.tag}` }
    case 'page': {
      const [collection = '', name = ''] = view.id.split('/')
      return { kind: pageKind[collection as keyof typeof pageKind], id: name }
    }
    default:
      return { kind: 'list', id: view.kind }
  }
}

import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import type { SearchInput } from '../../src/search/build-index.ts'
import type { SearchEntry, SearchPage } from '../../src/search/entry.ts'

// A small invented site: a crate washer with a few things of each kind, in two languages.

interface Thing {
  kind: SearchEntry['kind']
  id: string
  path: string
  title: string
  place?: string
  text: string
}

const english: Thing[] = [
  {
    kind: 'tag',
    id: 'PRS104',
    path: 'tags/PRS104.html',
    title: 'Lift at bottom position',
    place: 'Lift',
    text: 'An inductive proximity switch below the lift frame.',
  },
  {
    kind: 'tag',
    id: 'PRS105',
    path: 'tags/PRS105.html',
    title: 'Lift at top position',
    place: 'Lift',
    text: 'An inductive proximity switch above the lift frame.',
  },
  {
    kind: 'tag',
    id: 'PRS112',
    path: 'tags/PRS112.html',
    title: 'Pusher back',
    place: 'Pusher',
    text: 'An inductive proximity switch on the pusher.',
  },
  { kind: 'tag', id: 'PX-104', path: 'tags/PX-104.html', title: 'Drain open', place: 'Tank', text: 'A limit switch on the drain valve.' },
  {
    kind: 'tag',
    id: 'KF-0231',
    path: 'tags/KF-0231.html',
    title: 'Heater contactor',
    place: 'Cabinet',
    text: 'Closes when the wash tank is heated.',
  },
  {
    kind: 'tag',
    id: '=S1+C2-B12',
    path: 'tags/=S1+C2-B12.html',
    title: 'Level of the wash tank',
    place: 'Tank',
    text: 'A level transmitter of 4 to 20 mA.',
  },
  {
    kind: 'tag',
    id: '=S1+C2-B13',
    path: 'tags/=S1+C2-B13.html',
    title: 'Wash pressure',
    place: 'Pump',
    text: 'A pressure transmitter of 4 to 20 mA.',
  },
  {
    kind: 'alarm',
    id: 'A0217',
    path: 'alarms/A0217.html',
    title: 'Wash tank too cold',
    place: 'Tank',
    text: 'Alarm. Look at KF-0231 first. Wait until the temperature is reached.',
  },
  {
    kind: 'alarm',
    id: 'A0104',
    path: 'alarms/A0104.html',
    title: 'Lift does not reach the bottom',
    place: 'Lift',
    text: 'Alarm. Check PRS104 and the lift drive.',
  },
  { kind: 'part', id: '7410-2250-03', path: 'parts/7410-2250-03.html', title: 'Spray nozzle', text: 'Part of the rinse arch. Keep ten in stock.' },
  { kind: 'part', id: '2217-0040', path: 'parts/2217-0040.html', title: 'Fuse link 4 A', text: 'Part of the control supply.' },
  { kind: 'drawing', id: 'E-104', path: 'drawings/E-104.html', title: 'Lift: power and inputs', text: 'Drawing sheet one.' },
  {
    kind: 'lockout',
    id: 'LO-2',
    path: 'lockout/lift.html',
    title: 'Lock out the lift',
    text: 'Lockout of gravity. The frequency converter stays charged for minutes.',
  },
]
const spanish: Thing[] = [
  {
    kind: 'tag',
    id: 'PRS104',
    path: 'es/tags/PRS104.html',
    title: 'Elevador abajo',
    place: 'Elevador',
    text: 'Un detector inductivo bajo el bastidor.',
  },
  {
    kind: 'alarm',
    id: 'A0217',
    path: 'es/alarms/A0217.html',
    title: 'Cuba de lavado demasiado fría',
    text: 'Alarma. Revise la válvula de desagüe y el tamaño de la boquilla.',
  },
  { kind: 'part', id: '2217-0040', path: 'es/parts/2217-0040.html', title: 'Fusible 4 A', text: 'Pieza de la alimentación de mando.' },
]

export const entries: SearchEntry[] = [
  ...english.map(({ text: _, ...entry }) => ({ ...entry, language: 'en' })),
  ...spanish.map(({ text: _, ...entry }) => ({ ...entry, language: 'es' })),
]

export const pages: SearchPage[] = [{ path: 'manual/cleaning.html', kind: 'job', place: 'Tank', language: 'en' }]

export const synonyms: Record<string, string[][]> = {
  en: [
    ['inductive proximity switch', 'prox', 'proximity sensor'],
    ['frequency converter', 'VFD', 'drive', 'inverter'],
    ['lockout', 'LOTO', 'lock out tag out'],
    ['emergency stop', 'e-stop', 'mushroom button'],
  ],
  es: [['detector inductivo', 'sensor de proximidad']],
}

const chapters: [path: string, language: string, title: string, html: string][] = [
  [
    'manual/cleaning.html',
    'en',
    'Cleaning',
    '<p>Clean every week.</p><h2 id="strainer">The strainer</h2><p>Rinse the strainer of the pre-wash tank with clear water until it is bright.</p><h2 id="after">Afterwards</h2><p>Press the emergency stop &amp; wait.</p>',
  ],
  [
    'manual/safety.html',
    'en',
    'Safety',
    '<p>Never reach under a raised lift. A tag may read <code>&lt;script&gt;alert(1)&lt;/script&gt;</code>.</p>',
  ],
  ['es/manual/cleaning.html', 'es', 'Limpieza', '<p>Enjuague el filtro con agua clara. Compruebe la presión de lavado.</p>'],
]

/**
 * Writes the site and gives what `buildSearch` takes. More devices `LS1000`, `LS1001` … make it as large as wanted.
 * @param backwards writes the files in the other order, which some file systems show when a folder is listed
 */
export function makeSite(siteDir: string, { more = 0, backwards = false } = {}): SearchInput & { siteDir: string } {
  const added = Array.from({ length: more }, (_, index) => extraDevice(index))
  const files = [
    ...[...english, ...added].map((thing) => [thing.path, page('en', `<h1><span>${thing.id}</span> ${thing.title}</h1><p>${thing.text}</p>`)]),
    ...spanish.map((thing) => [thing.path, page('es', `<h1><span>${thing.id}</span> ${thing.title}</h1><p>${thing.text}</p>`)]),
    ...chapters.map(([path, language, title, html]) => [path, page(language, `<h1>${title}</h1>${html}`)]),
    ['list.html', page('en', '<p>An unindexed list names the zeppelin.</p>', false)],
  ] as [string, string][]
  for (const [path, html] of backwards ? files.reverse() : files) {
    mkdirSync(dirname(join(siteDir, path)), { recursive: true })
    writeFileSync(join(siteDir, path), html)
  }
  const all = [...entries, ...added.map(({ text: _, ...entry }) => ({ ...entry, language: 'en' }))]
  return { siteDir, outDir: join(siteDir, 'search'), languages: ['en', 'es'], entries: all, pages, synonyms }
}

function extraDevice(index: number): Thing {
  const words = ['conveyor', 'guide', 'roller', 'motor', 'bearing', 'chain', 'crate', 'nozzle', 'pump', 'filter', 'heater', 'door', 'guard', 'belt']
  const text = Array.from({ length: 120 }, (_, word) => words[(index * (word + 3) + word * word) % words.length]).join(' ')
  const id = `LS${1000 + index}`
  return { kind: 'tag', id, path: `tags/${id}.html`, title: `Limit switch ${words[index % words.length]} ${index}`, text: `${text}.` }
}

function page(language: string, html: string, indexed = true): string {
  return `<!doctype html><html lang="${language}"><head><meta charset="utf-8"><title>Washer</title></head><body><main${indexed ? ' data-pagefind-body' : ''}>${html}</main></body></html>`
}

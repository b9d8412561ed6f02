import { stringify } from 'yaml'

const notWritten: Readonly<Record<string, string>> = {
  de: 'Noch nicht geschrieben.',
  en: 'Not written yet.',
  es: 'Aún sin escribir.',
}

/** Pages to be written, as drafts: path from the machine folder -> text. */
export function stubPages(things: {
  devices: readonly { tag: string; description: string }[]
  alarms: readonly { number: string; text: string }[]
  language: string
}): Map<string, string> {
  const { devices, alarms, language } = things
  const pages = new Map<string, string>()
  const add = (folder: string, name: string, frontmatter: object) => {
    const base = slugOf(name)
    let path = `pages/${folder}/${base}.mdx`
    for (let n = 2; pages.has(path); n++) path = `pages/${folder}/${base}-${n}.mdx`
    pages.set(path, `---\n${stringify({ ...frontmatter, draft: true })}---\n${notWritten[language] ?? notWritten.en}\n`)
  }
  for (const { tag, description } of devices) add('components', tag, { title: description, tags: [tag] })
  for (const { number, text } of alarms) add('alarms', number, { title: text, alarm: number })
  return pages
}

/** A file name that every system takes: small letters, digits and hyphens. */
function slugOf(name: string): string {
  const plain = name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()
  return plain.replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '') || 'page'
}

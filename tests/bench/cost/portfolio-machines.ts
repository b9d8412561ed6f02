import { type Files, textOf } from '../example.ts'
import { generateMachine } from '../generate/generate-machine.ts'

/** The shared lesson that a quarter of the machines take; the others have one of this name themselves. */
export const lessonOfSome = 'lessons/check-namur'

/** Machines of about so many pages, each with an id and a serial number of its own: `machines/m03/…`, with the shared `content/…`. */
export function portfolioFiles(example: Files, machines: number, pages: number): Map<string, string | Uint8Array> {
  const files = new Map([...example].filter(([path]) => path.startsWith('content/')))
  for (let index = 0; index < machines; index++) {
    const name = nameOf(index)
    for (const [path, content] of generateMachine(example, pages, index + 1)) files.set(`machines/${name}/${path}`, content)
    const yaml = `machines/${name}/machine.yaml`
    files.set(
      yaml,
      textOf(files, yaml)
        .replace('id: rcw-400', `id: rcw-400-${name}`)
        .replace("serial: '0400-017'", `serial: '0400-1${name.slice(1)}'`),
    )
    if (index % 4 === 0) continue
    for (const end of ['.mdx', '.es.mdx']) files.set(`machines/${name}/pages/${lessonOfSome}${end}`, textOf(files, `content/${lessonOfSome}${end}`))
  }
  return files
}

export const nameOf = (index: number) => `m${String(index + 1).padStart(2, '0')}`

/** The first machine in its source language alone, as a folder of its own. */
export function inOneLanguage(files: Files): Map<string, string | Uint8Array> {
  const own = [...files].flatMap(([path, content]) => {
    const inside = path.startsWith('machines/m01/') ? path.slice('machines/m01/'.length) : undefined
    return inside === undefined || inside.endsWith('.es.mdx') ? [] : [[inside, content] as const]
  })
  const one = new Map(own)
  one.set(
    'machine.yaml',
    textOf(one, 'machine.yaml')
      .replace(/^languages:\n(?: .*\n)+/m, 'languages: { source: en }\n')
      .replace('id: rcw-400-m01', 'id: rcw-400-one-language'),
  )
  return one
}

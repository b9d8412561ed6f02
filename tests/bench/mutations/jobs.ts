import { textOf } from '../example.ts'
import { type Kind, linesOf, mentions, type Piece, removed, replaced } from './mistake.ts'
import type { Example } from './read-example.ts'

const headings: readonly [file: string, one: string, other: string][] = [
  ['data/bom.csv', 'Description', 'Descripción'],
  ['data/alarms.csv', 'Text', 'Texto'],
  ['data/io-list.csv', 'Function', 'Función'],
  ['data/devices.csv', 'description', 'description.es'],
]

const headingsExchanged: Kind = {
  name: 'headings of two languages exchanged',
  count: headings.length,
  *make({ files }) {
    for (const [file, one, other] of headings) {
      const [heading = ''] = textOf(files, file).split('\n')
      const cells = heading.split(/([,;])/).map((cell) => (cell === one ? other : cell === other ? one : cell))
      yield replaced(files, { file, start: 0, end: heading.length, value: heading }, cells.join(''))
    }
  },
}

const pagesOf = ({ files }: Example, pattern: RegExp) =>
  [...files.keys()].filter((path) => /^(?:pages|content\/lessons)\/.*(?<!\.es)\.mdx$/.test(path) && pattern.test(textOf(files, path)))

/** A part of the pages taken out or changed; where it may be reported is anywhere in the page. */
function inPages(name: string, count: number, pattern: RegExp, text: string): Kind {
  return {
    name,
    count,
    *make(example, random) {
      for (const file of random.sample(pagesOf(example, pattern), count)) {
        const [found] = textOf(example.files, file).matchAll(new RegExp(pattern, `${pattern.flags}g`))
        if (!found) continue
        const piece: Piece = { file, start: found.index, end: found.index + found[0].length, value: found[0] }
        const draft = replaced(example.files, piece, text)
        yield { ...draft, at: linesOf(draft.files, file) }
      }
    },
  }
}

const drawingCopied: Kind = {
  name: 'drawing without a row in the register',
  count: 4,
  *make({ files }, random) {
    for (const path of random.sample(
      [...files.keys()].filter((it) => /^drawings\/.*\.svg$/.test(it)),
      this.count,
    )) {
      const to = path.replace(/(?:\.\d)?\.svg$/, ' (copy).svg')
      yield { what: `${to} is a copy of ${path}`, files: new Map([...files, [to, textOf(files, path)]]), at: [{ file: to, line: 1 }] }
    }
  },
}

const fileInCapitals: Kind = {
  name: 'lockout or lesson whose file is in capitals',
  count: 4,
  *make({ files }, random) {
    const paths = [...files.keys()].filter((it) => /^(?:pages\/lockout|content\/lessons)\/[^.]+\.mdx$/.test(it))
    for (const path of random.sample(paths, this.count)) {
      const name = path.replace(/^.*\/|\.mdx$/g, '')
      const to = path.replace(name, name.toUpperCase())
      const changed = new Map([...removed(files, path), [to, textOf(files, path)]])
      yield { what: `${path} is named ${to}`, files: changed, at: [{ file: to, line: 1 }, ...mentions(changed, name)] }
    }
  },
}

export const jobKinds: readonly Kind[] = [
  headingsExchanged,
  inPages('preconditions of outputs left out', 6, /^outputs:\n(?: .*\n)+/m, ''),
  inPages('one precondition of outputs left out', 6, /^ {2}(?:login|guards|clear): .*\n/m, ''),
  inPages('condition for no lockout answered with no', 4, /(?<=^ {2}(?:routine|integral|otherProtection): )yes/m, 'no'),
  inPages('set-up at full speed at once', 2, / {2}<Step>Choose "Slow".*\n/, ''),
  drawingCopied,
  fileInCapitals,
]

import { textOf } from '../example.ts'
import { type Beyond, type Kind, linesOf, type Mistake, mentions, type Piece, removed, replaced } from './mistake.ts'
import type { Example } from './read-example.ts'
import { misspelt } from './slips.ts'

type Draft = Omit<Mistake, 'kind'>

const paths = ({ files }: Example, pattern: RegExp) => [...files.keys()].filter((path) => pattern.test(path))

function deleted(name: string, count: number, pattern: RegExp, names: (path: string, text: string) => readonly string[]): Kind {
  return {
    name,
    count,
    *make(example, random) {
      for (const path of random.sample(paths(example, pattern), count)) {
        const files = removed(example.files, path)
        const at = names(path, String(example.files.get(path))).flatMap((it) => mentions(files, it))
        // A translation whose source is gone is reported at itself.
        const others = [...files.keys()].filter((it) => it.startsWith(path.replace(/\.mdx$/, '.')))
        // The owner of a translation is its source.
        const source = path.replace('.es.mdx', '.mdx')
        const owner = source !== path && files.has(source) ? linesOf(files, source, '\n---') : []
        yield { what: `${path} deleted`, files, at: [...at, ...owner, ...others.map((file) => ({ file, line: 1 }))] }
      }
    },
  }
}

const nameOf = (path: string) => path.replace(/^.*\/|(\.[a-z]{2})?\.\w+$/g, '')

/** What a page is called by others: its name, and its number of an alarm or a lockout. */
const namesOfPage = (path: string, text: string) => [
  nameOf(path),
  ...[...text.matchAll(/^(?:alarm|number): (\S+)$/gm)].flatMap(([, number]) => number ?? []),
]

const numberOf = (path: string) => nameOf(path).replace(/\.\d+$/, '')

const drawingsSwapped: Kind = {
  name: 'two drawing files swapped',
  count: 12,
  *make(example, random) {
    const sheets = paths(example, /^drawings\/E-.*\.svg$/)
    for (let made = 0; made < this.count; made++) {
      const [one = '', two = ''] = random.sample(sheets, 2)
      const files = new Map([...example.files, [one, textOf(example.files, two)], [two, textOf(example.files, one)]])
      yield {
        what: `${one} and ${two} swapped`,
        files,
        at: [one, two].flatMap((path) => [...mentions(files, numberOf(path)), { file: path, line: 1 }]),
      }
    }
  },
}

const pageMoved: Kind = {
  name: 'page in a wrong folder or with a wrong ending',
  count: 8,
  *make(example, random) {
    for (const [index, path] of random.sample(paths(example, /^pages\/.*[^s.]\.mdx$/), this.count).entries()) {
      const to = index % 2 === 0 ? path.replace(/x$/, '') : path.replace(/^pages\/\w+/, 'pages/notes')
      const files = new Map([...removed(example.files, path), [to, textOf(example.files, path)]])
      yield { what: `${path} lies at ${to}`, files, at: [{ file: to, line: 1 }] }
    }
  },
}

/** A piece of a YAML file taken out or changed; what is missing is reported at its owner, a few lines round it. */
function inYaml(name: string, count: number, file: string, pattern: RegExp, text: (value: string) => string, around = 0, beyond?: Beyond): Kind {
  return {
    name,
    count,
    *make({ files }, random) {
      const whole = textOf(files, file)
      const pieces = [...whole.matchAll(pattern)].map(({ index, 0: value }): Piece => ({ file, start: index, end: index + value.length, value }))
      for (const piece of random.sample(pieces, count)) {
        const draft: Draft = replaced(files, piece, text(piece.value))
        const first = draft.at[0]?.line ?? 1
        const id = /id: ([a-z-]+)/.exec(piece.value)?.[1]
        const owners = around === 0 ? [] : linesOf(draft.files, file).filter(({ line }) => Math.abs(line - first) <= around)
        yield { ...draft, at: [...draft.at, ...owners, ...(id ? mentions(draft.files, id) : [])], ...(beyond ? { beyond } : {}) }
      }
    },
  }
}

const sheetTag: Kind = {
  name: 'tag on a drawing: a digit',
  count: 15,
  *make(example, random) {
    const tags = paths(example, /^drawings\/.*\.svg$/).flatMap((file) =>
      [...textOf(example.files, file).matchAll(/>([A-Z]{2,4}\d{3})</g)].flatMap(({ index, 1: value = '' }): Piece[] =>
        example.known.tag.has(value) ? [{ file, start: index + 1, end: index + 1 + value.length, value }] : [],
      ),
    )
    for (const piece of random.sample(tags, this.count)) {
      const value = piece.value.replace(/\d$/, (digit) => String((Number(digit) + 5) % 10))
      const draft = replaced(example.files, piece, value)
      const at = [...draft.at, ...mentions(draft.files, piece.value)]
      yield { ...draft, at, ...(example.known.tag.has(value) ? { beyond: 'another real thing' as const } : {}) }
    }
  },
}

export const folderKinds: readonly Kind[] = [
  deleted('page deleted', 22, /^(?:pages|content\/lessons|content\/cautions)\/(?!.*\.es\.mdx).*\.mdx$|^content\/.*\/[^.]+\.mdx$/, namesOfPage),
  deleted('translation deleted', 12, /\.es\.mdx$/, (path) => [nameOf(path)]),
  deleted('sheet of a drawing deleted', 12, /^drawings\/.*\.svg$/, (path) => [numberOf(path)]),
  deleted('data file deleted', 8, /^data\//, (path) => [path]),
  drawingsSwapped,
  sheetTag,
  pageMoved,
  inYaml('isolation of an energy source removed', 8, 'data/energy.yaml', / {4}isolation: \[.*\n/g, () => '    isolation: []\n', 12),
  inYaml('isolation point left out', 8, 'data/energy.yaml', / {2}- point: \w+\n(?: {4}.*\n)+/g, () => ''),
  inYaml('proof of an energy source removed', 6, 'data/energy.yaml', / {4}verify:\n(?: {6}.*\n)+/g, () => '', 40),
  inYaml('release of a stored energy removed', 5, 'data/energy.yaml', / {4}dissipate:\n(?: {6}.*\n)+/g, () => '', 40),
  inYaml('needed key of an energy source left out', 8, 'data/energy.yaml', /^ {4}(?:form|areas|stored): .*\n/gm, () => '', 30),
  inYaml('key of an energy source misspelt', 6, 'data/energy.yaml', /(?<=^ {4}(?! ))[a-z]{4,}(?=:)/gm, misspelt, 1),
  inYaml('waiting time of an energy source too short', 2, 'data/energy.yaml', /(?<=^ {4}waitS: )(?:300|75)$/gm, () => '20'),
  inYaml('delay notice too short', 1, 'data/energy.yaml', /(?<= {4}delayNoticeS: )\d+/g, (value) => String(Number(value) / 10)),
  inYaml('delay notice left out', 1, 'data/energy.yaml', / {4}delayNoticeS: \d+\n/g, () => '', 12),
  inYaml(
    'value of a store ten times as large',
    8,
    'data/energy.yaml',
    /(?<=(?:capacitance|pressure|mass|height|temperature|speed): \{ value: )\d+/g,
    (value) => `${value}0`,
    12,
  ),
  inYaml(
    'value of a store left out',
    8,
    'data/energy.yaml',
    /, (?:capacitance|pressure|volume|mass|height|speed|ambient|timeConstant): \{[^}]*\}/g,
    () => '',
  ),
  inYaml(
    'unit of a store of another quantity',
    8,
    'data/energy.yaml',
    /(?<= [a-z]+[A-Za-z]*: \{ value: [\d.]+, unit: )(?:µF|V|kΩ|l|°C|h|Nm)(?= \}[ ,])/g,
    () => 'kg',
  ),
  inYaml('energy source left out', 8, 'data/energy.yaml', / {2}- id: [a-z-]+\n(?: {4}.*\n)+/g, () => ''),
  inYaml('area left out', 6, 'machine.yaml', / {2}- id: [a-z-]+\n(?: {4}.*\n)+/g, () => ''),
  inYaml('option left out', 3, 'machine.yaml', / {2}(?:blow-off|chain-oiler|lid-detection): .*\n/g, () => '', 30),
  inYaml(
    'needed key of machine.yaml left out',
    8,
    'machine.yaml',
    /^(?:id|model|name|builder|document|revision|date|designation): .*\n/gm,
    () => '',
    12,
  ),
  inYaml('key of machine.yaml misspelt', 8, 'machine.yaml', /^[a-z]{4,}(?=:)/gm, misspelt),
  inYaml('column of machine.yaml misspelt', 8, 'machine.yaml', /(?<=^ {6})[a-z]{4,}(?=: [A-Z])/gm, misspelt),
  inYaml('lesson left out of a sequence', 4, 'training.yaml', /(?<=\[.*), [a-z0-9-]+(?=[,\]])/g, () => '', 0, 'nobody has to write it'),
  inYaml('role left out', 2, 'training.yaml', / {2}- id: [a-z]+\n {4}name.*\n(?= {2}- id: maint|\n)/g, () => ''),
  inYaml('term left out of the glossary', 5, 'glossary.yaml', /^[a-z-]+:\n(?: {2}.*\n)+/gm, () => '', 400),
]

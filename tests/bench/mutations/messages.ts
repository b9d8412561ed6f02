import { textOf } from '../example.ts'
import { also, type Kind, mentions, type Piece, replaced, type Spot } from './mistake.ts'
import type { Example } from './read-example.ts'

const hazardsFile = 'data/hazards.yaml'

/** Places that match in the files whose path matches; the match, or its first group, is what changes. */
function inFiles({ files }: Example, path: RegExp, pattern: RegExp): Piece[] {
  return [...files.keys()]
    .filter((file) => path.test(file))
    .flatMap((file) =>
      [...textOf(files, file).matchAll(pattern)].map(({ index, 0: whole, 1: group }): Piece => {
        const value = group ?? whole
        const start = index + whole.indexOf(value)
        return { file, start, end: start + value.length, value }
      }),
    )
}

const lineOf = (text: string, part: string): number => text.slice(0, text.indexOf(part)).split('\n').length

/** A message and the steps before which it stands, without a heading between. */
const beforeSteps =
  /^(<(?:Include caution="[^"]+" \/>|Safety [^>]*\/>|Safety [^>]*[^/]>[\s\S]*?<\/Safety>)\n\n(?:(?!^##|^<Steps>)[\s\S])*^<Steps>[\s\S]*?^<\/Steps>)$/gm

const movedBehind: Kind = {
  name: 'safety message moved behind the last step',
  count: 12,
  *make(example, random) {
    for (const piece of random.sample(inFiles(example, /\.mdx$/, beforeSteps), this.count)) {
      const message = /^<Include[^>]*>|^<Safety [^>]*\/>|^<Safety [\s\S]*?<\/Safety>/.exec(piece.value)?.[0] ?? ''
      const draft = replaced(example.files, piece, `${piece.value.slice(message.length).trimStart()}\n\n${message}`)
      // The message alone is what may be reported, and it stands last.
      yield { ...draft, at: draft.at.slice(-message.split('\n').length) }
    }
  },
}

/** A step that begins with a message. */
const messageInStep = /<Step>\n( +<Safety [\s\S]*?<\/Safety>\n\n[\s\S]*?)\n {2}<\/Step>/g

const movedInStep: Kind = {
  name: 'safety message moved behind the words of its step',
  count: 10,
  *make(example, random) {
    for (const piece of random.sample(inFiles(example, /\.mdx$/, messageInStep), this.count)) {
      const end = piece.value.indexOf('</Safety>') + '</Safety>'.length
      const message = piece.value.slice(0, end)
      const draft = replaced(example.files, piece, `${piece.value.slice(end).trim().replace(/^/, '    ')}\n\n${message}`)
      yield { ...draft, at: draft.at.slice(-message.split('\n').length) }
    }
  },
}

function rewritten(name: string, count: number, path: RegExp, pattern: RegExp, text: (value: string) => string): Kind {
  return {
    name,
    count,
    *make(example, random) {
      for (const piece of random.sample(inFiles(example, path, pattern), count)) yield replaced(example.files, piece, text(piece.value))
    },
  }
}

const messageGone: Kind = {
  name: 'safety message of a job left out',
  count: 12,
  *make({ files, ...example }, random) {
    const hazards = textOf(files, hazardsFile)
      .split(/^ {2}- id: /m)
      .slice(1)
    const jobs = hazards.flatMap((hazard) => {
      const caution = /^ {4}caution: (.*)$/m.exec(hazard)?.[1]
      return caution === undefined
        ? []
        : [...hazard.matchAll(/^ {6}- ([a-z]+\/[a-z0-9-]+)$/gm)].map(([line, page = '']) => ({ caution, page, line, hazard }))
    })
    for (const { caution, page, hazard, line } of random.sample(jobs, this.count)) {
      const [piece] = inFiles(
        { files, ...example },
        new RegExp(`^pages/${page}\\.mdx$`),
        new RegExp(`^<Include caution="${caution}" />\\n\\n?`, 'gm'),
      )
      if (!piece) continue
      const text = textOf(files, hazardsFile)
      const at: Spot[] = [{ file: hazardsFile, line: lineOf(text, hazard) + hazard.slice(0, hazard.indexOf(line)).split('\n').length - 1 }]
      yield { ...replaced(files, piece, ''), at }
    }
  },
}

const hazardGone: Kind = {
  name: 'hazard left out of the list',
  count: 10,
  *make(example, random) {
    for (const piece of random.sample(inFiles(example, /^data\/hazards\.yaml$/, /^ {2}- id: [\s\S]*?(?=^ {2}- id: |$(?![\s\S]))/gm), this.count)) {
      const id = /id: (.*)/.exec(piece.value)?.[1] ?? ''
      const caution = /caution: (.*)/.exec(piece.value)?.[1]
      const draft = replaced(example.files, piece, '')
      const file = `content/cautions/${caution}.mdx`
      const spoken = mentions(draft.files, id).some(({ file }) => textOf(draft.files, file).includes(`hazard="${id}`))
      // Of a hazard that only the collected chapter shows nothing is left.
      if (caution === undefined && !spoken) yield { ...draft, beyond: 'nobody has to write it' }
      else yield also(draft, caution === undefined ? mentions(draft.files, id) : [{ file, line: lineOf(textOf(draft.files, file), '<Safety') }])
    }
  },
}

/** Slips with safety messages and hazards. */
export const messageKinds: readonly Kind[] = [
  movedBehind,
  movedInStep,
  messageGone,
  hazardGone,
  rewritten('consequence with the other verb', 10, /\.mdx$/, /<Consequence>(?:(?!<\/Consequence>)[\s\S])*?\b(could)\b/g, () => 'will'),
  rewritten('avoidance that tells no act', 8, /^(?!.*\.es\.).*\.mdx$/, /<Avoid>([\s\S]*?)<\/Avoid>/g, () => 'Be careful.'),
  rewritten(
    'severity of a standard caution lowered',
    8,
    /^content\/cautions\/[a-z-]+\.mdx$/,
    /severity="(death-or-serious-injury)"/g,
    () => 'minor-or-moderate-injury',
  ),
  rewritten(
    'severity in a translation lowered',
    8,
    /^(?:content|pages)\/.*\.es\.mdx$/,
    /severity="(death-or-serious-injury)"/g,
    () => 'minor-or-moderate-injury',
  ),
  rewritten('code of a sign with a digit too few', 6, /\.(?:mdx|yaml)$/, /symbols(?:="|: \[)([WMP]\d\d)\d/g, (code) => code.slice(0, 2)),
]

import { textOf } from '../example.ts'
import { also, type Kind, linesOf, mentions, type Piece, replaced } from './mistake.ts'
import type { Example } from './read-example.ts'
import { misspelt } from './slips.ts'

/** Places on pages that match a pattern; the match, or its first group, is what changes. */
function onPages({ pages, files }: Example, pattern: RegExp): Piece[] {
  return pages.flatMap((file) =>
    [...textOf(files, file).matchAll(pattern)].map(({ index, 0: whole, 1: group }): Piece => {
      const value = group ?? whole
      const start = index + whole.indexOf(value)
      return { file, start, end: start + value.length, value }
    }),
  )
}

function rewritten(name: string, count: number, pattern: RegExp, text: (value: string) => string, owners?: 'frontmatter' | 'next line'): Kind {
  return {
    name,
    count,
    *make(example, random) {
      for (const piece of random.sample(onPages(example, pattern), count)) {
        const draft = replaced(example.files, piece, text(piece.value))
        if (owners === 'frontmatter') yield also(draft, linesOf(draft.files, piece.file, '\n---'))
        else if (owners === 'next line')
          yield also(
            draft,
            draft.at.flatMap(({ file, line }) => [-1, 1].map((by) => ({ file, line: line + by }))),
          )
        else yield draft
      }
    },
  }
}

/** What a safety message loses is missed at the message. */
function partOfMessageGone(part: string): Kind {
  return {
    name: `safety message without its ${part}`,
    count: 8,
    *make(example, random) {
      const pattern = new RegExp(`<Safety[^>]*>(?:(?!</Safety>)[\\s\\S])*?\\n( *<${part}>[\\s\\S]*?</${part}>\\n)`, 'g')
      for (const piece of random.sample(onPages(example, pattern), this.count)) {
        const draft = replaced(example.files, piece, '')
        const before = textOf(draft.files, piece.file).slice(0, piece.start)
        yield { ...draft, at: [{ file: piece.file, line: before.slice(0, before.lastIndexOf('<Safety')).split('\n').length }] }
      }
    },
  }
}

/** One half of an element taken away. Its owner is the half that is left. */
function halfGone(name: string, pattern: RegExp): Kind {
  return {
    name,
    count: 8,
    *make({ files, pages }, random) {
      const halves = pages.flatMap((file) => [...textOf(files, file).matchAll(pattern)].map((match) => ({ file, match })))
      for (const { file, match } of random.sample(halves, this.count)) {
        const piece: Piece = { file, start: match.index, end: match.index + match[0].length, value: match[0] }
        const draft = replaced(files, piece, '')
        const left = otherHalf(textOf(draft.files, file), match.index, match[1] ?? '', match[0].startsWith('</') ? -1 : 1)
        yield also(draft, [{ file, line: textOf(draft.files, file).slice(0, left).split('\n').length }])
      }
    },
  }
}

/** The offset of the tag that has lost its other half at `offset`, looking back or on. */
function otherHalf(text: string, offset: number, name: string, direction: 1 | -1): number {
  const tags = [...text.matchAll(new RegExp(`<(/?)${name}(?:\\s[^>]*)?>`, 'g'))].map(({ index, 1: slash }) => ({ index, opens: slash === '' }))
  const way = direction === 1 ? tags.filter(({ index }) => index >= offset) : tags.filter(({ index }) => index < offset).reverse()
  let open = 0
  for (const { index, opens } of way) {
    if (opens !== (direction === 1)) open -= 1
    else open += 1
    if (open < 0) return index
  }
  return offset
}

const headingRenamed: Kind = {
  name: 'heading renamed that a link leads to',
  count: 4,
  *make(example) {
    for (const piece of onPages(example, /^## (Which lockout for which work)$/gm)) {
      const draft = replaced(example.files, piece, 'Which lockout fits')
      yield also(draft, mentions(draft.files, 'which-lockout-for-which-work'))
    }
  },
}

const anchorRenamed: Kind = {
  name: 'anchor in a link: a letter',
  count: 4,
  *make({ files, ...example }) {
    for (const piece of onPages({ files, ...example }, /id="[^"#]+#([^"]+)"/g)) {
      yield replaced(files, piece, piece.value.replace(/[a-z](?=[^a-z]*$)/, 'x'))
      yield replaced(files, piece, piece.value.replace('-', '_'))
    }
  },
}

const neededCircle: Kind = {
  name: 'lessons that need each other',
  count: 6,
  *make(example, random) {
    for (const piece of random.sample(onPages(example, /^needs: \[(.+)\]$/gm), this.count)) {
      const own = piece.file.replace(/^.*\/|\.mdx$/g, '')
      yield replaced(example.files, piece, `${piece.value}, ${own}`)
    }
  },
}

/** Slips in readings, whose device a step or the reading itself names. */
export const readingKinds: readonly Kind[] = [
  rewritten('reading on the screen: a digit too many', 8, /at="screen"[^>]*high="([\d.]+)"/g, (value) => `${value.replace('.', '')}0`),
  rewritten('reading on the screen: another unit', 8, /at="screen"[^>]*unit="([^"]+)"/g, (unit) => (unit === 'mA' ? 'V' : 'mA')),
]

export const pageKinds: readonly Kind[] = [
  partOfMessageGone('Avoid'),
  partOfMessageGone('Consequence'),
  partOfMessageGone('Hazard'),
  halfGone('closing tag left out', /<\/(Steps|Result|Safety|Step|Fitted)>/g),
  halfGone('opening tag left out', /<(Steps|Result|Step|Fitted)[^>]*>/g),
  headingRenamed,
  anchorRenamed,
  neededCircle,
  rewritten('needed key of a page left out', 20, /^(?:title|alarm|kind|revision|number|figure|alt|objectives): .*\n/gm, () => '', 'frontmatter'),
  rewritten('key of a page misspelt', 15, /^([a-z]+): .*$/gm, misspelt),
  rewritten('key of a page written twice', 6, /^(?:title|minutes): .*\n/gm, (line) => line.repeat(2), 'next line'),
  rewritten('frontmatter without its last fence', 8, /^(---\n)(?!(?:#|title))/gm, () => '', 'frontmatter'),
  rewritten('frontmatter without its first fence', 8, /^(---\n)(?=#|title)/gm, () => ''),
  rewritten('curly brackets in the text', 8, /(?<=\w\. )(?=[A-Z][a-z]+ )/g, () => 'Expect {4-20} mA. '),
  rewritten('`<` before a number', 8, /(?<=\w\. )(?=[A-Z][a-z]+ )/g, () => 'Keep it <5 mm. '),
  rewritten('self-closing slash left out', 8, / \/>/g, () => '>'),
  rewritten('element misspelt', 8, /<(Tag|Page|Include|Part|Reading) /g, misspelt),
  rewritten('attribute misspelt', 8, /<(?:Tag|Part|Drawing|Reading|Include) (id|number|at|caution)=/g, (name) => `${name}s`),
  rewritten('value of an attribute misspelt', 8, /(?:severity|of|at)="([^"]+)"/g, (value) => value.replace(/.$/, '')),
  rewritten('reading with a decimal comma', 8, /(?:low|high)="([\d.]+)"/g, (value) => `${value.replace('.', '')},5`),
  rewritten('reading with low above high', 4, /low="([\d.]+)" high/g, (value) => `${Number(value) * 1000}`),
  rewritten('steps outside a list', 6, /(?<=\n\n)<Steps>\n[\s\S]*?\n<\/Steps>\n/g, (list) => list.replace(/<\/?Steps>/g, '')),
  rewritten('path of a picture in other case', 3, /^figure: (.*)$/gm, (path) => path.toLowerCase()),
  rewritten('sheet on a page: one more', 8, /sheet="(\d)"/g, (sheet) => String(Number(sheet) + 1)),
  rewritten('time of a page in words', 6, /^minutes: (\d+)$/gm, () => 'an hour'),
  rewritten(
    'sentence that claims another kind',
    6,
    /(?:The|the) (cylinder|pin|isolator|light curtain|stop button|air valve)(?:,)? <Tag/g,
    () => 'temperature sensor',
  ),
  rewritten('address outside the manual', 4, /(?<=\w\. )(?=[A-Z][a-z]+ )/g, () => 'See [the site](https://example.org/manual). '),
]

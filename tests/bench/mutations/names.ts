import type { Random } from '../random.ts'
import { also, type Kind, type Mistake, mentions, type Piece, replaced } from './mistake.ts'
import type { Example, TableFile } from './read-example.ts'
import { doubled, enDash, hyphenPutIn, leftOut, letterForZero, lowerCase, neighboursSwapped, otherDigit, type Slip } from './slips.ts'

type Known = keyof Example['known']
type Draft = Omit<Mistake, 'kind'>

/** A slip in names that stand in some places. */
function slipped(name: string, count: number, slip: Slip, pieces: (example: Example) => readonly Piece[], known?: Known): Kind {
  return {
    name,
    count,
    *make(example, random) {
      for (const piece of random.sample(pieces(example), count)) {
        const value = slip(piece.value, random)
        if (value === undefined || value === piece.value) continue
        yield withName(example, replaced(example.files, piece, value), value, known)
      }
    },
  }
}

function withName({ known }: Example, draft: Draft, value: string, kind?: Known): Draft {
  return kind && known[kind].has(value) ? { ...draft, beyond: 'another real thing' } : draft
}

/** A slip in the list that a name comes from: found there, or where the name was used before. */
function renamed(name: string, count: number, slip: Slip, table: TableFile, known: Known): Kind {
  return {
    name,
    count,
    *make(example, random) {
      for (const piece of random.sample(cells(example, table, example.tables[table].key), count)) {
        const value = slip(piece.value, random)
        if (value === undefined || value === piece.value) continue
        const draft = replaced(example.files, piece, value)
        yield withName(example, also(draft, [...mentions(draft.files, piece.value), ...mentions(draft.files, value)]), value, known)
      }
    },
  }
}

const onPages = (names: string) => (example: Example) => example.named.filter((piece) => piece.names === names)

export function cells(example: Example, table: TableFile, heading: string): Piece[] {
  return example.tables[table].rows.flatMap((row) => row.cells.get(heading) ?? []).filter(({ value }) => value !== '')
}

const inTable = (table: TableFile, heading: string) => (example: Example) => cells(example, table, heading)

/** The single names of cells or lines that hold several. */
const single = (pieces: (example: Example) => readonly Piece[], pattern: RegExp) => (example: Example) =>
  pieces(example).flatMap(({ file, start, value }) =>
    [...value.matchAll(pattern)].map(
      (match): Piece => ({ file, value: match[0], start: start + match.index, end: start + match.index + match[0].length }),
    ),
  )

const wholeFile = (file: string) => (example: Example) => [{ file, start: 0, end: 0, value: String(example.files.get(file)) }]

/** Tags that stand in running text, in no element and no frontmatter. */
function bareTags(example: Example): Piece[] {
  return single(
    ({ pages, files }) => pages.map((file) => ({ file, start: 0, end: 0, value: String(files.get(file)) })),
    /(?<![\w"#/-])[A-Z]{2,4}\d{3}(?![\w"-])/g,
  )(example).filter(({ start, file, value }) => example.known.tag.has(value) && !example.named.some((it) => it.file === file && it.start === start))
}

const alphabet = 'abcdefghijklmnopqrstuvwxyz'
const otherLetter: Slip = (name, random: Random) => {
  const at = random.pick([...name.matchAll(/[a-z]/g)].map(({ index }) => index))
  if (at === undefined) return undefined
  return name.slice(0, at) + alphabet[(alphabet.indexOf(name[at] ?? 'a') + 1 + random.below(25)) % 26] + name.slice(at + 1)
}

export const nameKinds: readonly Kind[] = [
  slipped('tag on a page: a digit', 30, otherDigit, onPages('tag'), 'tag'),
  slipped('tag on a page: neighbours swapped', 20, neighboursSwapped, onPages('tag'), 'tag'),
  slipped('tag on a page: letter O for 0', 12, letterForZero, onPages('tag'), 'tag'),
  slipped('tag on a page: a character left out', 12, leftOut, onPages('tag'), 'tag'),
  slipped('tag on a page: a character doubled', 8, doubled, onPages('tag'), 'tag'),
  slipped('tag on a page: small letters', 6, lowerCase, onPages('tag'), 'tag'),
  slipped('tag on a page: a hyphen put in', 6, hyphenPutIn, onPages('tag'), 'tag'),
  slipped('tag in plain text: a digit', 12, otherDigit, bareTags, 'tag'),
  slipped('tag in plain text: letter O for 0', 6, letterForZero, bareTags, 'tag'),
  slipped('tag in the I/O list: a digit', 20, otherDigit, inTable('io-list', 'Tag'), 'tag'),
  slipped('tag in the I/O list: neighbours swapped', 10, neighboursSwapped, inTable('io-list', 'Tag'), 'tag'),
  renamed('tag in the device list: a digit', 20, otherDigit, 'devices', 'tag'),
  renamed('tag in the device list: neighbours swapped', 10, neighboursSwapped, 'devices', 'tag'),
  renamed('tag in the device list: letter O for 0', 6, letterForZero, 'devices', 'tag'),
  slipped('tag in the alarm list: a digit', 12, otherDigit, single(inTable('alarms', 'Devices'), /\S+/g), 'tag'),
  slipped('tag in an alarm text: a digit', 8, otherDigit, single(inTable('alarms', 'Trigger'), /\b[A-Z]{2,4}\d{3}\b/g), 'tag'),
  slipped('tag in the formats: a digit', 6, otherDigit, inTable('formats', 'tag'), 'tag'),
  slipped(
    'tag of an energy source: a digit',
    12,
    otherDigit,
    single(wholeFile('data/energy.yaml'), /(?<=(?:tag: |tags: \[|, ))[A-Z]{2,4}\d{3}(?=[\],\n])/g),
    'tag',
  ),
  slipped('tag in an energy text: a digit', 6, otherDigit, single(wholeFile('data/energy.yaml'), /(?<=\w )[A-Z]{2,4}\d{3}\b/g), 'tag'),
  slipped('part number on a page: a digit', 12, otherDigit, onPages('part'), 'part'),
  slipped('part number on a page: en dash for hyphen', 6, enDash, onPages('part'), 'part'),
  slipped('part number in the device list: a digit', 15, otherDigit, inTable('devices', 'part'), 'part'),
  renamed('part number in the bill: a digit', 15, otherDigit, 'bom', 'part'),
  slipped('drawing number on a page: a digit', 8, otherDigit, onPages('drawing'), 'drawing'),
  slipped('drawing number on a page: en dash for hyphen', 6, enDash, onPages('drawing'), 'drawing'),
  slipped('drawing number in the device list: a digit', 12, otherDigit, inTable('devices', 'drawing'), 'drawing'),
  renamed('drawing number in the register: a digit', 6, otherDigit, 'drawings', 'drawing'),
  slipped('alarm number on a page: a digit', 12, otherDigit, onPages('alarm'), 'alarm'),
  renamed('alarm number in the list: a digit', 8, otherDigit, 'alarms', 'alarm'),
  slipped('card in the I/O list: a digit', 8, otherDigit, inTable('io-list', 'Card'), 'card'),
  ...['page', 'caution', 'term', 'option', 'lockout', 'lesson', 'role', 'energy source', 'area', 'technology'].map((names) =>
    slipped(`${names} on a page: a letter`, names === 'page' || names === 'caution' ? 10 : 6, otherLetter, onPages(names)),
  ),
  slipped('area in the device list: a letter', 6, otherLetter, inTable('devices', 'area')),
  slipped('option in the bill: a letter', 4, otherLetter, inTable('bom', 'Option')),
  slipped('lesson in training: a letter', 6, otherLetter, single(wholeFile('training.yaml'), /(?<=lessons: \[.*)[a-z][a-z0-9-]+/g)),
  slipped('option of a unit: a letter', 3, otherLetter, single(wholeFile('machine.yaml'), /(?<=fitted: \[.*)[a-z][a-z-]+/g)),
]

import fc from 'fast-check'
import type { Files } from '../example.ts'
import { type Random, seededRandom } from '../random.ts'
import { mangled, mangledBytes } from './mangle.ts'
import { mangledWorkbook } from './mangle-workbook.ts'
import type { Seeds } from './seeds.ts'
import { type TextFormat, tokens } from './tokens.ts'

export interface Input {
  index: number
  /** Which files are damaged, and how the input was made. */
  what: string
  files: Files
}

const formats = ['csv', 'yaml', 'mdx', 'svg', 'machine.yaml', 'workbook', 'plcopen', 'symbols', 'accepted', 'workbook'] as const
type Format = (typeof formats)[number]

/** The files of each format, and the machines that hold them. */
const where: Readonly<Record<Format, { seeds: readonly (keyof Seeds)[]; holds(path: string): boolean }>> = {
  csv: { seeds: ['sound', 'sound', 'dispenser'], holds: (path) => path.endsWith('.csv') && path !== 'data/variables.csv' },
  yaml: { seeds: ['sound', 'sound', 'sound', 'slitter'], holds: (path) => path.endsWith('.yaml') && !/^(?:machine|accepted)\.yaml$/.test(path) },
  mdx: { seeds: ['sound', 'sound', 'sound', 'slitter', 'dispenser'], holds: (path) => path.endsWith('.mdx') },
  svg: { seeds: ['sound', 'sound', 'dispenser'], holds: (path) => path.endsWith('.svg') },
  'machine.yaml': { seeds: ['sound', 'sound', 'workbooks', 'slitter', 'variables', 'dispenser'], holds: (path) => path === 'machine.yaml' },
  workbook: { seeds: ['workbooks', 'workbooks', 'slitter'], holds: (path) => path.endsWith('.xlsx') },
  plcopen: { seeds: ['slitter', 'variables'], holds: (path) => path.endsWith('.xml') },
  symbols: { seeds: ['workbooks'], holds: (path) => path === 'data/variables.csv' },
  accepted: { seeds: ['workbooks', 'dispenser'], holds: (path) => path === 'accepted.yaml' },
}

const small = ['sound', 'workbooks', 'slitter', 'variables', 'dispenser'] as const

/** The input with this number. Each is made by itself, so that one can be made again. */
export function makeInput(index: number, seed: number, seeds: Seeds): Input {
  const random = seededRandom(seed * 1_000_003 + index)
  // One in fifty is the whole example, which takes a hundred times as long.
  if (index % 50 === 0) return folder(index, seeds, 'example', random)
  if (index % 5 === 0) return folder(index, seeds, index % 10 === 0 ? 'sound' : (random.pick(small) ?? 'sound'), random)
  const format = random.pick(formats) ?? 'csv'
  const name = random.pick(where[format].seeds) ?? 'sound'
  const path = random.pick([...seeds[name].keys()].filter(where[format].holds)) ?? 'machine.yaml'
  const files = new Map(seeds[name])
  const made = (content: string | Uint8Array, how: string): Input => ({
    index,
    what: `${name}: ${path} ${how}`,
    files: files.set(path, content),
  })
  if (format === 'workbook') return made(mangledWorkbook(bytesOf(seeds[name].get(path)), random), 'mangled')
  const how = random.below(4)
  // Much of what is read comes from the larger machine, put in the place of a small file.
  const content = (how === 0 && name === 'sound' && seeds.example.get(samePlace(path, seeds, random))) || (seeds[name].get(path) ?? '')
  if (how === 1 || typeof content !== 'string') return made(mangledBytes(bytesOf(content), random), 'bytes changed')
  if (how === 3) return made(written(format, random), 'written from pieces')
  return made(mangled(content, random), how === 0 && name === 'sound' ? 'from the example, mangled' : 'mangled')
}

const bytesOf = (content: string | Uint8Array | undefined) =>
  typeof content === 'string' ? new TextEncoder().encode(content) : (content ?? new Uint8Array())

function samePlace(path: string, { example }: Seeds, random: Random): string {
  if (example.has(path)) return path
  const folder = path.replace(/[^/]+$/, '')
  const ending = path.slice(path.lastIndexOf('.'))
  return random.pick([...example.keys()].filter((it) => it.startsWith(folder) && it.endsWith(ending))) ?? 'machine.yaml'
}

/** A text of a format's own pieces and any characters, from fast-check. */
function written(format: TextFormat, random: Random): string {
  const piece = fc.oneof(
    { weight: 8, arbitrary: fc.constantFrom(...tokens[format]) },
    { weight: 1, arbitrary: fc.string({ unit: 'binary' }) },
    { weight: 1, arbitrary: fc.double().map(String) },
  )
  const [pieces = []] = fc.sample(fc.array(piece, { maxLength: 60, size: 'max' }), { numRuns: 1, seed: random.below(2 ** 31) })
  const start = format === 'mdx' && random.below(2) === 0 ? '---\ntitle: T\n---\n' : ''
  return start + pieces.join('')
}

/** A whole folder with files mangled, gone, swapped, renamed or added. */
function folder(index: number, seeds: Seeds, name: keyof Seeds, random: Random): Input {
  const files = new Map(seeds[name])
  const done: string[] = []
  for (let left = 1 + random.below(6); left > 0; left--) {
    const [one = 'machine.yaml', two = 'machine.yaml'] = random.sample([...files.keys()], 2)
    const [first = '', second = ''] = [files.get(one), files.get(two)]
    const change = random.below(7)
    if (change === 0) files.delete(one)
    else if (change === 1) files.set(one, second).set(two, first)
    else if (change === 2) files.set(one, '')
    else if (change === 3)
      files.set(
        random.pick([one.toUpperCase(), `${one}.bak`, one.replace(/\.\w+$/, '.es.mdx'), `pages/${one}`, one.replace('/', '\\'), `drawings/${one}`]) ??
          one,
        first,
      )
    else if (one.endsWith('.xlsx')) files.set(one, mangledWorkbook(bytesOf(first), random))
    else if (change === 4 || typeof first !== 'string') files.set(one, mangledBytes(bytesOf(first), random))
    else files.set(one, mangled(first, random))
    done.push(`${['deleted', 'swapped', 'emptied', 'copied', 'bytes changed', 'mangled', 'mangled'][change]} ${one}`)
  }
  return { index, what: `${name}: ${done.join(', ')}`, files }
}

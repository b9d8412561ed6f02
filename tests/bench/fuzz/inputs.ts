import fc from 'fast-check'
import { type Files, readFiles } from '../example.ts'
import { type Random, seededRandom } from '../random.ts'
import { mangled, mangledBytes } from './mangle.ts'

export interface Input {
  index: number
  /** Which files are damaged, and how the input was made. */
  what: string
  files: Files
}

/** The two machines that inputs are made from: every input is one of them with something broken. */
export interface Seeds {
  sound: Files
  example: Files
}

/** The sound machine comes with a few pages of the shared content only: it must be quick to check. */
export function readSeeds(): Seeds {
  const small = /^content\/(?:glossary|lessons\/check-pressure|lessons\/stop|cautions\/(?:dc-bus|live))/
  const sound = [...readFiles('tests/fixtures/sound-machine', 'content')].filter(([path]) => !path.startsWith('content/') || small.test(path))
  return { sound: new Map(sound), example: readFiles('example-machine', 'content') }
}

const formats = ['csv', 'yaml', 'mdx', 'svg', 'machine.yaml'] as const
type Format = (typeof formats)[number]

const tokens: Record<Format, readonly string[]> = {
  csv: [
    'tag',
    'kind',
    'number',
    'description',
    'type',
    'address',
    ',',
    ';',
    '\t',
    '"',
    '""',
    '\n',
    '\r\n',
    '\r',
    ' ',
    'PS-101',
    '1',
    '1,5',
    '%IX0.0',
    'DI',
    'fan',
    '|',
    'sep=;\n',
    '\ufeff',
    'é',
  ],
  yaml: [
    'sources',
    'roles',
    'id',
    ': ',
    ':',
    '\n',
    '\n  ',
    '\n    ',
    '- ',
    '[',
    ']',
    '{',
    '}',
    ', ',
    '"',
    "'",
    '|',
    '>',
    '#',
    ' ',
    '&a',
    '*a',
    '!!str',
    '~',
    'null',
    '1',
    '1.10',
    'PS-101',
    '\t',
    '---',
    '...',
    '? ',
    '<<',
    '%',
  ],
  mdx: [
    '---\n',
    'title: T\n',
    'alarm: A01\n',
    '# ',
    '## ',
    '\n',
    '\n\n',
    '<Steps>',
    '</Steps>',
    '<Step>',
    '</Step>',
    '<Tag id="PS-101" />',
    '<Tag',
    ' id=',
    '"',
    '/>',
    '>',
    '{',
    '}',
    '{/* x */}',
    '[a](b#c)',
    '![a](b)',
    '[a]: b\n',
    '[^1]',
    '- ',
    '1. ',
    '> ',
    '| a | b |\n| - | - |\n',
    '```\n',
    '**',
    '_',
    '<',
    '&lt;',
    'text ',
    '    ',
    '\t',
    '<Fitted option="fan">',
    '</Fitted>',
    '<Fact of="tag" />',
    '<a.b:c>',
    '<>',
    '</>',
    '<Tag {...x} />',
    '\\',
    'export ',
  ],
  svg: [
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10">',
    '</svg>',
    '<text x="1" y="2">',
    '</text>',
    'PS-101',
    '<tspan x="1" y="1">',
    '</tspan>',
    '<g transform="rotate(30) matrix(1 2)">',
    '</g>',
    '<!DOCTYPE svg [<!ENTITY a "b">]>',
    '&a;',
    '<![CDATA[',
    ']]>',
    '<?xml version="1.0"?>',
    '<!--',
    '-->',
    '<style>',
    '</style>',
    '<script>x</script>',
    'viewBox="a b c d"',
    ' ',
    '\n',
    '<use xlink:href="#a"/>',
    '<a:b/>',
    '&#x1F680;',
    '&#0;',
  ],
  'machine.yaml': [
    'id: tiny\n',
    'model: P 10\n',
    'name: Press\n',
    'builder: Nobody\n',
    'document: D-1\n',
    'revision: A\n',
    "date: '2026-01-01'\n",
    'designation: ',
    'nfpa79\n',
    "{ pattern: '",
    '[A-Z]+',
    '(',
    '\\d',
    "' }\n",
    'languages: { source: en }\n',
    'units: [{ serial: X, fitted: [fan] }]\n',
    'data: {}\n',
    'data:\n  devices: { file: ',
    'data/devices.csv',
    '../../etc',
    ' }\n',
    'areas:\n',
    'columns: { tag: Tag }',
    '__proto__: 1\n',
    'constructor: {}\n',
  ],
}

const places: Record<Format, (path: string) => boolean> = {
  csv: (path) => path.endsWith('.csv'),
  yaml: (path) => path.endsWith('.yaml') && path !== 'machine.yaml',
  mdx: (path) => path.endsWith('.mdx'),
  svg: (path) => path.endsWith('.svg'),
  'machine.yaml': (path) => path === 'machine.yaml',
}

/** The input with this number. Each is made by itself, so that one can be made again. */
export function makeInput(index: number, seed: number, seeds: Seeds): Input {
  const random = seededRandom(seed * 1_000_003 + index)
  // One in fifty is the whole example, which takes a hundred times as long.
  if (index % 50 === 0) return folder(index, seeds.example, 'example', random)
  if (index % 5 === 0) return folder(index, seeds.sound, 'sound machine', random)
  const format = formats[index % 7 === 6 ? random.below(formats.length) : index % formats.length] ?? 'csv'
  const path = random.pick([...seeds.sound.keys()].filter(places[format])) ?? 'machine.yaml'
  const files = new Map(seeds.sound)
  const how = random.below(4)
  // Much of what is read comes from the larger machine, put in the place of a small file.
  const text = String(seeds[how === 0 ? 'example' : 'sound'].get(samePlace(path, seeds, how === 0, random)))
  if (how === 1) files.set(path, mangledBytes(text, random))
  else if (how === 3) files.set(path, written(format, random))
  else files.set(path, mangled(text, random))
  return { index, what: `${path} ${['from the example, mangled', 'bytes changed', 'mangled', 'written from pieces'][how]}`, files }
}

function samePlace(path: string, { example }: Seeds, larger: boolean, random: Random): string {
  if (!larger || example.has(path)) return path
  const folder = path.replace(/[^/]+$/, '')
  const ending = path.slice(path.lastIndexOf('.'))
  return random.pick([...example.keys()].filter((it) => it.startsWith(folder) && it.endsWith(ending))) ?? 'machine.yaml'
}

/** A text of a format's own pieces and any characters, from fast-check. */
function written(format: Format, random: Random): string {
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
function folder(index: number, base: Files, name: string, random: Random): Input {
  const files = new Map(base)
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
    else if (change === 4) files.set(one, mangledBytes(String(first), random))
    else files.set(one, mangled(String(first), random))
    done.push(`${['deleted', 'swapped', 'emptied', 'copied', 'bytes changed', 'mangled', 'mangled'][change]} ${one}`)
  }
  return { index, what: `${name}: ${done.join(', ')}`, files }
}

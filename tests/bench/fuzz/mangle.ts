import type { Random } from '../random.ts'

/** Damages a text in one way. */
type Damage = (text: string, random: Random) => string

const lines =
  (change: (lines: string[], random: Random) => void): Damage =>
  (text, random) => {
    const all = text.split('\n')
    change(all, random)
    return all.join('\n')
  }

const insert =
  (pieces: readonly string[]): Damage =>
  (text, random) => {
    const at = random.below(text.length + 1)
    return text.slice(0, at) + (random.pick(pieces) ?? '') + text.slice(at)
  }

const controls = ['\u0000', '\u0007', '\u0008', '\u000b', '\u000c', '\u001b[31m', '\u007f', '\u0085', '\u2028', '\u2029', '\r', '\t', '\n\n']
const strange = [
  '\ufeff',
  '\u200b',
  '\u202e',
  '\u0301',
  '\ud83d\ude80',
  '\ud83d',
  '\udc00',
  'İ',
  'ß',
  'ﬁ',
  '０',
  '１',
  'Ω',
  '𝟙',
  '\u00a0',
  '\uffff',
  '%00',
  '\\u0000',
]
const marks = [
  '"',
  "'",
  '""',
  '`',
  '```',
  '~~~',
  ',',
  ';',
  '\t',
  '|',
  '{',
  '}',
  '{{',
  '<',
  '>',
  '</',
  '/>',
  '<!--',
  '-->',
  '<![CDATA[',
  '&',
  '&#0;',
  '&amp;',
  '&lol;',
  '[',
  ']',
  '](',
  '![',
  '[^1]',
  '[^1]: ',
  '---\n',
  '\n---\n',
  '***',
  '$',
  '\\',
  ':',
  ': ',
  '- ',
  '? ',
  '!!binary ',
  '&a ',
  '*a',
  '<<: ',
  '|\n',
  '%YAML 1.2\n',
  '#',
  '#'.repeat(7),
  'import x from "y"\n',
  'export const x = 1\n',
  '<script>',
  '<Step>',
  '</Steps>',
  '<Tag id="',
  '<Fitted option="fan">\n\n',
  '{/* ',
  ' */}',
  '<text transform="rotate(',
  '<use href="#a" id="a"/>',
  '../',
  '__proto__',
  'constructor',
  'toString',
  'sep=;\n',
]
const numbers = [
  '1e309',
  '-0',
  '0x10',
  '99999999999999999999',
  '1_000',
  '0.1.2',
  'NaN',
  'Infinity',
  '-1',
  '0',
  '1e-400',
  '٣',
  '1,5',
  '007',
  '2147483648',
]

const damages: readonly Damage[] = [
  (text, random) => text.slice(0, random.below(text.length + 1)),
  (text, random) => text.slice(random.below(text.length + 1)),
  lines((all, random) => {
    const [one, two] = [random.below(all.length), random.below(all.length)]
    ;[all[one], all[two]] = [all[two] ?? '', all[one] ?? '']
  }),
  lines((all, random) => all.splice(random.below(all.length), 1 + random.below(3))),
  lines((all, random) => all.splice(random.below(all.length), 0, ...all.slice(random.below(all.length)).slice(0, 1 + random.below(5)))),
  lines((all, random) => {
    const at = random.below(all.length)
    all[at] = (random.pick(['  ', '\t', '    ', '- ', '> ', '# ']) ?? '') + (all[at] ?? '')
  }),
  insert(controls),
  insert(strange),
  insert(marks),
  insert(marks),
  (text, random) => {
    const at = random.below(text.length)
    return text.slice(0, at) + text.slice(at + 1 + random.below(6))
  },
  (text, random) => {
    const found = random.pick([...text.matchAll(/\d+/g)])
    return found ? text.slice(0, found.index) + random.pick(numbers) + text.slice(found.index + found[0].length) : text
  },
  (text, random) => {
    const found = random.pick([...text.matchAll(/[\p{L}\d-]+/gu)])
    return found ? text.slice(0, found.index) + random.pick([...strange, ...marks, ...numbers]) + text.slice(found.index + found[0].length) : text
  },
  (text) => text.replaceAll('\n', '\r\n'),
  (text) => text.replaceAll('\n', '\r'),
  (text) => `\ufeff${text}`,
  (text, random) =>
    text.replaceAll(random.pick([',', '"', ' ', '-', ':', '<', '>', '0', 'e']) ?? ',', random.pick([';', '', '\t', '"', '\u00a0', '–']) ?? ''),
  (text, random) => {
    const at = random.below(text.length + 1)
    const [open = '', close = ''] =
      random.pick([
        ['[', ']'],
        ['{', '}'],
        ['> ', ''],
        ['<Steps>\n\n', '\n\n</Steps>'],
        ['<g>', '</g>'],
        ['- ', ''],
        ['*', '*'],
        ['(', ')'],
        ['<Fitted option="fan">', '</Fitted>'],
        ['![', ']'],
        ['"', '"'],
      ] as const) ?? []
    const deep = random.pick([3, 40, 300, 2000]) ?? 3
    return text.slice(0, at) + open.repeat(deep) + close.repeat(random.below(2) * deep) + text.slice(at)
  },
  (text, random) => {
    const at = random.below(text.length + 1)
    return (
      text.slice(0, at) +
      (random.pick(['A', ' ', '0', 'é', '*', '_', '[', '`', '-', '|', '\\', 'a b ']) ?? '').repeat(random.pick([100, 3000, 20000]) ?? 100) +
      text.slice(at)
    )
  },
]

/** The text with one to four damages. */
export function mangled(text: string, random: Random): string {
  let out = text
  for (let left = 1 + random.below(4); left > 0; left--) out = (random.pick(damages) ?? ((same) => same))(out, random)
  return out
}

/** The bytes with some of them changed, or cut in the middle of a character. */
export function mangledBytes(original: Uint8Array, random: Random): Uint8Array {
  const bytes = original.slice()
  for (let left = 1 + random.below(20); left > 0 && bytes.length > 0; left--) bytes[random.below(bytes.length)] = random.below(256)
  return random.below(3) === 0 ? bytes.slice(0, random.below(bytes.length + 1)) : bytes
}

import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { collect } from '../../src/load/load-rules.ts'
import { checkShape } from '../../src/load/shape.ts'
import { parseYaml } from '../../src/load/yaml.ts'
import { identifier } from '../../src/model/schema/common.ts'
import type { Finding } from '../../src/source/finding.ts'
import { sourceText } from '../../src/source/source-text.ts'

const schema = z.strictObject({
  part: identifier,
  minutes: z.number().positive(),
  kind: z.enum(['start', 'stop']),
  tools: z.array(z.string()).optional(),
  place: z.strictObject({ x: z.number(), y: z.number() }).optional(),
})

/** Reads YAML as it stands in the frontmatter of a page: after a line of its own. */
function check(text: string): string[] {
  const findings: Finding[] = []
  const sink = collect(findings)
  const source = sourceText('a.mdx', `---\n${text}\n---\n`)
  const yaml = parseYaml(source, sink, 4, 4 + text.length)
  if (yaml) checkShape(schema, yaml, sink, 'the page')
  return findings.map(
    ({ rule, message, help, place }) => `${place.line}:${place.column}-${place.endColumn} ${message} [${rule}]${help ? ` ${help}` : ''}`,
  )
}

const sound = 'part: "007"\nminutes: 5\nkind: stop'

describe('YAML against a schema, with places in the file', () => {
  test.each([
    ['sound', sound, []],
    [
      'a part number without quotes',
      sound.replace('"007"', '0510210600'),
      ['2:7-17 `part` takes text, and holds `0510210600` [wrong-type] put it in quotes: `"0510210600"`'],
    ],
    [
      'a revision that looks like a number',
      sound.replace('"007"', '1.10'),
      ['2:7-11 `part` takes text, and holds `1.10` [wrong-type] put it in quotes: `"1.10"`'],
    ],
    ['text for a number', sound.replace('5', 'five'), ['3:10-14 `minutes` takes a number, and holds `five` [wrong-type]']],
    ['a number out of range', sound.replace('5', '0'), ['3:10-11 `minutes` is `0`, and must be more than 0 [wrong-type]']],
    ['a word that is not in the list', sound.replace('stop', 'stpo'), ['4:7-11 `kind` is `stpo` [wrong-type] write `stop`']],
    ['a missing key, placed at its owner', 'part: a\nkind: stop', ['2:1-5 the page has no `minutes` [missing-key]']],
    ['an unknown key', `${sound}\ncolour: red`, ['5:1-7 `colour` is not known in the page [unknown-key] remove it, or correct its spelling']],
    [
      'a misspelt key is one finding, not two',
      sound.replace('minutes', 'minuets'),
      ['3:1-8 `minuets` is not known in the page [unknown-key] write `minutes`, or remove it'],
    ],
    ['deep in a list', `${sound}\ntools: [meter, 12]`, ['5:16-18 `tools[2]` takes text, and holds `12` [wrong-type] put it in quotes: `"12"`']],
    ['deep in a map', `${sound}\nplace: { x: 1 }`, ['5:8-16 `place` has no `y` [missing-key]']],
    ['a key twice', `${sound}\nkind: start`, ['5:1-5 the key `kind` is written twice [yaml-syntax] keep one of them']],
    ['broken YAML', `${sound}\ntools: [a`, ['5:10-10 a `]` is missing [yaml-syntax]']],
    ['anchors', 'part: &a x\nminutes: 5\nkind: *a', ['4:7-9 `*a` refers to an anchor [yaml-alias] write the value out here']],
  ])('%s', (_, text, expected) => expect(check(text)).toEqual(expected))

  test('a YAML bomb is refused at its first alias, at once', () => {
    const lines = [
      'a0: &a0 [x, x, x, x, x, x, x, x, x]',
      ...Array.from({ length: 30 }, (_, n) => `a${n + 1}: &a${n + 1} [${Array(9).fill(`*a${n}`).join(', ')}]`),
    ]
    const began = performance.now()
    expect(check(lines.join('\n'))).toEqual(['3:10-13 `*a0` refers to an anchor [yaml-alias] write the value out here'])
    expect(performance.now() - began).toBeLessThan(2000)
  })
})

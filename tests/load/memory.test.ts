import fc from 'fast-check'
import { expect, test } from 'vitest'
import { rules } from '../../src/check/rules.ts'
import { checkLoaded } from '../../src/check/run.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import { keepingMemory, noMemory } from '../../src/load/memory.ts'
import { foldersOf, readFiles } from '../bench/example.ts'

/** Words that stand in many files: one of them in the place of another is a mistake of every kind. */
const words = /[\p{L}\p{N}_.-]{2,}/gu

/** A slip of the hand in a file: characters taken out, others put in, or a word that stands elsewhere in the place of one. */
const slip = fc.record({
  what: fc.constantFrom('characters', 'characters', 'word', 'word', 'gone', 'back'),
  file: fc.nat(),
  at: fc.nat(20_000),
  taken: fc.nat(12),
  put: fc.constantFrom('', '\n', '0', 'PS-109', '<Tag id="PS-101" />', '<Fitted option="fan">', '---', ',', '{'),
})
type Slip = typeof slip extends fc.Arbitrary<infer T> ? T : never

function edited(text: string, { what, at, taken, put }: Slip): string {
  if (what === 'characters') {
    const offset = at % (text.length + 1)
    return text.slice(0, offset) + put + text.slice(offset + taken)
  }
  const all = [...text.matchAll(words)]
  const [one, other] = [all[at % all.length], all[(at * 7 + taken) % all.length]]
  return one && other ? text.slice(0, one.index) + other[0] + text.slice(one.index + one[0].length) : text
}

const check = (files: ReadonlyMap<string, string | Uint8Array>, memory = noMemory) => {
  const { machine, content } = foldersOf(files)
  const loaded = loadMachine(machine, content, undefined, undefined, memory)
  const [first] = loaded.machines
  return { findings: checkLoaded(loaded, rules), lost: loaded.lost, texts: loaded.texts, references: first?.references.length, inputs: first?.inputs }
}

test.each([
  { name: 'the sound machine', machine: 'tests/fixtures/sound-machine', runs: 40 },
  { name: 'the roll slitter, with a workbook and variables of the controller', machine: 'tests/fixtures/machines/roll-slitter', runs: 10 },
  { name: 'the example', machine: 'example-machine', runs: 5 },
])(
  '$name, read again after edits, gives what a first reading gives',
  ({ machine, runs }) => {
    const all = readFiles(machine, 'content')
    // Two shared lessons are as good as seventy for a small machine, and each run reads all of them.
    const untouched = new Map([...all].filter(([path]) => runs <= 5 || !/^content\/lessons\/(?!stop-and-lock|check-process)/.test(path)))
    const paths = [...untouched.keys()]
    fc.assert(
      fc.property(fc.array(slip, { minLength: 1, maxLength: 5 }), (slips) => {
        const memory = keepingMemory()
        const files = new Map(untouched)
        check(files, memory)
        for (const it of slips) {
          const path = paths[it.file % paths.length] ?? ''
          const before = files.get(path)
          const original = untouched.get(path)
          if (it.what === 'gone') files.delete(path)
          else if (it.what === 'back' && original !== undefined) files.set(path, original)
          else if (typeof before === 'string') files.set(path, edited(before, it))
          expect(check(files, memory)).toEqual(check(files))
        }
      }),
      { numRuns: runs * Number(process.env.FETTLE_RUNS ?? 1) },
    )
  },
  120_000 * Number(process.env.FETTLE_RUNS ?? 1),
)

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { rules } from '../../src/check/rules.ts'
import { checkLoaded } from '../../src/check/run.ts'
import { diskFolder, memoryFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import { noMemory, textMemory } from '../../src/load/memory.ts'

const sound = diskFolder('tests/fixtures/sound-machine', '')
const shared = memoryFolder(new Map(), 'content/')
const paths = sound.list()
const text = (path: string) => new TextDecoder().decode(sound.read(path))

/** A slip of the hand somewhere in a file: characters taken out, others put in. */
const edit = fc.record({
  path: fc.constantFrom(...paths),
  at: fc.nat(3000),
  taken: fc.nat(12),
  put: fc.constantFrom('', '\n', '0', 'PS-109', '<Tag id="PS-101" />', '---', ',', '{'),
})

test('a folder that is read again after edits gives what a first reading gives', () => {
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 5 }), (edits) => {
      const memory = textMemory()
      const files = new Map<string, string>(paths.map((path) => [path, text(path)]))
      for (const { path, at, taken, put } of edits) {
        const before = files.get(path) ?? ''
        const offset = Math.min(at, before.length)
        files.set(path, before.slice(0, offset) + put + before.slice(offset + taken))
        const check = (kept: typeof memory) => checkLoaded(loadMachine(memoryFolder(files), shared, undefined, undefined, kept), rules)
        expect(check(memory)).toEqual(check(noMemory))
      }
    }),
    { numRuns: 60 },
  )
})

import { appendFileSync, cpSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest'
import { commands } from '../../src/cli/commands.ts'
import { toolHash } from '../../src/cli/kept-key.ts'
import { machineToBuild } from '../../src/cli/machine-to-build.ts'
import { parseOptions } from '../../src/cli/options.ts'
import { buildKeeper, unusedByBuild } from '../../src/cli/portfolio/kept-build.ts'
import { startProgress } from '../../src/cli/progress.ts'
import { editFile } from './edit-file.ts'
import { runFettle } from './run-fettle.ts'

const epoch = '1780000000'
let kept: string
let dir: string
const at = (path: string) => join(dir, path)
const edit = (path: string, was: string, is: string) => editFile(at(path), was, is)

/** A machine is built once, and copied for each case. */
beforeAll(async () => {
  kept = mkdtempSync(join(tmpdir(), 'fettle-'))
  cpSync('content', join(kept, 'content'), { recursive: true })
  cpSync('tests/fixtures/sound-machine/photos/press.svg', join(kept, 'content/photos/never-shown.svg'))
  cpSync('tests/fixtures/sound-machine', join(kept, 'machine'), { recursive: true })
  cpSync(join(kept, 'machine/pages/front/care.mdx'), join(kept, 'machine/pages/front/more.mdx'))
  const words = ['build', join(kept, 'machine'), '--jobs', '1', '--shared', join(kept, 'content'), '--out', join(kept, 'out')]
  expect((await runFettle(words, { SOURCE_DATE_EPOCH: epoch })).stdout).toContain('1 machine: 1 built;')
}, 120_000)
afterAll(() => rmSync(kept, { recursive: true, force: true }))

beforeEach(() => {
  vi.stubEnv('SOURCE_DATE_EPOCH', epoch)
  vi.spyOn(process.stderr, 'write').mockReturnValue(true)
  dir = mkdtempSync(join(tmpdir(), 'fettle-'))
  cpSync(kept, dir, { recursive: true })
})
afterEach(() => {
  vi.unstubAllEnvs()
  vi.restoreAllMocks()
  rmSync(dir, { recursive: true, force: true })
})

/** Whether the build is left: at once, after a check, or not at all. */
async function left({ more = [], tool }: { more?: readonly string[]; tool?: string } = {}): Promise<'at once' | 'after a check' | 'not'> {
  const spec = commands.build
  if (!spec) throw new Error('no command')
  const options = parseOptions([at('machine'), '--shared', at('content'), ...more], spec)
  const keeper = buildKeeper(options, at('out/tiny'), tool)
  if (!keeper) throw new Error('a file cannot be read')
  if (await keeper.unchanged()) return 'at once'
  const sound = await machineToBuild(at('machine'), options, startProgress(), '', keeper.folders)
  if ('refused' in sound) throw new Error('the change brought an error')
  return (await keeper.unchangedAs(sound)) ? 'after a check' : 'not'
}

describe('a build is left at once', () => {
  test('where nothing has changed, wherever it lies', async () => expect(await left()).toBe('at once'))

  test('after what is in no list of its folders', async () => {
    writeFileSync(at('machine/.notes'), 'x')
    expect(await left()).toBe('at once')
  })
})

const unseen: readonly [what: string, change: () => void][] = [
  ['another day', () => vi.stubEnv('SOURCE_DATE_EPOCH', '1790000000')],
  ['a shared lesson about what it has not', () => appendFileSync(at('content/lessons/check-inductive.mdx'), '\nMore.\n')],
  ['such a lesson that is gone', () => rmSync(at('content/lessons/check-inductive.mdx')) ?? rmSync(at('content/lessons/check-inductive.es.mdx'))],
  [
    'such a lesson under another name',
    () =>
      renameSync(at('content/lessons/check-lamp.mdx'), at('content/lessons/see-lamp.mdx')) ??
      renameSync(at('content/lessons/check-lamp.es.mdx'), at('content/lessons/see-lamp.es.mdx')),
  ],
  ['a shared picture that no page shows', () => appendFileSync(at('content/photos/never-shown.svg'), '<!-- x -->')],
  ['a file of the shared content that is no page', () => writeFileSync(at('content/notes.txt'), 'x')],
]

describe('a build is left after a check, and the next time at once, with', () => {
  test.each(unseen)('%s', async (_, change) => {
    change()
    expect(await left()).toBe('after a check')
    expect(await left()).toBe('at once')
  })
})

test('a translation into a language that the machine has not leaves the build of it', async () => {
  // A machine in one language, whose build is made beside the first.
  edit('machine/machine.yaml', 'languages: { source: en, translations: [es], complete: { es: [] } }', 'languages: { source: en }')
  rmSync(at('machine/pages/front/care.es.mdx'))
  const words = ['build', at('machine'), '--jobs', '1', '--shared', at('content'), '--out', at('out'), '--no-zip']
  expect((await runFettle(words, { SOURCE_DATE_EPOCH: epoch })).stdout).toContain('1 machine: 1 built;')
  const more = ['--no-zip']
  expect(await left({ more })).toBe('at once')
  edit('content/lessons/check-motor.es.mdx', 'Descargue el', 'Descargue ahora el')
  expect(await left({ more })).toBe('after a check')
  edit('content/lessons/check-motor.mdx', 'insulation', 'the insulation')
  expect(await left({ more })).toBe('not')
})

const seen: readonly [what: string, change: () => void][] = [
  ['a changed page', () => appendFileSync(at('machine/pages/front/use.mdx'), '\nMore.\n')],
  ['a page that is gone', () => rmSync(at('machine/pages/front/more.mdx'))],
  ['a new page', () => cpSync(at('machine/pages/front/more.mdx'), at('machine/pages/front/most.mdx'))],
  ['changed data', () => edit('machine/data/devices.csv', 'Supply pressure', 'Supply air')],
  ['another option', () => edit('machine/machine.yaml', 'options: { fan: Fan }', 'options: { fan: Large fan }')],
  ['a unit without an option', () => edit('machine/machine.yaml', "{ serial: '001', fitted: [fan] }", "{ serial: '001', fitted: [] }")],
  ['another serial number', () => edit('machine/machine.yaml', "serial: '001'", "serial: '003'")],
  ['a changed translation', () => appendFileSync(at('machine/pages/front/care.es.mdx'), '\n')],
  [
    'a language less',
    () => edit('machine/machine.yaml', ', translations: [es], complete: { es: [] }', '') ?? rmSync(at('machine/pages/front/care.es.mdx')),
  ],
  ['a changed picture', () => appendFileSync(at('machine/photos/press.svg'), '<!-- x -->')],
  ['a changed drawing', () => appendFileSync(at('machine/drawings/E-1.1.svg'), '<!-- x -->')],
  ['a shared lesson that it takes', () => edit('content/lessons/check-motor.mdx', 'insulation', 'the insulation')],
  ['the translation of such a lesson', () => edit('content/lessons/check-motor.es.mdx', 'Descargue el', 'Descargue ahora el')],
  ['a new shared lesson for what it has', () => cpSync(at('content/lessons/check-motor.mdx'), at('content/lessons/see-motor.mdx'))],
  [
    'a shared lesson that is now for what it has',
    () => edit('content/lessons/check-inductive.mdx', 'technology: [inductive]', 'technology: [inductive, motor]'),
  ],
  ['a shared lesson that is gone', () => rmSync(at('content/lessons/check-motor.mdx')) ?? rmSync(at('content/lessons/check-motor.es.mdx'))],
  ['the shared glossary', () => edit('content/glossary.yaml', 'proximity switch', 'proximity sensor')],
  ['a changed file of the build', () => appendFileSync(at('out/tiny/index.html'), ' ')],
  ['a missing file of the build', () => rmSync(at('out/tiny/links.csv'))],
  ['a file more in the build', () => writeFileSync(at('out/tiny/more.html'), 'x')],
  ['a missing manifest', () => rmSync(at('out/tiny/manifest.json'))],
  ['no build at all', () => rmSync(at('out/tiny'), { recursive: true })],
  ['a changed zip', () => appendFileSync(at('out/tiny.zip'), ' ')],
  ['a missing zip', () => rmSync(at('out/tiny.zip'))],
  ['nothing kept', () => rmSync(at('out/.tiny.built.json'))],
  ['what was kept cut short', () => writeFileSync(at('out/.tiny.built.json'), '{"format":"fettle-built-1"')],
]

describe('a build is made anew with', () => {
  test.each(seen)('%s', async (_, change) => {
    change()
    expect(await left()).toBe('not')
  })

  test('another version of Fettle', async () => expect(await left({ tool: 'another' })).toBe('not'))
  test('another option of the command', async () => expect(await left({ more: ['--no-zip'] })).toBe('not'))
})

test('a source that a build runs is part of the tool', () => {
  const [all, without] = [toolHash(unusedByBuild), toolHash(new Set([...unusedByBuild, 'site']))]
  expect(all).not.toBe(without)
})

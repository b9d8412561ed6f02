import { describe, expect, test } from 'vitest'
import { rules } from '../src/check/rules.ts'
import { checkLoaded } from '../src/check/run.ts'
import { diskFolder, memoryFolder } from '../src/load/folder.ts'
import { loadMachine } from '../src/load/load-machine.ts'

/** A slip of a writer or of an export: what stood there, what stands there now, and which rule finds it. */
interface Mistake {
  file: string
  was: string
  is: string
  rule: string
  /** Text of the line on which it is found, where that is not the changed one. */
  at?: string
  /** What else it makes true: the translation of a text that changed is older than it. */
  also?: string
}

const mistakes: Mistake[] = [
  {
    file: 'pages/alarms/a0201-lift-position.mdx',
    was: '<Tag id="CB201" />',
    is: '<Tag id="CB210" />',
    rule: 'unknown-tag',
    also: 'pages/alarms/a0201-lift-position.es.mdx:27 translation-outdated',
  },
  { file: 'pages/alarms/a0203-clamp-not-closed.mdx', was: '<Tag id="PI224" />', is: '<Tag id="PI-224" />', rule: 'unknown-tag' },
  { file: 'pages/alarms/a0202-lift-past-limit.mdx', was: '"3110-0309"', is: '"3110-0390"', rule: 'unknown-part' },
  { file: 'pages/components/destacking-lift.mdx', was: '<Drawing number="P-201" />', is: '<Drawing number="P-210" />', rule: 'unknown-drawing' },
  { file: 'pages/components/wash-tank.mdx', was: '<Alarm number="A0902" />', is: '<Alarm number="A0920" />', rule: 'unknown-alarm' },
  { file: 'pages/procedures/start-up.mdx', was: 'procedures/set-up-crate-format', is: 'procedures/set-up-format', rule: 'unknown-page' },
  {
    file: 'pages/lockout/lo-2.mdx',
    was: 'apply <Page id="lockout/lo-1" />',
    is: 'apply <Page id="lockout/lo-1#islate" />',
    rule: 'unknown-anchor',
    also: 'pages/lockout/lo-2.es.mdx:29 translation-outdated',
  },
  { file: 'pages/parts/pusher.mdx', was: 'figure: drawings/A-401.svg', is: 'figure: drawings/a-401.svg', rule: 'unknown-image' },
  { file: 'pages/procedures/clean-daily.mdx', was: 'caution="water-on-electrics"', is: 'caution="water-on-electric"', rule: 'unknown-caution' },
  {
    file: 'pages/alarms/a0501-rinse-temperature-low.mdx',
    was: 'number="E-105" sheet="1"',
    is: 'number="E-105" sheet="11"',
    rule: 'sheet-out-of-range',
  },
  { file: 'pages/front/how-it-works.mdx', was: '2. **Destacking lift.**', is: '2. **Destacking lift {4-20}.**', rule: 'expression-in-prose' },
  { file: 'pages/front/technical-data.mdx', was: 'All values are of', is: 'All values <5 % are of', rule: 'mdx-syntax' },
  { file: 'pages/lessons/machine-tour.mdx', was: 'minutes: 30', is: 'minutes: half an hour', rule: 'wrong-type' },
  { file: 'pages/procedures/stop.mdx', was: 'reader: operator', is: 'raeder: operator', rule: 'unknown-key' },
  { file: 'pages/alarms/a0102-light-curtain.mdx', was: '<Step>Step back.', is: '<Stpe/><Step>Step back.', rule: 'unknown-element' },
  { file: 'pages/alarms/a0901-air-pressure-low.mdx', was: 'low="5.5" high="6.5"', is: 'low="5,5" high="6.5"', rule: 'wrong-attribute' },
  { file: 'pages/alarms/a0301-no-prewash-water.mdx', was: '<Tag id="HV921" />', is: '<Tag it="HV921" id="HV921" />', rule: 'unknown-attribute' },
  { file: 'pages/components/pusher.mdx', was: 'Its parts are in', is: 'Listen to <Tag id="MTR601" />. Its parts are in', rule: 'not-fitted' },
  { file: 'pages/lockout/lo-1.mdx', was: 'mains-water, wash-liquid', is: 'mains-water, wash-liqiud', rule: 'unknown-energy-source' },
  { file: 'data/io-list.csv', was: '%IX0.4,I_LiftTop', is: '%IX0.3,I_LiftTop', rule: 'duplicate-address' },
  {
    file: 'data/devices.csv',
    was: 'PEC703,retro',
    is: 'PEC-703,sensor,sensor,Outfeed full,Salida llena,,outfeed,,,,,,,\nPEC703,retro',
    rule: 'duplicate-tag',
    at: 'PEC703,retro',
  },
  { file: 'data/bom.csv', was: 'Rodillo guía del carro del elevador,8,', is: 'Rodillo guía del carro del elevador,"8,5",', rule: 'wrong-type' },
  { file: 'data/alarms.csv', was: 'A0502;Rinse pressure low;', is: 'A0502;;', rule: 'missing-value' },
  { file: 'data/formats.csv', was: '4.5,m/min,DR701', is: '4.5,m/min,DR107', rule: 'unknown-tag' },
  { file: 'training.yaml', was: 'check-pt100', is: 'check-pt1000', rule: 'unknown-lesson' },
]

const machine = diskFolder('example-machine', '')
const shared = diskFolder('content', 'content/')

/** The example machine with some mistakes in it. */
function withMistakes(list: readonly Mistake[]): Map<string, string | Uint8Array> {
  const files = new Map<string, string | Uint8Array>(machine.list().map((path) => [path, machine.read(path)]))
  for (const { file, was, is } of list) {
    const before = files.get(file)
    const text = typeof before === 'string' ? before : new TextDecoder().decode(before)
    expect(text, file).toContain(was)
    files.set(
      file,
      text.replace(was, () => is),
    )
  }
  return files
}

function check(files: ReadonlyMap<string, string | Uint8Array>): string[] {
  return checkLoaded(loadMachine(memoryFolder(files), shared), rules).map(({ place, rule }) => `${place.file}:${place.line} ${rule}`)
}

/** File, line and rule with which a mistake must be found in the changed files, and what else it makes true. */
function expected({ file, is, rule, at, also }: Mistake, files: ReadonlyMap<string, string | Uint8Array>): string[] {
  const text = String(files.get(file))
  return [`${file}:${text.slice(0, text.indexOf(at ?? is)).split('\n').length} ${rule}`, ...(also ? [also] : [])]
}

describe('the example machine', () => {
  test('has no finding', () => expect(check(withMistakes([]))).toEqual([]))

  test.each(mistakes.map((mistake) => [`${mistake.file}: ${mistake.is}`, mistake] as const))('with one mistake: %s', (_, mistake) => {
    const files = withMistakes([mistake])
    expect(check(files).sort()).toEqual(expected(mistake, files).sort())
  })

  test('with 25 mistakes at once: each is found at its line, none is invented', () => {
    expect(mistakes.length).toBe(25)
    expect(new Set(mistakes.map(({ rule }) => rule)).size).toBeGreaterThan(20)
    const files = withMistakes(mistakes)
    expect(check(files).sort()).toEqual(mistakes.flatMap((mistake) => expected(mistake, files)).sort())
  })
})

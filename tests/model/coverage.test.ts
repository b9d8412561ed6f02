import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { limitsIn } from '../../src/checkout/checkout-of.ts'
import { type CoverageKind, coverageOf } from '../../src/model/coverage.ts'
import { graphOf } from '../../src/model/graph.ts'
import { type Changes, loadSound } from '../sound-machine.ts'

/** The shares of the first unit of the sound machine with some files changed, as `have/of`. */
function shares(changes: Record<string, string | undefined> = {}): Partial<Record<string, string>> {
  const files: Changes = new Map(Object.entries(changes))
  const [machine] = loadSound(files).machines
  if (!machine) throw new Error('no machine')
  const graph = graphOf(machine)
  return Object.fromEntries(coverageOf(machine, graph, limitsIn(machine, graph)).map(({ what, have, of }) => [what, `${have}/${of}`]))
}

const devices = (rows: string) => ({ 'data/devices.csv': `tag,kind,description,technology,area,x,y,place,drawing,fits\n${rows}` })
const recovery = (lines: string) => ({ 'pages/alarms/clamp.mdx': `---\ntitle: Clamp\nalarm: A01\n${lines}---\nLook.\n` })
const task = (lines: string, body = '') => ({ 'pages/procedures/job.mdx': `---\ntitle: Job\nminutes: 5\n${lines}---\n${body}\n` })
const parts = (rows: string) => ({ 'data/bom.csv': `number,description,quantity,spare,supersededBy\n100-01,Switch,2,none,\n${rows}` })
/** The sound machine with pages of `front` to be whole in Spanish. */
const scope = (list: string) => ({
  'machine.yaml': readFileSync('tests/fixtures/sound-machine/machine.yaml', 'utf8').replace('es: []', `es: [${list}]`),
})

test.each<[string, Record<string, string | undefined>, CoverageKind | 'pages in es' | 'pages that must be in es', string]>([
  [
    'a description that repeats the tag or is a filler is none',
    devices('PS-101,switch,PS-101\nPS-102,switch,TBD\nDISC1,isolator,Isolator\nMTR5,motor,Fan\n'),
    'devices with a description',
    '2/4',
  ],
  [
    'a device that no page names has none',
    devices('PS-101,switch,A\nPS-102,switch,B\nXX9,switch,C\nDISC1,isolator,D\nMTR5,motor,E\n'),
    'devices with a page',
    '4/5',
  ],
  [
    'a draft speaks of nothing',
    { ...devices('PS-101,switch,A\nXX9,switch,C\n'), ...task('kind: other\ntags: [XX9]\ndraft: true\n') },
    'devices with a page',
    '1/2',
  ],
  [
    'a place is a position or words',
    devices('PS-101,switch,A,,,1,2\nPS-102,switch,B,,,,,under the lift\nDISC1,isolator,D,,,3\n'),
    'devices with a place',
    '2/3',
  ],
  ['a tag on a sheet is a drawing too', devices('PS-101,switch,A\nPS-102,switch,B,,,,,,L-1\nXX9,isolator,D\n'), 'devices with a drawing', '2/3'],
  [
    'a device of another technology is no sensor',
    devices('PS-101,switch,A,pressure-switch\nPS-102,switch,B,encoder\nDISC1,isolator,D,isolator\n'),
    'sensors with a lesson',
    '1/2',
  ],
  [
    'a device whose data give nothing has no limits',
    {
      'data/checkout.yaml':
        'cards:\n  DI1: { from: data sheet, sense: sinking, inputType: Type 3 }\ndevices:\n  PS-101: { from: measured, output: pnp, contact: NO }\n',
    },
    'devices with limits computed',
    // PS-102 and DISC1 have none; the windings and the insulation of MTR5 have those of the trade.
    '2/4',
  ],
  [
    'a machine without such data has no such share',
    {
      'data/checkout.yaml': undefined,
      'machine.yaml': readFileSync('tests/fixtures/sound-machine/machine.yaml', 'utf8').replace(/ {2}checkout:.*\n/, ''),
    },
    'devices with limits computed',
    '0/0',
  ],
  ['an alarm has its recovery', {}, 'alarms with a recovery', '1/1'],
  ['a draft is no recovery', recovery('draft: true\n'), 'alarms with a recovery', '0/1'],
  ['a job that is no maintenance needs no interval', task('kind: set-up\n'), 'maintenance tasks with an interval', '0/0'],
  ['a job without interval', task('kind: clean\n'), 'maintenance tasks with an interval', '0/1'],
  ['a job with an interval', task('kind: clean\ninterval: { every: 1, unit: day }\n'), 'maintenance tasks with an interval', '1/1'],
  ['a job on call', task('kind: maintain\nwhen: A strip is torn\n'), 'maintenance tasks with an interval', '1/1'],
  ['a wear part that no job names', parts('9-1,Belt,1,wear,\n9-2,Filter,1,spare,\n'), 'wear parts with a task', '0/1'],
  [
    'a wear part that a job names',
    { ...parts('9-1,Belt,1,wear,\n'), ...task('kind: other\n', 'Take <Part number="9-1" />.') },
    'wear parts with a task',
    '1/1',
  ],
  ['a wear part that was replaced', parts('9-1,Belt,1,wear,100-01\n'), 'wear parts with a task', '0/0'],
  ['a sheet that is not there is not shown', { 'drawings/E-1.2.svg': undefined }, 'drawing sheets shown', '2/3'],
  [
    'a drawing that only the register knows',
    { 'data/drawings.csv': 'number,title,kind,sheets,revision\nE-1,Inputs,schematic,2,A\nL-1,Layout,layout,1,A\nE-2,Spare,schematic,1,A\n' },
    'drawings referred to',
    '2/3',
  ],
  ['a draft is not written', recovery('draft: true\n'), 'pages written', '9/10'],
  ['a translation that is there', scope('front'), 'pages in es', '1/10'],
  ['a translation that must be there', scope('front'), 'pages that must be in es', '1/2'],
  ['a scope of nothing', {}, 'pages that must be in es', '0/0'],
])('%s', (_, changes, what, expected) => expect(shares(changes)[what]).toBe(expected))

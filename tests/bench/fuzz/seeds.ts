import { type Files, readFiles, textOf } from '../example.ts'

/** The machines that inputs are made from: every input is one of them with something broken. */
export interface Seeds {
  sound: Files
  example: Files
  /** The sound machine with its lists in workbooks, the variables of its controller, and an accepted finding. */
  workbooks: Files
  /** Lists in one workbook, drawings as PDF, variables as PLCopen XML. */
  slitter: Files
  /** The same without an I/O list: its variables take the place of one. */
  variables: Files
  /** Lists with semicolons and Spanish headings, one of them in Windows-1252, and an accepted finding. */
  dispenser: Files
}

const withTerminal = 'pages/components/knife-section.mdx'

/** Small machines come with a few pages of the shared content only: they must be quick to check. */
export function readSeeds(): Seeds {
  const sound = new Map(
    withContent('tests/fixtures/sound-machine', /^content\/(?:glossary|lessons\/check-pressure|lessons\/stop|cautions\/(?:dc-bus|live|unexpected))/),
  ).set('data/checkout.yaml', checkout)
  const slitter = withContent(
    'tests/fixtures/machines/roll-slitter',
    /^content\/(?:content|glossary|cautions|lessons\/(?:stop-and|signal-path|stored|read-a|designations|electrical|check-(?:ind|photo|cyl|process|pulses)))/,
  )
  const yaml = textOf(slitter, 'machine.yaml')
  return {
    sound,
    example: readFiles('example-machine', 'content'),
    workbooks: inWorkbooks(sound),
    slitter,
    // A variable says nothing of its terminal.
    variables: new Map(slitter)
      .set('machine.yaml', yaml.replace(/^ {2}signals:\n(?: {4}.*\n)+/m, ''))
      .set(withTerminal, textOf(slitter, withTerminal).replace('<Terminal id="-X2:7" />', 'a terminal')),
    dispenser: withContent(
      'tests/fixtures/machines/tray-dispenser',
      /^content\/(?:content|glossary|cautions|lessons\/(?:stop-and|signal-path|stored|read-a|designations|electrical|check-(?:ind|photo|cyl|process|sol)))/,
    ),
  }
}

/** Every kind of value that checkout.yaml takes, for the few devices of the sound machine. */
const checkout = `supplies:
  24V: { from: data sheet, nominalV: 24, lowestV: 20.4, highestV: { value: 26.4, from: measured, source: at rest } }
cards:
  DI1: { from: data sheet, supply: 24V, inputType: Type 3, sense: sinking, filterMs: 3, inputCurrentMa: 2.5, inputResistanceOhm: 9600 }
parts:
  100-01:
    technology: pressure-switch
    from: data sheet
    output: pnp
    contact: NO
    dropV: 2
    leakageMa: 0.1
    noLoadCurrentMa: 35
    lowestSupplyV: 18
    highestSupplyV: 30
    fullScaleBar: 10
    tolerancePercent: 1
devices:
  PS-101: { from: measured, setBar: 6, deadBandBar: 0.5, cableLengthM: 12, cableAreaMm2: 0.34, conductor: class 5, fuseA: 2 }
  PS-102: { from: standard, source: by hand, setBar: 4, deadBandBar: 0.5 }
  MTR5: { from: data sheet, ratedV: 400, ratedA: 1.9, ratedSpeedPerMin: 1390, frequencyHz: 50, poles: 4 }
`

const withContent = (machine: string, kept: RegExp): Files =>
  new Map([...readFiles(machine, 'content')].filter(([path]) => !path.startsWith('content/') || kept.test(path)))

function inWorkbooks(sound: Files): Files {
  const files = new Map(sound)
  let yaml = textOf(sound, 'machine.yaml')
  const workbooks = readFiles('tests/fixtures/load/libreoffice', 'content')
  for (const list of ['devices', 'io-list', 'cards', 'bom', 'drawings', 'alarms']) {
    files.delete(`data/${list}.csv`)
    files.set(`data/${list}.xlsx`, workbooks.get(`sound-${list}.xlsx`) ?? '')
    yaml = yaml.replace(`data/${list}.csv`, `data/${list}.xlsx`)
  }
  return files
    .set('machine.yaml', `${yaml.trimEnd()}\n  symbols: { file: data/variables.csv }\n`)
    .set('data/variables.csv', 'name;address;type;comment\nClampPressure;%IX0.0;BOOL;Clamp closed\nSupplyPressure;%IX0.1;BOOL;\nClock;%MW10;WORD;\n')
    .set('data/cells.xlsx', workbooks.get('cells.xlsx') ?? '')
    .set('pages/front/later.mdx', '---\ntitle: Later\ndraft: true\n---\nNot written yet.\n')
    .set(
      'accepted.yaml',
      "- rule: draft-page\n  file: pages/front/later.mdx\n  message: draft\n  reason: written when the fan is chosen\n  until: '2099-12-31'\n",
    )
}

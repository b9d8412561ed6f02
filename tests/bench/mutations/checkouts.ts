import { textOf } from '../example.ts'
import { also, type Beyond, type Kind, mentions, type Piece, replaced } from './mistake.ts'
import type { Example } from './read-example.ts'
import { misspelt } from './slips.ts'

const file = 'data/checkout.yaml'

function pieces({ files }: Example, pattern: RegExp): Piece[] {
  return [...textOf(files, file).matchAll(pattern)].map(({ index, 0: value }): Piece => ({ file, start: index, end: index + value.length, value }))
}

/** Pieces of checkout.yaml changed; found there, or where the one that they are about is named. */
function rewritten(name: string, count: number, pattern: RegExp, text: (value: string) => string, beyond?: Beyond): Kind {
  return {
    name: `checkout: ${name}`,
    count,
    *make(example, random) {
      for (const piece of random.sample(pieces(example, pattern), count)) {
        const draft = replaced(
          example.files,
          piece,
          text(piece.value),
          `${nameAt(example, piece)}: ${piece.value.trim()} became ${text(piece.value).trim()}`,
        )
        const near = draft.at.flatMap(({ line }) => [-3, -2, -1, 1, 2].map((by) => ({ file, line: line + by })))
        yield { ...also(draft, [...near, ...mentions(draft.files, nameAt(example, piece))]), ...(beyond ? { beyond } : {}) }
      }
    },
  }
}

/** The supply, card, part or device that a piece belongs to. */
function nameAt({ files }: Example, { start }: Piece): string {
  const text = textOf(files, file)
  const before = text.slice(0, text.indexOf('\n', start))
  return [...before.matchAll(/^ {2}([A-Z0-9][\w-]*):/gm)].at(-1)?.[1] ?? ''
}

/** A number behind one of these keys. */
const behind = (...keys: readonly string[]) => new RegExp(`(?<=\\b(?:${keys.join('|')}): (?:\\{ value: )?)-?\\d+(?:\\.\\d+)?\\b`, 'g')

const times = (factor: number) => (value: string) => String(Number((Number(value) * factor).toPrecision(6)))

const partsExchanged: Kind = {
  name: 'checkout: data of two parts exchanged',
  count: 10,
  *make({ files }, random) {
    const text = textOf(files, file)
    const parts = [...text.matchAll(/^ {2}([\d-]+):\n {4}technology: (\S+)\n/gm)].map(({ index, 1: name = '', 2: technology = '' }) => ({
      piece: { file, start: index + 2, end: index + 2 + name.length, value: name },
      technology,
    }))
    for (let made = 0; made < this.count; made++) {
      const [one, two] = random.sample(parts, 2).sort((a, b) => a.piece.start - b.piece.start)
      if (!one || !two) continue
      const half = replaced(files, two.piece, one.piece.value)
      const whole = replaced(half.files, one.piece, two.piece.value, `parts ${one.piece.value} and ${two.piece.value} exchanged`)
      const draft = also(
        also(whole, half.at),
        [one, two].flatMap(({ piece }) => mentions(whole.files, piece.value)),
      )
      yield one.technology === two.technology ? { ...draft, beyond: 'another real thing' } : draft
    }
  },
}

/** Slips with what devices should read. */
export const checkoutKinds: readonly Kind[] = [
  rewritten('a limit of a supply ten times as large', 3, behind('nominalV', 'lowestV', 'highestV'), times(10)),
  rewritten('supply of the devices ten times as large', 6, behind('lowestSupplyV', 'transmitterV'), times(10)),
  rewritten('highest supply a tenth', 4, behind('highestSupplyV'), times(0.1)),
  rewritten('drop ten times as large', 6, behind('dropV'), times(10)),
  rewritten('leakage a hundred times as large', 4, behind('leakageMa'), times(100)),
  rewritten('gap ten times as large', 4, behind('gapMm'), times(10)),
  rewritten('rated distance a tenth', 3, behind('ratedDistanceMm'), times(0.1)),
  rewritten('range of light ten times as large', 6, behind('rangeM'), times(10)),
  rewritten('rated range of light a tenth', 4, behind('ratedRangeM'), times(0.1)),
  rewritten('set point ten times as large', 3, behind('setBar'), times(10)),
  rewritten('voltage of a coil ten times as large', 6, behind('coilV'), times(10)),
  rewritten('power of a coil ten times as large', 6, behind('coilW'), times(10)),
  rewritten('range of a transmitter ten times as large', 4, behind('rangeHigh'), times(10)),
  rewritten(
    'range of a transmitter in another unit',
    4,
    /(?<=rangeUnit: )\S+$/gm,
    (unit) => ({ mm: 'm', bar: 'psi', 'mS/cm': 'µS/cm' })[unit] ?? 'kPa',
  ),
  rewritten('resistance of an input ten times as large', 2, behind('cardOhm'), times(10)),
  rewritten('cross-section ten times as large', 8, behind('cableAreaMm2'), times(10)),
  rewritten('length of a cable a hundred times as large', 8, behind('cableLengthM'), times(100)),
  rewritten('rate of targets ten times as large', 3, behind('eventsHz'), times(10)),
  rewritten('speed of an encoder a hundred times as large', 2, behind('speedPerMin'), times(100)),
  rewritten('rated speed of a motor a tenth', 4, behind('ratedSpeedPerMin'), times(0.1)),
  rewritten('poles of a motor twice as many', 4, behind('poles'), times(2)),
  rewritten('resistance at 0 °C ten times as large', 2, behind('iceResistanceOhm'), times(10)),
  rewritten('PNP and NPN exchanged', 8, /(?<=output: )pnp$/gm, () => 'npn'),
  rewritten('contact of the data sheet exchanged', 6, /(?<=contact: )NO$/gm, () => 'NC'),
  rewritten('sinking and sourcing exchanged', 4, /(?<=sense: )sinking/g, () => 'sourcing'),
  rewritten('analogue signal of another kind', 4, /(?<=signal: )4-20 mA/g, () => '0-10 V'),
  rewritten('flush and non-flush exchanged', 4, /(?<=\bmounting: )(?:non-)?flush$/gm, (value) => (value === 'flush' ? 'non-flush' : 'flush')),
  rewritten('thermocouple of another type', 1, /(?<=thermocouple: )K$/gm, () => 'T', 'another real thing'),
  rewritten('technology of a part', 8, /(?<=technology: )(?:inductive|pt100|current-loop|limit-switch|solenoid-valve|float-switch)$/gm, (value) =>
    value === 'inductive' ? 'capacitive' : 'inductive',
  ),
  rewritten('needed value left out', 10, / {4}(?:output|technology|ratedV|coilV|signal|iceResistanceOhm|thermocouple|setBar): .*\n/g, () => ''),
  rewritten('basis left out', 6, / {4}from: data sheet\n/g, () => ''),
  rewritten('name of a value misspelt', 10, /(?<=^ {4})[a-z][A-Za-z]{4,}(?=:)/gm, misspelt),
  rewritten(
    'name of a device or card misspelt',
    10,
    /(?<=^ {2})[A-Z]{2,4}\d{3}(?=: \{)|(?<=^ {2})41\d\d-\d{4}(?=: \{)/gm,
    (value) => `${value.slice(0, -1)}${(Number(value.at(-1)) + 5) % 10}`,
  ),
  rewritten('supply misspelt', 4, /(?<=supply: )24V\b/g, () => '24'),
  rewritten('decimal comma', 6, /(?<=: )\d+\.\d+$/gm, (value) => value.replace('.', ',')),
  rewritten('material misspelt', 2, /(?<=targetMaterial: )mild steel/g, () => 'mild steal'),
  rewritten(
    'data of a part left out',
    12,
    / {2}[\d-]+:\n {4}technology: (?:inductive|capacitive|photoelectric-[a-z-]+|magnetic-cylinder-switch|pulse-flow|pt100|thermocouple)\n(?: {4}.*\n)+/g,
    () => '',
  ),
  rewritten('data of a device left out', 8, /^ {2}[A-Z]{2,4}\d{3}: .*\n/gm, () => '', 'nobody has to write it'),
  partsExchanged,
]

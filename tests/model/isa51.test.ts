import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkDesignation, parseNfpa79 } from '../../src/model/designation.ts'
import { parseIsa51 } from '../../src/model/isa51.ts'

function meanings(tag: string): string {
  const read = parseIsa51(tag)
  if ('reason' in read) return `${read.offset}: ${read.reason}`
  const words = read.letters.map(({ letters, means }) => `${letters} ${typeof means === 'string' ? means : 'own'}`)
  return [...words, `loop ${read.loop}`, ...(read.suffix === undefined ? [] : [`suffix ${read.suffix}`])].join(', ')
}

// Source: ANSI/ISA-5.1-2009, identification letters.
test('DG-07: the letters of a loop tag by their places', () =>
  expect(parseIsa51('PDSHH-1204A')).toEqual({
    letters: [
      { letters: 'P', means: 'pressure' },
      { letters: 'D', means: 'differential' },
      { letters: 'S', means: 'switch' },
      { letters: 'HH', means: 'high-high' },
    ],
    loop: '1204',
    suffix: 'A',
  }))

// Source: trade forms of NFPA 79 letters, common practice.
test.each([
  ['1203LS', ['1203']],
  ['LS1203', ['1203']],
  ['12LS3', ['12', '3']],
])('DG-09: the letters and numbers of %s', (tag, numbers) => expect(parseNfpa79(tag)).toEqual({ letters: 'LS', numbers }))

test.each([
  ['1203LS-A', { letters: 'LS', numbers: ['1203'], suffix: 'A' }],
  ['MTR5A', { letters: 'MTR', numbers: ['5'], suffix: 'A' }],
  ['PE-210', { letters: 'PE', numbers: ['210'] }],
  ['LS12-1-B', { letters: 'LS', numbers: ['12'], suffix: '1-B' }],
  ['LS', { offset: 2, reason: 'it has no number' }],
])('the letters and numbers of %s', (tag, read) => expect(parseNfpa79(tag)).toEqual(read))

describe('a loop tag', () => {
  test.each([
    ['TT-101', 'T temperature, T transmit, loop 101'],
    ['FQI-220B', 'F flow, Q totalised, I indicate, loop 220, suffix B'],
    ['FQ-220', 'F flow, Q totalise, loop 220'],
    ['FFC-7', 'F flow, F ratio, C control, loop 7'],
    ['LSL-12', 'L level, S switch, L low, loop 12'],
    ['LALL-12', 'L level, A alarm, LL low-low, loop 12'],
    ['PAHL-3', 'P pressure, A alarm, H high, L low, loop 3'],
    ['PSV-30', 'P pressure, S safety, V valve, loop 30'],
    ['PSE-31', 'P pressure, S safety, E primary-element, loop 31'],
    ['LCV-5', 'L level, C control, V valve, loop 5'],
    ['TICA-9', 'T temperature, I indicate, C control, A alarm, loop 9'],
    ['ZSO-4', 'Z position, S switch, O open, loop 4'],
    ['ZSC-4', 'Z position, S switch, C closed, loop 4'],
    ['ZLC-4', 'Z position, L light, C closed, loop 4'],
    ['ZIC-4', 'Z position, I indicate, C control, loop 4'],
    ['HIC-2', 'H hand, I indicate, C control, loop 2'],
    ['FO-16', 'F flow, O orifice, loop 16'],
    ['PDIT-8', 'P pressure, D differential, I indicate, T transmit, loop 8'],
    ['LZSHH-8', 'L level, Z safety-instrumented, S switch, HH high-high, loop 8'],
    ['VXT-8', 'V vibration, X axis-x, T transmit, loop 8'],
    ['PY-8', 'P pressure, Y compute, loop 8'],
    ['TE8', 'T temperature, E primary-element, loop 8'],
    ['PT-101-2', 'P pressure, T transmit, loop 101, suffix 2'],
    ['PT-101A-2', 'P pressure, T transmit, loop 101, suffix A-2'],
  ])('%s', (tag, expected) => expect(meanings(tag)).toBe(expected))

  test('with a number of a unit before it', () =>
    expect([parseIsa51('10-TT-101'), parseIsa51('10TT101')]).toEqual(
      Array(2).fill({ unit: '10', letters: [expect.anything(), expect.anything()], loop: '101' }),
    ))

  test.each([
    ['', '0: it is empty'],
    ['1204', '4: it has no letters'],
    ['PT', '2: it has no loop number'],
    ['PT-', '3: it has no loop number'],
    ['PT 101', '2: it holds a space'],
    ['Pt-101', '1: the letter `t` is not upper case'],
    ['PT_101', '2: `_` cannot stand there'],
    ['PT-101-', '6: `-` cannot stand there'],
    ['-B12', '0: `-` cannot stand there'],
    ['P-101', '1: no letter after `P` says what it does'],
    ['PD-101', '2: no letter after `PD` says what it does'],
    ['MTR-101', '0: `M` is left to the builder'],
    ['GT-101', '0: `G` is left to the builder'],
    ['PB-101', '1: `B` is left to the builder'],
    ['PTH-101', '2: `H` cannot stand after `PT`'],
    ['PHS-101', '1: `H` cannot stand after `P`'],
    ['PTF-101', '2: `F` cannot stand after `PT`'],
    ['TSM-101', 'T temperature, S switch, M middle, loop 101'],
    ['TMS-101', '1: `M` cannot stand after `T`'],
    ['TTD-101', '2: `D` cannot stand after `TT`'],
    ['SOV-101', '1: `O` cannot stand after `S`'],
    ['SOL1', '1: `O` cannot stand after `S`'],
    ['DISC1', '0: `D` is left to the builder'],
    ['10-PTH-101', '5: `H` cannot stand after `PT`'],
  ])('%s: %s', (tag, expected) => expect(meanings(tag)).toBe(expected))
})

describe('the legend of a machine', () => {
  const legend = { first: { G: 'gap' }, succeeding: { B: { en: 'brake', es: 'freno' } }, equipment: { M: 'motor', SOL: 'solenoid valve' } }
  const loop = { loop: '12' }

  test.each([
    [
      'GT-12',
      {
        ...loop,
        letters: [
          { letters: 'G', means: { own: 'gap' } },
          { letters: 'T', means: 'transmit' },
        ],
      },
    ],
    [
      'SB-12',
      {
        ...loop,
        letters: [
          { letters: 'S', means: 'speed' },
          { letters: 'B', means: { own: legend.succeeding.B } },
        ],
      },
    ],
    ['M-12', { ...loop, letters: [{ letters: 'M', means: { own: 'motor' } }] }],
    ['SOL12', { ...loop, letters: [{ letters: 'SOL', means: { own: 'solenoid valve' } }] }],
  ])('%s', (tag, read) => expect(parseIsa51(tag, legend)).toEqual(read))

  test('counts in the check', () => {
    expect(checkDesignation('M-12', { isa51: legend })).toBeUndefined()
    expect(checkDesignation('M-12', 'isa51')?.help).toContain('isa51')
  })
})

test('whatever is written, the letters that are read are those of the tag, and a fault lies inside it', () => {
  const tag = fc.oneof(
    fc.string(),
    fc.stringMatching(/^[A-Z]{0,5}-?[0-9]{0,4}[A-Z]?$/),
    fc.stringMatching(/^[PTLFZ][DSX]?[STAIC][HLOC]{0,2}-[0-9]{1,3}$/),
  )
  fc.assert(
    fc.property(tag, (tag) => {
      const read = parseIsa51(tag)
      if ('reason' in read) return read.offset >= 0 && read.offset <= tag.length
      const letters = read.letters.map(({ letters }) => letters).join('')
      return tag.replaceAll('-', '') === `${read.unit ?? ''}${letters}${read.loop}${(read.suffix ?? '').replaceAll('-', '')}`
    }),
    { numRuns: 2000 },
  )
})

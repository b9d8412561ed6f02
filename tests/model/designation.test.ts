import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkDesignation, type Designation, normalise, parseIec81346, resolveIec81346 } from '../../src/model/designation.ts'

describe('normalise', () => {
  test.each([
    ['PS-101', 'PS101'],
    ['ps_0101', 'PS101'],
    ['PS 101', 'PS101'],
    ['PS.101', 'PS101'],
    ['PS\u2011101', 'PS101'],
    ['PS\u2013101', 'PS101'],
    ['PS\u2212101', 'PS101'],
    ['PS\u200b101', 'PS101'],
    ['ＰＳ１０１', 'PS101'],
    ['PS-1O1', 'PS101'],
    ['PS1OO', 'PS100'],
    ['PS-O1', 'PS1'],
    ['PS-OIL', 'PSOIL'],
    ['007', '7'],
    ['100-01', '100.1'],
    ['10-001', '10.1'],
    ['1.10', '1.10'],
    ['-A1-B2', 'A1B2'],
    ['-A01.B02', 'A1B2'],
    ['=W1+C2-B12:4', '=W1+C2B12:4'],
    ['', ''],
  ])('%s', (name, expected) => expect(normalise(name)).toBe(expected))

  const part = fc.stringMatching(/^[A-Z]{1,3}[1-9][0-9]{0,3}$/)

  test('changes nothing more the second time', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[A-Z0-9O._ -]{0,9}$/)), (name) => normalise(normalise(name)) === normalise(name)))
  })

  test('keeps names of letters and a number apart', () => {
    fc.assert(fc.property(part, part, (a, b) => (normalise(a) === normalise(b)) === (a === b)))
  })

  test('does not move a boundary between two numbers', () => {
    const number = fc.stringMatching(/^[1-9][0-9]{0,3}$/)
    fc.assert(
      fc.property(number, number, number, number, (a, b, c, d) => (normalise(`${a}-${b}`) === normalise(`${c}/${d}`)) === (a === c && b === d)),
    )
  })
})

describe('a tag fits', () => {
  test.each<[Designation, string[]]>([
    ['nfpa79', ['PRS104', 'PE-210', '12LS', 'LS12', '1203LS-A', 'MTR5A', '1CR2', 'DISC1', 'PE-210-A', '101SOL-1']],
    ['iec81346', ['=W1+C2-B12', '-B12:4', '-B12', '+C2', '==F1=W1++H2+C2-A1.B2', '-A1-B12:1.2', '-1', '#A1', '-QA1:A1+', '=PU01+CP1-Q1']],
    [{ pattern: '[A-Z]{2}/\\d{3}' }, ['AB/123']],
  ])('%o', (system, tags) => {
    for (const tag of tags) expect([tag, checkDesignation(tag, system)]).toEqual([tag, undefined])
  })
})

describe('a tag does not fit', () => {
  test.each<[Designation, string, number, string]>([
    ['nfpa79', 'ps101', 0, 'the letter `p` is not upper case'],
    ['nfpa79', 'PS101x', 5, 'the letter `x` is not upper case'],
    ['nfpa79', 'M_TR5', 1, '`_` cannot stand there'],
    ['nfpa79', 'PS 101', 2, 'it holds a space'],
    ['nfpa79', 'PS-', 2, '`-` cannot stand there'],
    ['nfpa79', '-B12', 0, '`-` cannot stand there'],
    ['nfpa79', 'MTR', 3, 'it has no number'],
    ['nfpa79', '101', 3, 'it has no letters'],
    ['nfpa79', 'PS101😀', 5, '`😀` cannot stand there'],
    ['nfpa79', '', 0, 'it is empty'],
    ['iec81346', 'PS-101', 0, 'it does not begin with `=`, `+` or `-`'],
    ['iec81346', '', 0, 'it does not begin with `=`, `+` or `-`'],
    ['iec81346', '.B1', 0, 'it does not begin with `=`, `+` or `-`'],
    ['iec81346', '-b12', 1, 'the letter `b` is not upper case'],
    ['iec81346', '-', 1, 'something is missing at its end'],
    ['iec81346', '-B12-', 5, 'something is missing at its end'],
    ['iec81346', '-B12A', 4, '`A` cannot stand there'],
    ['iec81346', '---B12', 2, '`-` cannot stand there'],
    ['iec81346', '-B12 +C1', 4, 'it holds a space'],
    ['iec81346', '-B12:', 5, 'something is missing at its end'],
    ['iec81346', '-B12:4:5', 6, '`:` cannot stand there'],
    [{ pattern: 'a|b' }, 'ab', 0, 'it does not have the form `a|b`'],
  ])('%o %s', (system, tag, offset, reason) => expect(checkDesignation(tag, system)).toEqual({ offset, reason }))

  test('at a place inside the tag, whatever is written', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Designation>('nfpa79', 'iec81346'),
        fc.oneof(fc.string(), fc.stringMatching(/^[=+#.:A-Z0-9-]{0,9}$/)),
        (system, tag) => {
          const { offset = 0 } = checkDesignation(tag, system) ?? {}
          return offset >= 0 && offset <= tag.length
        },
      ),
    )
  })
})

describe('IEC 81346', () => {
  test.each([
    [
      '=W1+C2-B12:4',
      [
        ['=', 'W1'],
        ['+', 'C2'],
        ['-', 'B12'],
      ],
      '4',
    ],
    ['-A1-B2', [['-', 'A1', 'B2']], undefined],
    ['-A1.B2', [['-', 'A1', 'B2']], undefined],
    [
      '==F1=W1',
      [
        ['==', 'F1'],
        ['=', 'W1'],
      ],
      undefined,
    ],
  ])('%s', (tag, aspects, terminal) => {
    const expected = aspects.map(([prefix, ...parts]) => ({ prefix, parts }))
    expect(parseIec81346(tag)).toEqual({ aspects: expected, ...(terminal === undefined ? {} : { terminal }) })
  })

  test('a designation put together from its parts is read back', () => {
    const part = fc.stringMatching(/^(?:[A-Z]{1,2}[0-9]{0,2}|[0-9]{1,3})$/)
    const aspect = fc.record({ prefix: fc.constantFrom('=', '==', '+', '++', '-', '--', '#'), parts: fc.array(part, { minLength: 1, maxLength: 3 }) })
    const aspects = fc.uniqueArray(aspect, { selector: ({ prefix }) => prefix, minLength: 1, maxLength: 4 })
    const terminal = fc.option(fc.stringMatching(/^[A-Za-z0-9.+-]{1,4}$/), { nil: undefined })
    fc.assert(
      fc.property(aspects, terminal, (aspects, terminal) => {
        const written = aspects.map(({ prefix, parts }) => prefix + parts.join('.')).join('') + (terminal === undefined ? '' : `:${terminal}`)
        expect(parseIec81346(written)).toEqual({ aspects, ...(terminal === undefined ? {} : { terminal }) })
      }),
    )
  })

  test.each([
    ['-B12', '=W1+C2', '=W1+C2-B12'],
    ['+C3-B12', '=W1+C2', '=W1+C3-B12'],
    ['-B12:4', '=W1+C2-A1', '=W1+C2-B12:4'],
    ['=W1+C2-B12', '=W9+C9', '=W1+C2-B12'],
    ['PS-101', '=W1+C2', 'PS-101'],
  ])('%s in the context %s', (written, context, expected) => expect(resolveIec81346(written, context)).toBe(expected))
})

// Source: IEC 81346-1, prefixes.
test('DG-01, DG-02: aspects, a terminal, and a dot for a prefix that repeats', () => {
  expect(parseIec81346('=M1+C2-BG12:4')).toEqual({
    aspects: [
      { prefix: '=', parts: ['M1'] },
      { prefix: '+', parts: ['C2'] },
      { prefix: '-', parts: ['BG12'] },
    ],
    terminal: '4',
  })
  expect(parseIec81346('-KF3.BG1')).toEqual({ aspects: [{ prefix: '-', parts: ['KF3', 'BG1'] }] })
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { relativeLink, slug } from '../../src/site/address.ts'
import { sheetFile } from '../../src/site/parts/plan.ts'

describe('slug', () => {
  test.each([
    ['PRS104', 'PRS104'],
    ['=W1+C2-B12:4', '=W1+C2-B12~3a4'],
    ['A/B#1', 'A~2fB~231'],
    ['Türe 2', 'T~c3~bcre~202'],
    ['../x', '~2e.~2fx'],
    ['<script>', '~3cscript~3e'],
    ['CON', 'CON~'],
    ['COM1', 'COM1~'],
  ])('%s', (name, expected) => expect(slug(name)).toBe(expected))

  test('two names never share an address, and an address needs no escape', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), fc.string({ minLength: 1 }), (a, b) => {
        if (a.isWellFormed() && b.isWellFormed() && a !== b) expect(slug(a)).not.toBe(slug(b))
        expect(encodeURI(slug(a))).toBe(slug(a))
      }),
    )
  })
})

test('two drawings never share a file', () => {
  expect(sheetFile('E-104', 2)).toBe('sheets/E-104.2.svg')
  expect(sheetFile('E/104', 1)).not.toBe(sheetFile('E_104', 1))
})

describe('relativeLink', () => {
  test.each([
    ['index.html', 'tags/A.html', 'tags/A.html'],
    ['tags/A.html', 'tags/B.html', 'B.html'],
    ['tags/A.html', 'index.html', '../index.html'],
    ['es/tags/A.html', 'assets/site.css', '../../assets/site.css'],
    ['lessons/x/A.html', 'lessons/x.html#measure', '../x.html#measure'],
    ['tags/A.html', 'tags/A.html', 'A.html'],
  ])('%s -> %s', (from, to, expected) => expect(relativeLink(from, to)).toBe(expected))
})

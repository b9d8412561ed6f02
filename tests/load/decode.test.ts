import { describe, expect, test } from 'vitest'
import { readText } from '../../src/load/decode.ts'
import { memoryFolder } from '../../src/load/folder.ts'
import { collect } from '../../src/load/load-rules.ts'
import type { Finding } from '../../src/source/finding.ts'

function read(bytes: Uint8Array | string) {
  const findings: Finding[] = []
  const source = readText(memoryFolder(new Map([['a.csv', bytes]])), 'a.csv', collect(findings))
  return { text: source?.text, findings: findings.map(({ rule, severity, place }) => [rule, severity, place.line, place.column]) }
}

describe('readText', () => {
  test('drops a byte order mark, and columns count without it', () => {
    expect(read(new Uint8Array([0xef, 0xbb, 0xbf, 0x61]))).toEqual({ text: 'a', findings: [] })
  })

  test('reads Windows-1252 with a note at the first sign that is not UTF-8', () => {
    expect(read(new Uint8Array([0x61, 0x0a, 0x62, 0xb0, 0x43]))).toEqual({ text: 'a\nb°C', findings: [['windows-1252', 'note', 2, 2]] })
  })

  test.each([
    ['UTF-16', new Uint8Array([0xff, 0xfe, 0x61, 0])],
    ['zero bytes', new Uint8Array([0x50, 0x4b, 3, 4, 0, 0])],
  ])('refuses %s', (_, bytes) => {
    expect(read(bytes)).toEqual({ text: undefined, findings: [['not-text', 'error', 1, 1]] })
  })

  test('refuses a file of 200 MB without reading it', () => {
    const folder = { ...memoryFolder(new Map()), size: () => 200_000_000, read: () => expect.fail('it was read') }
    const findings: Finding[] = []
    expect(readText(folder, 'a.csv', collect(findings))).toBeUndefined()
    expect(findings.map(({ rule }) => rule)).toEqual(['file-too-large'])
  })
})

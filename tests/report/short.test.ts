import fc from 'fast-check'
import { expect, test } from 'vitest'
import { reportShort } from '../../src/report/short.ts'
import type { Finding } from '../../src/source/finding.ts'

/** What problem matchers for the form of GCC look for. Source: the `gcc` matcher of editors, from memory, with `note` added. */
const gcc = /^(.*):(\d+):(\d+):\s+(warning|error|note):\s+(.*)$/

const place = { file: 'data/devices.csv', line: 4, column: 7, endLine: 4, endColumn: 11 }
const finding: Finding = { rule: 'unknown-tag', severity: 'error', message: 'no device has the tag `PS-103`', place }

test.each(['error', 'warning', 'note'] as const)('a matcher of the form of GCC reads a line with %s', (severity) => {
  const [, ...parts] = gcc.exec(reportShort([{ ...finding, severity }]).trimEnd()) ?? []
  expect(parts).toEqual(['data/devices.csv', '4', '7', severity, 'no device has the tag `PS-103` [unknown-tag]'])
})

test('whatever stands in a message, each finding is one line that the matcher reads at its place', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ unit: 'binary' })), (messages) => {
      const lines = reportShort(messages.map((message) => ({ ...finding, message })))
        .split('\n')
        .slice(0, -1)
      expect(lines).toHaveLength(messages.length)
      for (const line of lines) expect(gcc.exec(line)?.slice(2, 5)).toEqual(['4', '7', 'error'])
    }),
  )
})

test('a file on another drive keeps its name', () => {
  const line = reportShort([{ ...finding, place: { ...place, file: 'D:/machines/devices.csv' } }]).trimEnd()
  expect(gcc.exec(line)?.slice(1, 4)).toEqual(['D:/machines/devices.csv', '4', '7'])
})

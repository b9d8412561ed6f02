import { expect, test } from 'vitest'
import { guessDesignation } from '../../src/start/guess-designation.ts'

test.each([
  [['=A1-B1', '=A1-B2'], 'iec81346'],
  // Letters that stand for something in both systems.
  [['PS101', 'LS1203', 'FS12', 'TS4', 'SOL1'], 'nfpa79'],
  [['1203LS', '1204SOL', '12CR3'], 'nfpa79'],
  [['PT-101', 'TT-102', 'LIT-103', 'FCV-104', 'PS-105'], 'isa51'],
  [['TT-1', 'LIT-2', 'FCV-3', 'MTR4'], { isa51: { equipment: { MTR: 'motor' } } }],
  [['TT-1', 'LIT-2', 'FCV-3', 'x', 'y'], { pattern: '.+' }],
  [['10YV01', '20M.1'], { pattern: '.+' }],
  [[], 'nfpa79'],
])('%o', (tags, system) => expect(guessDesignation(tags)).toEqual(system))

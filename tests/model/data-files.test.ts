import { cpSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { diskFolder, memoryFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import { dataFiles } from '../../src/model/data-files.ts'

test('the data of a release are the files that machine.yaml names, wherever they lie', () => {
  const dir = mkdtempSync(join(tmpdir(), 'fettle-'))
  try {
    cpSync('tests/fixtures/sound-machine', dir, { recursive: true })
    mkdirSync(join(dir, 'exports'))
    renameSync(join(dir, 'data/bom.csv'), join(dir, 'exports/bom.csv'))
    writeFileSync(join(dir, 'data/old-bom.csv'), 'number\n')
    const file = join(dir, 'machine.yaml')
    writeFileSync(file, readFileSync(file, 'utf8').replace('data/bom.csv', 'exports/bom.csv'))
    const [machine] = loadMachine(diskFolder(dir, ''), memoryFolder(new Map())).machines
    const paths = machine && dataFiles(machine).map(({ path }) => path)
    expect(paths).toContain('exports/bom.csv')
    expect(paths).toContain('machine.yaml')
    expect(paths).not.toContain('data/old-bom.csv')
  } finally {
    rmSync(dir, { recursive: true, force: true })
  }
})

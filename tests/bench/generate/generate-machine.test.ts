import { expect, test } from 'vitest'
import { checkFiles, type Files, loadFiles, readFiles } from '../example.ts'
import { generateMachine } from './generate-machine.ts'

const example = readFiles('example-machine', 'content')
const shared = [...example].filter(([path]) => path.startsWith('content/'))
const generated = (pages: number, seed?: number): Files => new Map([...generateMachine(example, pages, seed), ...shared])

test('a generated machine has its size, the proportions of the example, both languages and no finding', () => {
  const files = generated(300)
  expect(checkFiles(files).findings).toEqual([])
  const [machine, original] = [loadFiles(files).machines[0], loadFiles(example).machines[0]]
  if (!machine || !original) throw new Error('no machine')
  expect(machine.pages.length).toBeGreaterThan(270)
  expect(machine.pages.length).toBeLessThan(330)
  const own = (of: typeof machine) => of.pages.filter((page) => !page.shared)
  const translated = (of: typeof machine) => own(of).filter(({ translations }) => translations.has('es'))
  const ratio = own(machine).length / own(original).length
  expect(translated(machine).length / translated(original).length).toBe(ratio)
  for (const list of ['devices', 'parts', 'alarms', 'drawings', 'energy', 'signals', 'areas'] as const)
    expect(machine[list].length / original[list].length, list).toBeCloseTo(ratio, 1)
})

test('the same seed makes the same machine, another seed another', () => {
  expect([...generated(200, 7)]).toEqual([...generated(200, 7)])
  expect([...generated(200, 7)]).not.toEqual([...generated(200, 8)])
})

import { expect, test } from 'vitest'
import { inItsLanguages } from '../../src/model/in-its-languages.ts'
import type { Machine } from '../../src/model/machine.ts'
import { type Changes, loadSound } from '../sound-machine.ts'

const lesson = (technology: string, body = '') =>
  `---\ntitle: Check it\nrevision: A\nminutes: 5\nobjectives: [See it]\nroles: [operator]\n${technology}\n---\n\nLook at it.\n\n${body}\n`
const technologyOf = (name: string) => `technology: [${name}]`
const spanish = (body = '') => `---\ntitle: Revisar\n---\n\nMire.\n\n${body}\n`
const figure = (image: string) => `<Figure image="${image}" alt="A picture" />`
const drawing = '<svg xmlns="http://www.w3.org/2000/svg"/>'

const shared: Changes = new Map([
  ['content/content.yaml', 'language: en\n'],
  ['content/glossary.yaml', "pit:\n  en: { term: pit, definition: 'A hole.' }\n"],
  ['content/notes.txt', 'x'],
  ['content/lessons/any.mdx', lesson('', figure('photos/shown.svg'))],
  ['content/lessons/any.es.mdx', spanish(figure('photos/in-spanish.svg'))],
  ['content/lessons/any.de.mdx', spanish(figure('photos/in-german.svg'))],
  ['content/lessons/motor.mdx', lesson(technologyOf('motor'), figure('photos/press.svg'))],
  ['content/lessons/pt100.mdx', lesson(technologyOf('pt100'), figure('photos/never.svg'))],
  ['content/lessons/pt100.es.mdx', spanish()],
  // The machine has a page of this name itself.
  ['content/lessons/look-round.mdx', lesson('')],
  [
    'content/lockout/lo-7.mdx',
    '---\ntitle: Other\nnumber: LO-7\nenergy: [supply]\nareas: [press]\npurpose: Work.\nscope: The press.\nauthorised: Some.\nresponsible: Each.\nenforcement: The programme.\nfits: [fan]\n---\n',
  ],
  ...['shown', 'in-spanish', 'in-german', 'never', 'press'].map((name) => [`content/photos/${name}.svg`, drawing] as const),
])

const machineOf = (more: Changes = new Map(), unit = 0): Machine => {
  const machine = loadSound(new Map([...shared, ...more])).machines[unit]
  if (!machine) throw new Error('no machine')
  return machine
}
const takenBy = ({ inputs }: Machine) => inputs.flatMap(({ path }) => (path.startsWith('content/') ? [path.slice('content/'.length)] : []))

test('a unit takes of the shared content the pages that it has in its languages, and what they show', () => {
  expect(takenBy(machineOf())).toEqual([
    'content.yaml',
    'glossary.yaml',
    'lessons/any.es.mdx',
    'lessons/any.mdx',
    'lessons/motor.mdx',
    'lockout/lo-7.mdx',
    'photos/in-spanish.svg',
    'photos/shown.svg',
  ])
})

test('a unit without the option takes no lesson of its device; the number of a lockout tells names on drawings apart all the same', () => {
  const taken = takenBy(machineOf(new Map(), 1))
  expect(taken).not.toContain('lessons/motor.mdx')
  expect(taken).toContain('lockout/lo-7.mdx')
})

test('it takes every file of its own folder', () => {
  const own = machineOf().inputs.flatMap(({ path }) => (path.startsWith('machine/') ? [path] : []))
  for (const path of ['machine.yaml', 'data/devices.csv', 'pages/front/care.es.mdx', 'photos/press.svg', 'drawings/E-1.1.svg'])
    expect(own).toContain(`machine/${path}`)
})

test('what is built of it holds no text in another language, and is otherwise the same', () => {
  const machine = machineOf()
  const built = inItsLanguages(machine)
  const any = (of: Machine) => of.pages.find(({ id }) => id === 'lessons/any')
  expect([...(any(machine)?.translations.keys() ?? [])].sort()).toEqual(['de', 'es'])
  expect([...(any(built)?.translations.keys() ?? [])]).toEqual(['es'])
  const shown = ({ references }: Machine) =>
    references.flatMap(({ kind, id, page }) => (kind === 'image' && page?.page.id === 'lessons/any' ? [id] : []))
  expect(shown(machine).sort()).toEqual(['photos/in-german.svg', 'photos/in-spanish.svg', 'photos/shown.svg'])
  expect(shown(built).sort()).toEqual(['photos/in-spanish.svg', 'photos/shown.svg'])
  expect(built.pages.map(({ id }) => id)).toEqual(machine.pages.map(({ id }) => id))
  const withoutGerman = machineOf(new Map([['content/lessons/any.de.mdx', undefined]]))
  expect(inItsLanguages(withoutGerman)).toBe(withoutGerman)
})

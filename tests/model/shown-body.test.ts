import { readFileSync } from 'node:fs'
import type { Nodes } from 'mdast'
import { expect, test } from 'vitest'
import { isElement } from '../../src/model/mdx-elements.ts'
import { shownBody } from '../../src/model/shown-body.ts'
import { loadSound } from '../sound-machine.ts'

const folder = 'tests/fixtures/sound-machine/pages/front/'
const [source, own] = [readFileSync(`${folder}care.mdx`, 'utf8'), readFileSync(`${folder}care.es.mdx`, 'utf8')]

/** What `front/care` shows in Spanish, one line a block: its words, inside the element that marks it. */
function shown(changedSource: string, changedOwn = own): string[] {
  const [machine] = loadSound(
    new Map([
      ['pages/front/care.mdx', changedSource],
      ['pages/front/care.es.mdx', changedOwn],
    ]),
  ).machines
  const page = machine?.pages.find(({ id }) => id === 'front/care')
  if (!page) throw new Error('no page')
  const marked = (node: Nodes): string[] =>
    isElement(node) && (node.name === 'Older' || node.name === 'FromSource')
      ? node.children.map((child) => `${node.name}: ${words(child)}`)
      : words(node) === ''
        ? []
        : [words(node)]
  return shownBody(page, 'es').children.flatMap(marked)
}

function words(node: Nodes): string {
  if (node.type === 'text') return node.value
  return 'children' in node ? node.children.map(words).join(' ').replace(/\s+/g, ' ').trim() : ''
}

const message = 'La pinza tiene bordes afilados. Podría cortarle la mano. Use guantes.'
const whole = ['Cada día', 'Limpie la pinza con un paño seco.', message, 'Apunte el día en el libro.']

test('a translation that is up to date is shown as it is', () => expect(shown(source)).toEqual(whole))

test('a block that is older is marked', () => {
  expect(shown(source.replace('dry', 'damp'))).toEqual([whole[0], `Older: ${whole[1]}`, message, whole[3]])
})

test('a safety message that is older is shown as the source has it', () => {
  expect(shown(source.replace('Wear gloves', 'Wear steel gloves'))).toEqual([
    whole[0],
    whole[1],
    'FromSource: The clamp has sharp edges. It could cut your hand. Wear steel gloves.',
    whole[3],
  ])
})

test('a message and a step that are missing are shown as the source has them, in their place', () => {
  const added = 'Stop the press.\n\n<Include caution="crush" />\n\n'
  expect(shown(source.replace('Wipe', `${added}Wipe`))).toEqual([whole[0], 'FromSource: Stop the press.', 'FromSource: ', ...whole.slice(1)])
})

test('a block whose source is gone is marked', () => {
  expect(shown(source.replace('Write the day in the book.\n', ''))).toEqual([...whole.slice(0, 3), `Older: ${whole[3]}`])
})

test('where blocks cannot be paired, the messages that changed stand first', () => {
  const text = own.replace('Apunte', 'Pare la prensa.\n\nApunte')
  expect(shown(source.replace('Wear gloves', 'Wear steel gloves').replace('dry', 'damp'), text)).toEqual([
    'FromSource: The clamp has sharp edges. It could cut your hand. Wear steel gloves.',
    ...whole.slice(0, 3),
    'Pare la prensa.',
    whole[3],
  ])
})

test('a translation that nobody has stamped is shown as it is', () => {
  const text = own.replace(/source:\n(?: {2}.*\n)+/, '')
  expect(text).not.toContain('body:')
  expect(shown(source.replace('Wear gloves', 'Wear steel gloves'), text)).toEqual(whole)
})

test('no anchor stands twice', () => {
  const [machine] = loadSound(new Map([['pages/front/care.mdx', source.replace('## Every day', '## First\n\nLook.\n\n## Every day')]])).machines
  const page = machine?.pages.find(({ id }) => id === 'front/care')
  if (!page) throw new Error('no page')
  const ids = (node: Nodes): string[] => [
    ...(node.type === 'heading' && node.data && 'hProperties' in node.data ? [String(node.data.hProperties?.id)] : []),
    ...(isElement(node) && node.name === 'Anchor' ? node.attributes.flatMap((it) => (typeof it.value === 'string' ? [it.value] : [])) : []),
    ...('children' in node ? node.children.flatMap(ids) : []),
  ]
  const found = ids(shownBody(page, 'es'))
  expect(found.toSorted()).toEqual(['cada-día', 'every-day', 'first'])
})

test('a mark names the language of the source', () => {
  const [machine] = loadSound(new Map([['pages/front/care.mdx', source.replace('dry', 'damp')]])).machines
  const page = machine?.pages.find(({ id }) => id === 'front/care')
  const marks = page ? shownBody(page, 'es').children.filter((node) => isElement(node) && node.name === 'Older') : []
  expect(marks.map((node) => isElement(node) && node.attributes)).toEqual([[{ type: 'mdxJsxAttribute', name: 'language', value: 'en' }]])
})

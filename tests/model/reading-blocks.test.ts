import { describe, expect, test } from 'vitest'
import { parseMdx } from '../../src/load/mdx.ts'
import { readingBlocks } from '../../src/model/prose/reading-blocks.ts'
import { sourceText } from '../../src/source/source-text.ts'

function blocksOf(text: string) {
  const source = sourceText('a.mdx', `---\ntitle: a\n---\n${text}`)
  const { body } = parseMdx(source, () => undefined)
  if (!body) throw new Error('broken MDX')
  return readingBlocks({ body, source }, (id) => (id === 'wash-liquid' ? 'wash liquid' : undefined))
}

const kindsAndTexts = (text: string) => blocksOf(text).map(({ kind, text }) => `${kind}: ${text.trim()}`)

describe('readingBlocks', () => {
  test('takes paragraphs, lead-ins, items and steps apart', () => {
    expect(
      kindsAndTexts(
        [
          'One. Two.',
          '',
          'Make sure that:',
          '',
          '- the valve is open',
          '- the tank is full',
          '',
          '<Steps>',
          '  <Step>Press it.</Step>',
          '  <Step>',
          '    Turn it.',
          '',
          '    <Result>The lamp is on.</Result>',
          '  </Step>',
          '</Steps>',
        ].join('\n'),
      ),
    ).toEqual([
      'paragraph: One. Two.',
      'lead-in: Make sure that:',
      'item: the valve is open',
      'item: the tank is full',
      'step: Press it.',
      'step: Turn it.',
      'paragraph: The lamp is on.',
    ])
  })

  test('takes a cause for an item of a list', () => {
    expect(
      kindsAndTexts(
        [
          'It may be:',
          '',
          '<Causes>',
          '  <Cause likelihood="often">The valve is shut.</Cause>',
          '  <Cause likelihood="rare">',
          '    A hose is torn.',
          '  </Cause>',
          '</Causes>',
        ].join('\n'),
      ),
    ).toEqual(['lead-in: It may be:', 'item: The valve is shut.', 'item: A hose is torn.'])
  })

  test('knows a further paragraph of a step', () => {
    const blocks = blocksOf('<Steps>\n  <Step>\n    Turn it.\n\n    It is stiff.\n  </Step>\n  <Step>Press it.</Step>\n</Steps>')
    expect(blocks.map(({ text, continues }) => [text, continues])).toEqual([
      ['Turn it.', undefined],
      ['It is stiff.', true],
      ['Press it.', undefined],
    ])
  })

  test('leaves out headings, code, values of tables and what the data shows', () => {
    expect(
      kindsAndTexts(
        [
          '# A heading',
          '',
          '```',
          'code here',
          '```',
          '',
          '| state | what to do |',
          '| --- | --- |',
          '| dark | Open the head. |',
          '',
          '<Figure image="a.png" alt="A pump." caption="The pump." />',
          '',
          'Type `G28` and press it. <Reading at="pin" expect="lamp on" />',
        ].join('\n'),
      ),
    ).toEqual(['cell: Open the head.', 'paragraph: Type  and press it.'])
  })

  test('reads an element as the words that it shows', () => {
    expect(
      kindsAndTexts(
        'Drain the <Term id="wash-liquid" /> at <Tag id="V12" />, see <Page id="lockout/lo-1" /> and <Page id="front/use">the first chapter</Page>. The <Fact of="tag" /> is **new**.',
      ),
    ).toEqual(['paragraph: Drain the wash liquid at V12, see \uFFFC and the first chapter. The \uFFFC is new.'])
  })

  test('tells messages and notes by their kind, without the word', () => {
    expect(
      kindsAndTexts(
        'Note: the lamp is dark.\n\n<Safety severity="property-damage">\n  <Hazard>The clamp closes.</Hazard>\n  <Avoid>\n    - Wait.\n    - Stand back.\n  </Avoid>\n</Safety>',
      ),
    ).toEqual(['note: the lamp is dark.', 'message: The clamp closes.', 'message: Wait.', 'message: Stand back.'])
  })

  test.each([
    ['Close  the **valve &amp; tap** <Tag id="V12" /> now.', 'valve & tap', 4, 14, 29],
    ['Close <Tag id="V12" /> now.', 'V12', 4, 7, 23],
    ['Note: Close it.', 'Close', 4, 7, 12],
  ])('knows where words stand: %s', (text, words, line, column, endColumn) => {
    const [block] = blocksOf(text)
    const at = block?.text.indexOf(words) ?? -1
    expect(block?.place(at, at + words.length)).toMatchObject({ line, column, endColumn })
  })
})

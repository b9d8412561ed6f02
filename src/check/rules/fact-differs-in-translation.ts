import type { AnyPage, TranslatedText } from '../../model/machine.ts'
import { attributeOf, type JsxElement } from '../../model/mdx-elements.ts'
import { attributePlace, namePlace } from '../../model/placed-messages.ts'
import type { Problem } from '../../source/finding.ts'
import type { Rule } from '../rule.ts'

/** What an element says of the machine, and not in a language. */
const facts = {
  Cause: ['likelihood', 'tags'],
  Callout: ['n', 'x', 'y'],
  Reading: ['at', 'low', 'high', 'unit'],
} as const

export const factDiffersInTranslation: Rule = {
  id: 'fact-differs-in-translation',
  severity: 'error',
  summary: 'A cause, a mark on a picture or the limits of a reading are others in a translation.',
  why: 'Two readers at one machine look in different places, and take different readings for right.',
  source: 'house rule',

  *check({ pages }) {
    for (const page of pages)
      for (const text of page.translations.values())
        for (const [name, attributes] of Object.entries(facts)) yield* differences(page, text, name, attributes)
  },
}

function* differences(page: AnyPage, text: TranslatedText, name: string, attributes: readonly string[]): Iterable<Problem> {
  const [own, translated] = [page.elements(name), text.elements(name)]
  const [first] = own
  if (own.length !== translated.length) {
    // Where a block is older than its source that is reported, and nothing tells which stands for which.
    if (!first || !isInStep(text)) return
    yield {
      message: `there are ${translated.length} \`<${name}>\` here, and ${own.length} in \`${page.language}\``,
      place: translated[0] ? namePlace(translated[0], text) : text.source.place(0),
      related: [{ label: `they begin here in \`${page.language}\``, place: namePlace(first, page) }],
      help: 'write the same ones in both',
    }
    return
  }
  for (const [index, element] of translated.entries()) {
    const source = own[index]
    const attribute = source && attributes.find((it) => written(source, it) !== written(element, it))
    if (!source || !attribute) continue
    yield {
      message: `\`${attribute}\` is ${said(element, attribute)} here, and ${said(source, attribute)} in \`${page.language}\``,
      place: attributePlace({ element, text }, attribute),
      related: [{ label: `it stands here in \`${page.language}\``, place: attributePlace({ element: source, text: page }, attribute) }],
      help: 'write the same value in both',
    }
  }
}

const isInStep = ({ sync }: TranslatedText) => sync.state === 'paired' && sync.blocks.every(({ state }) => state === 'same')

/** Of a unit only its symbol: "V d.c." is "V c.c." in Spanish. */
function written(element: JsxElement, attribute: string): string | undefined {
  const words = attributeOf(element, attribute)?.trim().split(/\s+/)
  return attribute === 'unit' ? words?.[0] : words?.join(' ')
}
const said = (element: JsxElement, attribute: string) => {
  const value = written(element, attribute)
  return value === undefined ? 'left out' : `\`${value}\``
}

import type { Nodes, Parents, Root } from 'mdast'
import type {} from 'mdast-util-to-hast'
import { type Attribute, type Element, elements } from '../model/elements.ts'
import { composedAnchors } from '../model/lockout-phases.ts'
import type { Heading, Reference } from '../model/machine.ts'
import { attributeOf, isElement, type JsxElement } from '../model/mdx-elements.ts'
import { scanOpeningTag } from '../model/opening-tag.ts'
import { listed } from '../model/safety-message.ts'
import type { Collection } from '../model/schema/pages.ts'
import { locateSheet, readSheetReference } from '../model/sheet-reference.ts'
import type { Located, Place } from '../source/place.ts'
import type { SourceText } from '../source/source-text.ts'
import { isDecimal } from './decimal.ts'
import { loadRules, type Sink } from './load-rules.ts'
import { misplacedInLockout } from './lockout-steps.ts'
import { placeOf } from './mdx.ts'
import { suggestKey } from './suggest-key.ts'

/** A reference as the body alone shows it; the page and its options are added when it is linked. */
export type BodyReference = Pick<Reference, 'kind' | 'id' | 'place' | 'anchor' | 'sheet' | 'zone'> & Partial<Pick<Reference, 'fits' | 'listed'>>

export interface BodyFacts {
  headings: Heading[]
  anchors: Set<string>
  references: BodyReference[]
}

interface Walk extends BodyFacts {
  source: SourceText
  collection: Collection
  /** The page is made for one device after another: its facts need no tag. */
  perDevice: boolean
  /** Identifiers of definitions that give a picture its file and not a link its page. */
  pictured: ReadonlySet<string>
  sink: Sink
}

/** Checks the elements of a body and collects what it holds: headings, anchors and references. */
export function readBody(body: Root, source: SourceText, collection: Collection, perDevice: boolean, sink: Sink): BodyFacts {
  const pictured = new Set(pictureNames(body))
  const walk: Walk = {
    headings: [],
    anchors: new Set(collection === 'lockout' ? composedAnchors : []),
    references: [],
    source,
    collection,
    perDevice,
    pictured,
    sink,
  }
  visit(body, [], walk)
  return { headings: walk.headings, anchors: walk.anchors, references: walk.references }
}

function visit(node: Nodes, around: readonly Parents[], walk: Walk): void {
  if (node.type === 'heading') readHeading(node, walk)
  else if (node.type === 'image' || (node.type === 'definition' && walk.pictured.has(node.identifier)))
    walk.references.push({ kind: 'image', id: node.url, place: within(node, node.url, walk.source) })
  else if (node.type === 'link' || node.type === 'definition') readLink(node, walk)
  else if (isElement(node)) readElement(node, around, walk)
  const before = walk.references.length
  if ('children' in node) for (const child of node.children) visit(child, [...around, node], walk)
  const option = optionOf(node)
  if (option !== undefined) for (const reference of walk.references.slice(before)) reference.fits ??= [option]
}

/** The names by which a body shows pictures whose files stand elsewhere on the page: `![The plan][plan]`. */
function pictureNames(node: Nodes): string[] {
  if (node.type === 'imageReference') return [node.identifier]
  return 'children' in node ? node.children.flatMap(pictureNames) : []
}

/** The option of a `<Fitted>` element: what stands in it is there only where the option is fitted. */
export function optionOf(node: Nodes): string | undefined {
  return isElement(node) && node.name === 'Fitted' ? attributeOf(node, 'option') : undefined
}

function readHeading(node: Extract<Nodes, { type: 'heading' }>, { headings, anchors, source }: Walk): void {
  const text = plainText(node)
  const slug =
    text
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\s_-]/gu, '')
      .trim()
      .replace(/\s+/g, '-') || 'section'
  let anchor = slug
  for (let n = 1; anchors.has(anchor); n++) anchor = `${slug}-${n}`
  anchors.add(anchor)
  // The build turns this into the id of the heading.
  node.data = { ...node.data, hProperties: { id: anchor } }
  headings.push({ depth: node.depth, text, anchor, place: placeOf(node, source) })
}

function readLink(node: Extract<Nodes, { type: 'link' | 'definition' }>, { references, source, sink }: Walk): void {
  const place = within(node, node.url, source)
  if (/^([a-z][a-z0-9+.-]*:|\/\/)/i.test(node.url)) {
    sink(loadRules.outsideLink, {
      message: `\`${node.url}\` is outside the manual`,
      place,
      help: 'write the address as plain text, or put what it says on a page',
    })
    return
  }
  references.push(pageReference(node.url, place))
}

function pageReference(written: string, place: Located<string>['place']): BodyReference {
  const [id = '', ...rest] = written.split('#')
  const anchor = rest.length > 0 ? rest.join('#') : undefined
  return {
    kind: 'page',
    id,
    place,
    ...(anchor === undefined ? {} : { anchor: { value: anchor, place: { ...place, column: place.column + id.length + 1 } } }),
  }
}

function readElement(node: JsxElement, around: readonly Parents[], walk: Walk): void {
  const { source, sink } = walk
  const start = node.position?.start.offset ?? 0
  const namePlace = source.place(start + 1, start + 1 + (node.name?.length ?? 0))
  const element = ownOf(elements, node.name ?? '')
  if (!element) {
    const near = suggestKey(node.name ?? '', Object.keys(elements))
    sink(loadRules.unknownElement, {
      message: `there is no element \`<${node.name ?? ''}>\``,
      place: namePlace,
      help: near ? `write \`<${near}>\`` : `use one of ${Object.keys(elements).join(', ')}, or Markdown`,
    })
    return
  }
  if (node.name === 'Safety' && around.some((it) => isElement(it) && it.name === 'Safety')) {
    sink(loadRules.misplacedElement, {
      message: '`<Safety>` stands inside another',
      place: namePlace,
      help: 'one message speaks of one hazard: close the first before the second begins',
    })
  }
  if (node.name === 'Include' && walk.collection === 'cautions') {
    sink(loadRules.misplacedElement, {
      message: 'a caution includes another caution',
      place: namePlace,
      help: 'include both on the page that needs them',
    })
  }
  const parent = around.findLast((it): it is Extract<Parents, JsxElement> => isElement(it) && it.name !== 'Fitted')
  if (element.inside && !element.inside.includes(parent?.name ?? '')) {
    sink(loadRules.misplacedElement, {
      message: `\`<${node.name}>\` stands outside \`<${element.inside.join('> or <')}>\``,
      place: namePlace,
      help: `put it inside \`<${element.inside[0]}>\``,
    })
  }
  const misplaced = misplacedInLockout(node, around, walk.collection)
  if (misplaced) sink(loadRules.misplacedElement, { ...misplaced, place: namePlace })
  readAttributes(node, element, walk)
}

function readAttributes(node: JsxElement, element: Element, walk: Walk): void {
  const { source, sink, references, anchors } = walk
  const name = `<${node.name}>`
  const start = node.position?.start.offset ?? 0
  const spots = scanOpeningTag(source.text, start)
  const placed = new Map<string, Located<string>>()
  for (const [index, written] of node.attributes.entries()) {
    const spot = spots[index]
    const place = spot ? source.place(spot.valueStart, spot.valueEnd) : placeOf(node, source)
    const namePlace = spot ? source.place(spot.nameStart, spot.nameStart + spot.name.length) : place
    if (written.type === 'mdxJsxExpressionAttribute' || (typeof written.value === 'object' && written.value !== null)) {
      sink(loadRules.expressionInProse, {
        message: `\`${name}\` takes plain text only, in quotes`,
        place,
        help: written.type === 'mdxJsxAttribute' ? `write \`${written.name}="…"\`` : 'write each attribute with its name',
      })
      if (written.type === 'mdxJsxAttribute') placed.set(written.name, { value: '', place })
      continue
    }
    const attribute = ownOf(element.attributes, written.name)
    if (!attribute) {
      const near = suggestKey(written.name, Object.keys(element.attributes))
      sink(loadRules.unknownAttribute, {
        message: `\`${name}\` takes no \`${written.name}\``,
        place: namePlace,
        help: near ? `write \`${near}\`` : `it takes ${Object.keys(element.attributes).join(', ') || 'none'}`,
      })
      continue
    }
    const value = written.value ?? ''
    placed.set(written.name, { value, place })
    checkValue(name, written.name, attribute, { value, place }, sink)
    if (!attribute.refersTo || value === '') continue
    if (attribute.refersTo === 'page') references.push(pageReference(value, place))
    else if (attribute.list) for (const id of listed(value)) references.push({ kind: attribute.refersTo, id, place: partOf(value, id, place) })
    else references.push({ kind: attribute.refersTo, id: value, place })
  }
  for (const [key, { required }] of Object.entries(element.attributes)) {
    if (required && !placed.has(key))
      sink(loadRules.missingAttribute, {
        message: `\`${name}\` has no \`${key}\``,
        place: source.place(start + 1, start + 1 + (node.name?.length ?? 0)),
        help: `write \`<${node.name} ${key}="…">\``,
      })
  }
  const sheet = node.name === 'Drawing' ? placed.get('sheet') : undefined
  const last = placed.get('number')?.value ? references.findLast(({ kind }) => kind === 'drawing') : undefined
  const reference = sheet && locateSheet(sheet.value, sheet.place)
  if (sheet && last && (reference || isDecimal(sheet.value))) last.sheet = reference ?? { value: Number(sheet.value), place: sheet.place }
  const zone = node.name === 'Drawing' ? placed.get('zone') : undefined
  if (zone && reference?.zone)
    sink(loadRules.wrongAttribute, {
      message: `\`sheet\` of \`${name}\` names the zone too`,
      place: zone.place,
      related: [{ label: 'here', place: reference.zone.place }],
      help: 'keep one of them',
    })
  // A sheet that is no number is reported as such.
  else if (last && (!sheet || last.sheet)) {
    const named = reference?.zone ?? zone
    if (named) last.zone = named
  }
  const anchor = node.name === 'Anchor' ? placed.get('id')?.value : undefined
  if (anchor) anchors.add(anchor)
  if (node.name === 'Fact' && !placed.has('tag') && !walk.perDevice) {
    sink(loadRules.missingAttribute, {
      message: '`<Fact>` has no `tag`',
      place: placeOf(node, source),
      note: 'only a lesson about a technology speaks of one device at a time',
      help: 'name the device: `<Fact of="…" tag="…" />`',
    })
  }
}

/** A value by its key, where the key may be a name that every object has: `constructor`. */
function ownOf<T>(record: Readonly<Record<string, T>>, key: string): T | undefined {
  return Object.hasOwn(record, key) ? record[key] : undefined
}

function checkValue(element: string, name: string, attribute: Attribute, { value, place }: Located<string>, sink: Sink): void {
  if (attribute.required && value.trim() === '') sink(loadRules.missingAttribute, { message: `\`${name}\` of \`${element}\` is empty`, place })
  else if (attribute.oneOf && !attribute.oneOf.includes(value)) {
    const near = suggestKey(value, attribute.oneOf)
    sink(loadRules.wrongAttribute, {
      message: `\`${name}\` of \`${element}\` is \`${value}\``,
      place,
      help: near ? `write \`${near}\`` : `write one of ${attribute.oneOf.join(', ')}`,
    })
  } else if (attribute.sheet && !isDecimal(value) && !readSheetReference(value)) {
    sink(loadRules.wrongAttribute, {
      message: `\`${name}\` of \`${element}\` takes the number of a sheet or a reference like \`/12.4:C\`, and holds \`${value}\``,
      place,
    })
  } else if (attribute.number && !isDecimal(value)) {
    const point = value.replace(',', '.')
    sink(loadRules.wrongAttribute, {
      message: `\`${name}\` of \`${element}\` takes a number, and holds \`${value}\``,
      place,
      ...(isDecimal(point) ? { help: `write \`${point}\`` } : {}),
    })
  }
}

/** The place of one name in an attribute that takes several. */
function partOf(value: string, name: string, place: Place): Place {
  if (place.line !== place.endLine) return place
  const at = ` ${value.replace(/\s/g, ' ')} `.indexOf(` ${name} `)
  return { ...place, column: place.column + at, endColumn: place.column + at + name.length }
}

/** The place of a link's address inside the node; the whole node when it is written with escapes. */
function within(node: Nodes, url: string, source: SourceText) {
  const [start, end] = [node.position?.start.offset ?? 0, node.position?.end.offset ?? 0]
  const at = url === '' ? -1 : source.text.slice(start, end).lastIndexOf(url)
  return at === -1 ? source.place(start, end) : source.place(start + at, start + at + url.length)
}

/** The text of a node without markup. An element shows its first attribute: `<Tag id="PRS104" />` is PRS104. */
export function plainText(node: Nodes): string {
  if (node.type === 'text' || node.type === 'inlineCode') return node.value
  if (node.type === 'break') return ' '
  if ('children' in node && node.children.length > 0) return node.children.map(plainText).join('')
  if (isElement(node)) {
    const first = node.attributes[0]
    return first?.type === 'mdxJsxAttribute' && typeof first.value === 'string' ? first.value : ''
  }
  return ''
}

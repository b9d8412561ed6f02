import type { Element, Nodes, Root } from 'xast'
import { fromXml } from 'xast-util-from-xml'
import { toXml } from 'xast-util-to-xml'
import type { Sheet, SheetText } from '../model/machine.ts'
import { type Place, startOfFile } from '../source/place.ts'
import type { SourceText } from '../source/source-text.ts'
import { loadRules, type Sink } from './load-rules.ts'
import { identity, type Matrix, multiply, parseTransform } from './svg-transform.ts'
import { xmlFault } from './xml-fault.ts'

/** Reads one SVG sheet: cleans it and finds its texts. An empty sheet, with a finding, when it is broken. */
export function parseSheet(source: SourceText, number: number, sink: Sink): Sheet {
  const empty: Sheet = {
    number,
    file: source.file,
    place: startOfFile(source.file),
    exists: true,
    readable: false,
    svg: () => '',
    viewBox: { x: 0, y: 0, width: 0, height: 0 },
    texts: [],
  }
  let tree: Root
  try {
    tree = fromXml(source.text)
  } catch (error) {
    const { reason, offset } = xmlFault(error, source)
    sink(loadRules.brokenDrawing, {
      message: `the sheet is not valid XML: ${reason}`,
      place: source.place(offset, offset + 1),
    })
    return empty
  }
  const svg = svgOf(tree)
  const viewBox = svg?.attributes.viewBox
    ?.trim()
    .split(/[\s,]+/)
    .map(Number)
  const [x, y, width, height] = viewBox ?? []
  if (!svg || x === undefined || y === undefined || !width || !height || viewBox?.some(Number.isNaN)) {
    sink(loadRules.brokenDrawing, {
      message: svg ? 'the sheet has no `viewBox`' : 'the file holds no `<svg>`',
      place: source.place(0, 1),
      help: 'export the sheet as SVG with `viewBox="0 0 width height"`',
    })
    return empty
  }
  const texts: SheetText[] = []
  collectTexts(cleaned(withoutShapes(svg)), identity, 16, { texts, source })
  return {
    number,
    file: source.file,
    place: startOfFile(source.file),
    exists: true,
    readable: true,
    svg: () => shownSvg(source.text, { x, y, width, height }),
    viewBox: { x, y, width, height },
    texts,
  }
}

const svgOf = (tree: Root) => tree.children.find((node): node is Element => node.type === 'element' && node.name === 'svg')

/**
 * The sheet as a page shows it: its own size in its own units, so that it keeps its scale inside a larger
 * drawing. Read again, since a check shows none and the trees of all sheets take a quarter of its memory.
 */
function shownSvg(text: string, viewBox: Sheet['viewBox']): string {
  const svg = svgOf(fromXml(text))
  if (!svg) return ''
  const clean = cleaned(svg)
  for (const [name, value] of Object.entries(viewBox)) clean.attributes[name] = String(value)
  return toXml(clean, { closeEmptyElements: true })
}

const dropped = new Set(['script', 'foreignObject', 'metadata', 'iframe', 'audio', 'video', 'animate', 'set', 'handler'])

/** The element without what has no children and stands in no text: the lines and shapes of a sheet, which are most of it. */
function withoutShapes(element: Element): Element {
  if (element.name === 'text') return element
  const children = element.children.flatMap((child): Element['children'] => {
    if (child.type !== 'element') return [child]
    return child.children.length > 0 || child.name === 'text' ? [withoutShapes(child)] : []
  })
  return { ...element, children }
}

/** The element without scripts, event handlers, outside references, comments and foreign content. */
function cleaned(element: Element): Element {
  const attributes: Record<string, string> = {}
  for (const [name, value] of Object.entries(element.attributes)) {
    if (typeof value !== 'string' || /^on/i.test(name)) continue
    if (/^(xlink:)?href$/.test(name) && !value.trim().startsWith('#') && !/^data:image\/(png|jpeg|webp);/.test(value)) continue
    if (/url\(\s*['"]?(?!#)/i.test(value) || (name.includes(':') && !/^(xlink|xml|xmlns):/.test(name))) continue
    attributes[name] = value
  }
  const children = element.children.flatMap((child): Element['children'] => {
    if (child.type === 'text') return [child]
    if (child.type !== 'element' || dropped.has(child.name) || child.name.includes(':')) return []
    if (child.name === 'style' && /@import|url\(/i.test(textOf(child))) return []
    return [cleaned(child)]
  })
  return { type: 'element', name: element.name, attributes, children, ...(element.position ? { position: element.position } : {}) }
}

interface Collected {
  texts: SheetText[]
  source: SourceText
}

/** Every text with the middle of its place on the sheet. A tspan that has its own position is a text of its own. */
function collectTexts(element: Element, outer: Matrix, outerFontSize: number, collected: Collected): void {
  const matrix = element.attributes.transform ? multiply(outer, parseTransform(element.attributes.transform)) : outer
  const fontSize = fontSizeOf(element) ?? outerFontSize
  if (element.name === 'text') {
    addText(element, element, matrix, fontSize, collected)
    return
  }
  if (element.name === 'defs' || element.name === 'symbol') return
  for (const child of element.children) if (child.type === 'element') collectTexts(child, matrix, fontSize, collected)
}

function addText(element: Element, anchored: Element, matrix: Matrix, fontSize: number, collected: Collected): void {
  const placed = element.children.filter(
    (child): child is Element => child.type === 'element' && child.attributes.x !== undefined && child.attributes.y !== undefined,
  )
  for (const span of piecesJoined(placed, fontSize))
    addText(span, span.attributes['text-anchor'] ? span : anchored, matrix, fontSizeOf(span) ?? fontSize, collected)
  const own = element.children.filter((child) => !placed.some((it) => it === child))
  const text = withoutLetterSpace(own.map(textOf).join('').replace(/\s+/g, ' ').trim())
  if (text === '') return
  const [x, y] = [Number.parseFloat(element.attributes.x ?? '0'), Number.parseFloat(element.attributes.y ?? '0')]
  // Letters of drawing fonts are about 0.6 of the font size wide; the mark round a tag needs no more.
  const width = text.length * fontSize * 0.6
  const anchor = anchored.attributes['text-anchor']
  const middle = x + (anchor === 'middle' ? 0 : anchor === 'end' ? -width / 2 : width / 2)
  const raised = element.attributes['dominant-baseline'] ? y : y - fontSize * 0.35
  const [a, b, c, d, e, f] = matrix
  collected.texts.push({
    text,
    x: a * middle + c * raised + e,
    y: b * middle + d * raised + f,
    fontSize: fontSize * Math.hypot(a, b),
    angleDeg: (Math.atan2(b, a) * 180) / Math.PI,
    place: placeOf(own, collected.source),
  })
}

/** Spans of one text on one line, each where the one before it ends: an exporter set the pieces of a word by themselves. */
function piecesJoined(spans: readonly Element[], fontSize: number): Element[] {
  const joined: Element[] = []
  for (const span of spans) {
    const before = joined.at(-1)
    if (before && follows(before, span, fontSize)) joined[joined.length - 1] = { ...before, children: [...before.children, ...span.children] }
    else joined.push(span)
  }
  return joined
}

function follows(before: Element, span: Element, fontSize: number): boolean {
  if (before.attributes.y !== span.attributes.y || span.attributes['text-anchor'] || before.attributes['text-anchor']) return false
  const letters = textOf(before).length
  const size = fontSizeOf(before) ?? fontSize
  // How wide a letter is depends on the font: between 0.3 and 0.9 of its size.
  const advance = (Number.parseFloat(span.attributes.x ?? '') - Number.parseFloat(before.attributes.x ?? '')) / size
  return advance > 0.3 * letters - 0.1 && advance < 0.9 * letters
}

/** Three or more single letters with blanks between them are one word. */
const withoutLetterSpace = (text: string) => (/^\S( \S){2,}$/.test(text) ? text.replaceAll(' ', '') : text)

/** From the first letter of these nodes to the last: the blanks around them are not the text. */
function placeOf(nodes: readonly Nodes[], source: SourceText): Place {
  const written = nodes.filter((node) => textOf(node).trim() !== '')
  const start = written[0]?.position?.start.offset ?? 0
  const end = written.at(-1)?.position?.end.offset ?? start
  const raw = source.text.slice(start, end)
  return source.place(start + raw.length - raw.trimStart().length, start + raw.trimEnd().length)
}

function fontSizeOf(element: Element): number | undefined {
  const written = element.attributes['font-size'] ?? /font-size\s*:\s*([\d.]+)/.exec(element.attributes.style ?? '')?.[1]
  const size = written === undefined || written === null ? Number.NaN : Number.parseFloat(written)
  return Number.isNaN(size) ? undefined : size
}

function textOf(node: Nodes): string {
  if (node.type === 'text') return node.value
  return 'children' in node ? node.children.map(textOf).join('') : ''
}

import { type DefaultTreeAdapterTypes, defaultTreeAdapter, html, parse, parseFragment, serializeOuter } from 'parse5'

export type HtmlNode = DefaultTreeAdapterTypes.Node
export type HtmlElement = DefaultTreeAdapterTypes.Element

/** The elements of a tree in the order of the text, the root included. */
export function* elementsIn(node: HtmlNode): Generator<HtmlElement> {
  if ('tagName' in node) yield node
  if ('childNodes' in node) for (const child of [...node.childNodes]) yield* elementsIn(child)
}

export function firstElement(node: HtmlNode, fits: (element: HtmlElement) => boolean): HtmlElement | undefined {
  for (const element of elementsIn(node)) if (fits(element)) return element
  return undefined
}

export const firstWithClass = (node: HtmlNode, name: string) => firstElement(node, (it) => hasClass(it, name))

/** The elements directly in a node. */
export function childElements(node: HtmlNode): HtmlElement[] {
  return 'childNodes' in node ? node.childNodes.filter((it): it is HtmlElement => 'tagName' in it) : []
}

/** The value of an attribute; of one in a name space by its prefix and name: `xlink:href`. */
export function attribute(element: HtmlElement, name: string): string | undefined {
  return element.attrs.find((it) => fullName(it) === name)?.value
}

export const fullName = ({ name, prefix }: { name: string; prefix?: string }) => (prefix ? `${prefix}:${name}` : name)

export function setAttribute(element: HtmlElement, name: string, value: string): void {
  const own = element.attrs.find((it) => it.name === name)
  if (own) own.value = value
  else element.attrs.push({ name, value })
}

export function classesOf(element: HtmlElement): readonly string[] {
  return attribute(element, 'class')?.split(/\s+/) ?? []
}

export const hasClass = (element: HtmlElement, name: string) => classesOf(element).includes(name)

/** The words below a node, with one blank for what stands between them. */
export function textOf(node: HtmlNode): string {
  return rawText(node).replace(/\s+/g, ' ').trim()
}

function rawText(node: HtmlNode): string {
  if ('value' in node) return node.value
  return 'childNodes' in node ? node.childNodes.map(rawText).join('') : ''
}

export function detach(node: DefaultTreeAdapterTypes.ChildNode): void {
  defaultTreeAdapter.detachNode(node)
}

/** A new element with attributes and, as children, elements and texts. */
export function element(tagName: string, attributes: Readonly<Record<string, string>>, ...children: (HtmlElement | string)[]): HtmlElement {
  const made = defaultTreeAdapter.createElement(
    tagName,
    html.NS.HTML,
    Object.entries(attributes).map(([name, value]) => ({ name, value })),
  )
  for (const child of children) append(made, child)
  return made
}

export function append(parent: HtmlElement, child: HtmlElement | string): void {
  if (typeof child === 'string') defaultTreeAdapter.insertText(parent, child)
  else defaultTreeAdapter.appendChild(parent, child)
}

export function prepend(parent: HtmlElement, child: HtmlElement | string): void {
  const [first] = parent.childNodes
  const node = typeof child === 'string' ? defaultTreeAdapter.createTextNode(child) : child
  if (first) defaultTreeAdapter.insertBefore(parent, node, first)
  else defaultTreeAdapter.appendChild(parent, node)
}

/** Gives an element another name and keeps everything else. */
export function rename(element: HtmlElement, tagName: string): void {
  element.tagName = tagName
  element.nodeName = tagName
}

export function isInside(element: HtmlElement, fits: (ancestor: HtmlElement) => boolean): boolean {
  for (let at = element.parentNode; at && 'tagName' in at; at = at.parentNode) if (fits(at)) return true
  return false
}

export const parsePage = (text: string) => parse(text)
export const parsePart = (text: string) => parseFragment(text)
export const writeElement = (element: HtmlElement) => serializeOuter(element)

/** A text as HTML shows it, also inside double quotes. */
export function escapeHtml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
}

/** Moves everything in an element to the end of another. */
export function moveChildren(from: HtmlElement, to: HtmlElement): void {
  for (const child of [...from.childNodes]) {
    defaultTreeAdapter.detachNode(child)
    defaultTreeAdapter.appendChild(to, child)
  }
}

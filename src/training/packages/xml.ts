import { escaped } from './escaped.ts'

export interface XmlElement {
  name: string
  attributes: Readonly<Record<string, string | undefined>>
  children: readonly (XmlElement | string)[]
}

/** An element; an attribute that is undefined is left out. */
export function element(name: string, attributes: XmlElement['attributes'], ...children: readonly (XmlElement | string)[]): XmlElement {
  return { name, attributes, children }
}

/** A document in XML 1.0: elements on lines of their own, texts as they are. */
export function xmlDocument(root: XmlElement): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written(root, '')}`
}

function written({ name, attributes, children }: XmlElement, indent: string): string {
  const said = Object.entries(attributes).map(([key, value]) => (value === undefined ? '' : ` ${key}="${inXml(value)}"`))
  const head = `${indent}<${name}${said.join('')}`
  if (children.length === 0) return `${head}/>\n`
  const inner = children.map((child) => (typeof child === 'string' ? inXml(child) : written(child, `${indent}  `)))
  const hasText = children.some((child) => typeof child === 'string')
  return hasText ? `${head}>${inner.join('')}</${name}>\n` : `${head}>\n${inner.join('')}${indent}</${name}>\n`
}

/** What XML 1.0 (section 2.2) does not know as a character is replaced by the mark for that: no file is broken by a title. */
const inXml = (text: string) => escaped(text).replace(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, '\ufffd')

/** A name as an XML id: two different names never share one. `_` and what an id may not hold become `_x` with their hex code and `_`. */
export function xmlId(prefix: string, name: string): string {
  return `${prefix}-${[...name].map((sign) => (/[A-Za-z0-9.-]/.test(sign) ? sign : `_x${sign.codePointAt(0)?.toString(16)}_`)).join('')}`
}

/** The path of a file of the package as a relative reference. */
export function hrefOf(path: string): string {
  return path.split('/').map(encodeURIComponent).join('/')
}

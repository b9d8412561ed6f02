/** An attribute of an opening tag, with the offsets of its name and of its value between the quotes. */
export interface TagAttribute {
  name: string
  nameStart: number
  valueStart: number
  valueEnd: number
}

/**
 * Finds the attributes of the MDX opening tag that starts at `offset`. The parser gives elements a position
 * and attributes none; it has accepted the tag, so its form is certain.
 */
export function scanOpeningTag(text: string, offset: number): TagAttribute[] {
  const attributes: TagAttribute[] = []
  let at = offset + 1
  const skip = (pattern: RegExp) => {
    pattern.lastIndex = at
    at += pattern.exec(text)?.[0].length ?? 0
  }
  skip(/[^\s/>]*/y)
  for (;;) {
    skip(/\s*/y)
    if (at >= text.length || text[at] === '>' || text[at] === '/') return attributes
    const nameStart = at
    if (text[at] === '{') skip(/\{[^}]*\}/y)
    else skip(/[^\s=/>]+/y)
    const name = text.slice(nameStart, at)
    if (at === nameStart) return attributes
    skip(/\s*/y)
    if (text[at] !== '=') {
      attributes.push({ name, nameStart, valueStart: at, valueEnd: at })
      continue
    }
    at += 1
    skip(/\s*/y)
    const quote = text[at]
    const close = quote === '"' || quote === "'" ? text.indexOf(quote, at + 1) : text.indexOf('}', at)
    if (close === -1) return attributes
    const braced = quote === '{'
    attributes.push({ name, nameStart, valueStart: braced ? at : at + 1, valueEnd: braced ? close + 1 : close })
    at = close + 1
  }
}

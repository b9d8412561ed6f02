import { SaxesParser } from 'saxes'

/** What is done with the parts of an XML text. Names are without their prefix. */
export interface XmlHandlers {
  open?(name: string, attribute: (name: string) => string | undefined): void
  text?(text: string): void
  close?(name: string): void
}

const sliceBytes = 65_536

/**
 * Walks XML in UTF-8 from its first to its last element. Answers why it is not well-formed, or undefined. An entity
 * that XML itself does not define is an error, so that none can grow.
 */
export function walkXml(bytes: Uint8Array, { open, text, close }: XmlHandlers): string | undefined {
  const parser = new SaxesParser<{ xmlns: false; position: false }>({ xmlns: false, position: false })
  let problem: string | undefined
  parser.on('error', (error) => {
    problem ??= error.message
  })
  if (open) {
    parser.on('opentag', ({ name, attributes }) => open(withoutPrefix(name), (wanted) => attributes[wanted] ?? prefixed(attributes, wanted)))
  }
  if (text) {
    parser.on('text', text)
    parser.on('cdata', text)
  }
  if (close) parser.on('closetag', ({ name }) => close(withoutPrefix(name)))
  const decoder = new TextDecoder('utf-8', { fatal: true })
  try {
    for (let at = 0; at < bytes.length && problem === undefined; at += sliceBytes) {
      parser.write(decoder.decode(bytes.subarray(at, at + sliceBytes), { stream: true }))
    }
    if (problem === undefined) parser.write(decoder.decode())
  } catch {
    return 'it is not in UTF-8'
  }
  if (problem === undefined) parser.close()
  return problem
}

const withoutPrefix = (name: string) => name.slice(name.indexOf(':') + 1)

function prefixed(attributes: Readonly<Record<string, string>>, wanted: string): string | undefined {
  for (const name in attributes) if (name.endsWith(`:${wanted}`)) return attributes[name]
  return undefined
}

/**
 * A YAML file whose sections, the keys that start a line, go on with the sections of others. Those named in `once`
 * stay as they are.
 */
export function appendToSections(own: string, others: readonly string[], once: readonly string[]): string {
  const copies = others.map(sectionsOf)
  return [...sectionsOf(own)]
    .map(([key, body]) => [body, ...(key === '' || once.includes(key) ? [] : copies.map((copy) => withoutKey(copy.get(key) ?? '')))].join(''))
    .join('')
}

/** The lines of each section by its key, in their order; what stands before the first has the key ''. */
function sectionsOf(text: string): Map<string, string> {
  const sections = new Map<string, string>()
  let key = ''
  for (const line of text.replace(/\n*$/, '\n').split(/(?<=\n)/)) {
    key = /^(\w+):/.exec(line)?.[1] ?? key
    sections.set(key, (sections.get(key) ?? '') + line)
  }
  return sections
}

const withoutKey = (section: string) => section.slice(section.indexOf('\n') + 1)

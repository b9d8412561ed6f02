/** What an export or a hurried hand writes where a description should stand. Common practice. */
const fillers: ReadonlySet<string> = new Set(
  ['tbd', 'tba', 'tbc', 'todo', 'to do', 'x', 'n/a', 'unknown', 'dummy', 'placeholder', 'description', 'text', 'device', 'new device'].concat([
    'no description',
    'to be defined',
  ]),
)

const plain = (text: string) =>
  text
    .trim()
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/^[\s.…?!*_<>[\]-]+|[\s.…?!*_<>[\]-]+$/g, '')

/**
 * Why the description of a device tells nothing; undefined when it tells something. The kind alone tells enough
 * where the machine has one device of that kind.
 */
export function emptiness(description: string, tag: string, kind: string, othersOfKind: boolean): 'filler' | 'tag' | 'kind' | undefined {
  const text = plain(description)
  if (text === '' || fillers.has(text) || /^x+$/.test(text)) return 'filler'
  if (text === plain(tag)) return 'tag'
  return othersOfKind && text === plain(kind) ? 'kind' : undefined
}

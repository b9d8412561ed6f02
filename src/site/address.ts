/**
 * A name as a file name: safe on every file system and in a link without escapes. Letters, digits and
 * `. _ = + -` stay; anything else becomes `~` and the hex of its UTF-8 bytes, `~` as well, so that two
 * names never share an address. Names that Windows keeps for devices get a `~` at the end.
 */
export function slug(name: string): string {
  const safe = [...name]
    .map((character, index) =>
      /[A-Za-z0-9_=+-]/.test(character) || (character === '.' && index > 0)
        ? character
        : [...new TextEncoder().encode(character)].map((byte) => `~${byte.toString(16).padStart(2, '0')}`).join(''),
    )
    .join('')
  return /^(con|prn|aux|nul|com\d|lpt\d)$/i.test(safe) ? `${safe}~` : safe
}

/** The address of everything that has a page, from the root of one language. Outside tools rely on these. */
export const address = {
  start: 'index.html',
  search: 'search.html',
  devices: 'devices.html',
  alarms: 'alarms.html',
  parts: 'parts.html',
  drawings: 'drawings.html',
  lessons: 'lessons.html',
  lockouts: 'lockout.html',
  procedures: 'procedures.html',
  manual: 'manual.html',
  glossary: 'glossary.html',
  lookup: 'lookup.html',
  about: 'about.html',
  planning: 'planning.html',
  tag: (tag: string) => `tags/${slug(tag)}.html`,
  alarm: (number: string) => `alarms/${slug(number)}.html`,
  part: (number: string) => `parts/${slug(number)}.html`,
  /** The first sheet has the address of the drawing. */
  drawing: (number: string, sheet = 1) => (sheet === 1 ? `drawings/${slug(number)}.html` : `drawings/${slug(number)}/${sheet}.html`),
  area: (id: string) => `areas/${slug(id)}.html`,
  /** A page of a collection: `lockout/lo-1` -> `lockout/lo-1.html`. Parts lists stand apart from the parts, which are known by their numbers. */
  page: (id: string) =>
    `${id
      .replace(/^parts\//, 'parts-lists/')
      .split('/')
      .map(slug)
      .join('/')}.html`,
  /** The set-up of a product. */
  format: (format: string) => `set-up/${slug(format)}.html`,
  /** The way of a role through its lessons. */
  path: (role: string) => `paths/${slug(role)}.html`,
  lessonFor: (name: string, tag: string) => `checks/${slug(name)}/${slug(tag)}.html`,
}

/** The relative link from one page of the site to another file of it. Both count from the root of the site. */
export function relativeLink(from: string, to: string): string {
  const [path = '', ...anchor] = to.split('#')
  const here = from.split('/').slice(0, -1)
  const there = path.split('/')
  let shared = 0
  while (shared < here.length && shared < there.length - 1 && here[shared] === there[shared]) shared++
  const steps = '../'.repeat(here.length - shared) + there.slice(shared).join('/')
  return anchor.length > 0 ? `${steps}#${anchor.join('#')}` : steps
}

/** A text of a frontmatter with the path of its value. */
export interface FrontmatterText {
  path: (string | number)[]
  text: string
}

/** What of a question is no text to read. */
const settings = new Set(['choose', 'right'])

/** The texts in a value of a frontmatter: itself, those of a list, and those of questions with their answers. */
export function frontmatterTexts(key: string, value: unknown): FrontmatterText[] {
  const within = (value: unknown, path: (string | number)[]): FrontmatterText[] => {
    if (typeof value === 'string') return [{ path, text: value }]
    if (Array.isArray(value)) return value.flatMap((item, index) => within(item, [...path, index]))
    if (typeof value !== 'object' || value === null) return []
    return Object.entries(value).flatMap(([name, item]) => (settings.has(name) ? [] : within(item, [...path, name])))
  }
  return within(value, [key])
}

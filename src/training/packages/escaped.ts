const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

/** A text as it stands in markup, between tags or in a quoted attribute. */
export function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => entities[sign] ?? sign)
}

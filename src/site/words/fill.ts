/** Fills `{name}` in a label. */
export function fill(label: string, values: Readonly<Record<string, string | number>>): string {
  return label.replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole))
}

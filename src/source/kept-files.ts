/** What is costly to make, kept by everything that it was made of. What is not there, or no longer whole, is made again. */
export interface KeptFiles {
  get(of: readonly string[]): Uint8Array | undefined
  set(of: readonly string[], made: Uint8Array): void
}

/** What was made of these before, or else what `make` makes of them now. */
export async function keptOr(kept: KeptFiles | undefined, of: readonly string[], make: () => Promise<Uint8Array>): Promise<Uint8Array> {
  const known = kept?.get(of)
  if (known) return known
  const made = await make()
  kept?.set(of, made)
  return made
}

/** Cables and terminals, which a list of devices seldom holds: classes W and X of IEC 81346-2, from memory. */
export const conductsOrJoins = (designation: string) => /-[WX][A-Z]{0,2}\d+$/.test(designation)

/** A cable or a plug is often named after its device: `W20M01`, `X-PRS204`. Common practice. */
export const namesCable = (word: string, tags: Pick<ReadonlySet<string>, 'has'>) => /^[WX]/.test(word) && tags.has(word.replace(/^[WX]-?/, ''))

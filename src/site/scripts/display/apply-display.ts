import { load } from '../store.ts'

/** What a reader can set for this screen, with the values besides the usual one. As `data-<name>` the styles know it. */
const choices: Readonly<Record<string, readonly string[]>> = {
  theme: ['light', 'dark'],
  text: ['larger', 'largest'],
  hand: ['left'],
  sizes: ['panel', 'office'],
}

export const displayKey = (name: string): string => `fettle.${name}`

/** The value that was chosen on this screen; empty for the usual one. */
export function chosenDisplay(name: string): string {
  const kept = load(displayKey(name)) ?? ''
  return choices[name]?.includes(kept) ? kept : ''
}

/** Runs before the first paint too: what was chosen on this screen. */
export function applyDisplay(): void {
  for (const name of Object.keys(choices)) {
    const value = chosenDisplay(name)
    if (value) document.documentElement.dataset[name] = value
    else delete document.documentElement.dataset[name]
  }
}

import { dictionary } from 'cmu-pronouncing-dictionary'
import spelling from 'dictionary-en'

/** Each word of cmu-pronouncing-dictionary with the numbers of syllables of its pronunciations, the first one first. */
export function dictionaryCounts(): Map<string, number[]> {
  const counts = new Map<string, number[]>()
  for (const [entry, phones] of Object.entries(dictionary)) {
    const word = entry.replace(/\(\d\)$/, '')
    if (!/^[a-z]+$/.test(word)) continue
    const syllables = phones.match(/\d/g)?.length ?? 0
    const known = counts.get(word)
    if (!known) counts.set(word, [syllables])
    else if (!known.includes(syllables)) known.push(syllables)
  }
  return counts
}

/** Words in lower case of the spelling dictionary dictionary-en (SCOWL 60), with all forms that its affixes give. */
export function spellingWords(): Set<string> {
  const linesOf = (bytes: Uint8Array) => new TextDecoder().decode(bytes).split('\n')
  const affixes = new Map<string, Affix[]>()
  for (const line of linesOf(spelling.aff)) {
    const [type = '', flag = '', remove = '', add = '', condition] = line.split(/\s+/)
    if (condition === undefined || condition === '') continue
    const affix = { prefix: type === 'PFX', remove: remove === '0' ? 0 : remove.length, add, fits: new RegExp(type === 'PFX' ? '' : `${condition}$`) }
    affixes.set(flag, [...(affixes.get(flag) ?? []), affix])
  }
  const words = new Set<string>()
  for (const line of linesOf(spelling.dic)) {
    const [word = '', flags = ''] = line.split('/')
    if (!/^[a-z]{2,}$/.test(word)) continue
    const fitting = [...flags].flatMap((flag) => affixes.get(flag) ?? []).filter(({ fits }) => fits.test(word))
    const suffixed = [word, ...fitting.filter(({ prefix }) => !prefix).map(({ remove, add }) => word.slice(0, word.length - remove) + add)]
    const prefixes = ['', ...fitting.filter(({ prefix }) => prefix).map(({ add }) => add)]
    for (const form of suffixed) for (const prefix of prefixes) if (!form.includes("'")) words.add(prefix + form)
  }
  return words
}

interface Affix {
  prefix: boolean
  remove: number
  add: string
  fits: RegExp
}

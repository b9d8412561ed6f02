/** Two vowels side by side that are two syllables; looked for with lookarounds, so that each takes one letter. */
const split = new RegExp(
  [
    // ia, io, iu, ii, ie
    '(?<![ctsg]|ll)i(?=a(?!ge))(?!(?<=li)ans?$)',
    '(?<=[ct])i(?=at(?:[eio]|_))',
    '(?<=^g|all|[ct])i(?=an[tc])',
    'i(?=amp)',
    '(?<![ctsgxnv]|ll|h)i(?=o(?!n$|ns|n[ae]))',
    '(?<=[nv])i(?=o(?!n|rs?$))',
    '(?<=[tx])i(?=os?$|om)',
    'i(?=ol)',
    '(?<=^|^l|al|el|r|d|p|v|b|ch)i(?=on)',
    'i(?=um?|i)',
    '(?<!^pr|^[bpt])i(?=er?st$|ers?$|et(?:[yaieson]|$)|er[ar]|est|eth|enn)',
    'i(?=as[tims]|alit)',
    '(?<![ctf]|fr)i(?=en[ct])',
    '(?<=al)i(?=en)',
    '(?<=^ant|^mult|^sem|^m)i(?=[aeouy])',
    '(?<=^soc)i(?=o)',
    '(?<=c)i(?=ar[yi])',
    'i(?=og)',
    '(?<=[tg])i(?=as?$)',
    '(?<=ll)i(?=at)',
    '(?<=^d)i(?=ele)',
    '(?<=^(?:un)?sc)i(?=en)',
    // ea, eo, eu, ei, ee
    '(?<=cr)e(?=at(?!u))',
    '(?<=th)e(?=at[er])',
    '(?<=in|rm|aur|aus|ol|il)e(?=at(?:e|_|i[on]|or))',
    '(?<=rm|ll)e(?=ab)',
    '(?<=[a-z]{3}|id|ar|ur)e(?=as?$)',
    '(?<=id|in|er|or|on|an)e(?=al)',
    '(?<=an)e(?=an)',
    'e(?=ali(?:s[tm]|t))',
    'e(?=alog|ae)',
    '(?<=in|ucl|il|ul)e(?=ar)',
    '(?<=r)e(?=act)',
    '(?<=^r)e(?=a(?:cq|dj|dm|dd|ff|li[gz]|ll|n[aio]|pp|rr|ss|tt|ut|w))',
    '(?<=^d)e(?=act|ice|ion)',
    '(?<![gh])e(?=o(?!u|pl|pard))',
    '(?<=[rt]h)e(?=o)',
    '(?<=^g)e(?=o)',
    '(?<![gc])e(?=ou)',
    'e(?=um$|ums$|us$)',
    '(?<=^r)e(?=u[ns]|i(?!gn(?!it)|n$|ns$|nd)|e(?:d[iu]|le|n[gta]|m[ep]|v|x|st))',
    'e(?=ity|ities|i$|ific|ande)',
    '(?<=th|d)e(?=is[tm])',
    '(?<=^pr)e(?=a(?!ch)|e[mxl]|oc|ord)',
    // ua, ue, ui, uo
    '(?<![gs])u(?=a)',
    '(?<=s)u(?=al)',
    '(?<!g)u(?=en|ets?$|ers?$)',
    '(?<=[fd]|cr|gr)u(?=el)',
    'u(?=i(?:d|n|t[iy]|tous|cid))',
    'u(?=um$)',
    'u(?=ou)',
    // oe, oi, oa, oo, ao, ai
    '(?<=r)o(?=in)',
    '^o(?=as)|o(?=ala|ana|econ)',
    'o(?=et|ems?$|ers?$|elec|ev|act|ism)',
    '(?<=^(?:un)?c)o(?=e[rxfdnv]|axi|a[gu]|al[ei]|ord|opera|inc)',
    '(?<![jv]|ch)o(?=ic(?!e))',
    'a(?=o|ic)',
    '(?:[aiouy]|(?<![gcyi])e)(?=ing)',
    'y(?=is)',
    '(?<=u)e(?=ish)',
    'o(?=able)',
    '^du(?=o)',
    'u(?=is[tm])',
    '(?<=ss)u(?=an)',
    '(?<=micr|macr|phot|electr|hydr|aut|therm|soci|pseud|iez)o(?=[aeo])',
    '(?<=[^aeiounw])y(?=[aeou](?!$|rd))',
  ].join('|'),
  'g',
)
/** First parts of compounds whose last e is silent: `nameplate`, `guideline`. */
const firstParts = new RegExp(
  `^(?:${`home eye life side fire house horse type share space state time white peace store whole base guide race rose safe table trouble battle dove
    game grape grave ice note score waste case gate name pipe stage stone trade ware wave wise bride candle cheese dare lease needle nose smoke
    snake bottle cause cobble date drive fare frame globe goose handle hedge lake lime line lode mile office piece plane plate pure rate rattle
    saddle scare shake shore skate stake stale strike turtle vine were wide some there where care fore tube wire hole tape edge valve gauge hose
    sledge brake fuse code face bore flame scale shape spare square tone zone cable double single nozzle page juke peace use nine five knife take
    make mouse hide voice tide yule mine broke clothes rhine pace`
    .split(/\s+/)
    .join(
      '|',
    )})(?=[bcdfghjklmnpqrstvwyz].+|out|over|own)(?!n(?:ing|ed|er)|r(?:y|ing|ed|al|s|ick|age)|ss|st(?:er|y|ed|r[yi])|t(?:ty|te|ar)|v[aeo]|ns|sts?$|ll|gar)`,
)

/** Suffixes that leave the e before them silent: `careful`, `measurement`, `nozzleman`. */
const suffixes = /(?<=[a-z]{3})(?:less(?:ly|ness)?|ful(?:ly|ness)?|ness(?:es)?|ly|ments?|some|wise|ship|hood|li(?:er|est|ness)|s?m[ae]n|s?wom[ae]n)$/
/** Where the e before -ment is said: `element`, `implement`, `increment`. */
const saidBeforeMent = /(?:pl|[^aeiou]l|^cl|^el|^c|[^aeiou]r|ten)e$/

/** Syllables of an English word in small letters without accents, by rules alone; at least 1. */
export function countByRules(word: string): number {
  if (/^(?:every|business)./.test(word)) return countByRules(word.slice(word.startsWith('b') ? 8 : 5)) + 2
  if (/^mc[^aeiouy]/.test(word)) return countByRules(word.slice(2)) + 1
  if (word.endsWith('ically') && word.length > 8) return countByRules(word.slice(0, -4)) + 1
  const seam = seamBehindSilentE(word)
  if (seam !== undefined) return countByRules(word.slice(0, seam)) + countByRules(word.slice(seam))
  return Math.max(1, nuclei(withoutSilentE(word)))
}

/** Where the part with the silent e ends: `name|plate`, `care|ful`. */
function seamBehindSilentE(word: string): number | undefined {
  const first = firstParts.exec(word)?.[0].length ?? 0
  if (first > 0 && word.length - first > 2 && /[aeiouy]/.test(word.slice(first))) return first
  const suffix = suffixes.exec(word)?.[0]
  if (suffix === undefined) return undefined
  const stem = word.slice(0, -suffix.length)
  if (!/(?:[^aeiou]|qu)e$/.test(stem) || (suffix.startsWith('ment') && saidBeforeMent.test(stem))) return undefined
  return stem.length
}

/** The word without the e of its ending that is not said: `valve`, `valves`, `locked`. */
function withoutSilentE(word: string): string {
  let stem = word
  if (/(?:[^aeioudt]|[aeiou][aeiou]?[^aeioudt]|i|u|o)ed$/.test(word)) stem = word.slice(0, -1)
  else if (/[^sxzcg]es$/.test(word) && !/[cs]hes$/.test(word)) stem = word.slice(0, -1)
  if (/[bcdfgkpstvzx]le$|[bcdfghnptv]re$/.test(stem)) return stem
  return stem.replace(/(?<=[aeiouy].*[^aeiou])e$|(?<=q|[^r]g)ue$/, '_')
}

const syllabic = /sms?$|thms?$/

function nuclei(text: string): number {
  const syllabicM = syllabic.test(text) ? 1 : 0
  if (!/[aeiouy]{2}/.test(text)) return vowelGroups(text) + syllabicM
  const plain = text
    .replace(/^y(?=[aeiou])|(?<=[aeou])y(?=[aeiou])/g, 'j')
    .replace(/qu/g, 'q')
    .replace(/(?<!r)gu(?=[ei](?!ty))/g, 'g')
  return vowelGroups(plain) + (plain.match(split)?.length ?? 0) + syllabicM
}

function vowelGroups(text: string): number {
  let count = 0
  let inGroup = false
  for (let at = 0; at < text.length; at++) {
    const isVowel = vowels.includes(text.charAt(at))
    if (isVowel && !inGroup) count++
    inGroup = isVowel
  }
  return count
}

const vowels = 'aeiouy'

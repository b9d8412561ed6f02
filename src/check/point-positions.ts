import type { Graph } from '../model/graph.ts'
import type { IsolationPoint } from '../model/machine.ts'
import type { IsolatingDevice } from '../model/schema/energy-file.ts'

/** What the words for a position of an isolating device say of it. */
export type PositionMeaning = 'isolates' | 'lets-through'

/** How a device isolates. `vent`: a valve that relieves what is behind it. */
type Action = 'switch' | 'unplug' | 'valve' | 'exhaust' | 'vent' | 'insert' | 'part'

/** Patterns of whole words, a language a list. */
type Patterns = Readonly<Record<'en' | 'es', string>>
interface PositionWords {
  isolates: Patterns
  'lets-through': Patterns
}

// Panels carry ON and OFF in every language. `on the left` is a place and no position.
const on = 'on(?! (?:the|its|a|left|right|top|bottom)(?!\\p{L}))'

// `0` of a switch; the one of `position 0` may be any.
const alone = (marks: string) => `(?<=^|\\()(?:${marks})`

/** The words in use for positions: common practice of the trade. A pattern that lets through is taken out before the other is looked for. */
const positionWords: Readonly<Record<Action, PositionWords>> = {
  switch: {
    isolates: { en: `off|open(?:ed)?|${alone('0|o')}`, es: `off|${alone('0')}|desconectad[oa]|abiert[oa]|apagad[oa]` },
    'lets-through': { en: `${on}|closed|${alone('i|1')}`, es: `on|${alone('i|1')}|conectad[oa]|cerrad[oa]|encendid[oa]` },
  },
  unplug: {
    isolates: { en: 'unplugged|pulled|out|disconnected|off', es: 'desenchufad[oa]|desconectad[oa]|sacad[oa]|fuera' },
    'lets-through': { en: `plugged|in|connected|${on}`, es: 'enchufad[oa]|conectad[oa]|puest[oa]' },
  },
  valve: {
    isolates: { en: 'closed|shut|off', es: 'cerrad[oa]|off' },
    'lets-through': { en: `open(?:ed)?|${on}`, es: 'abiert[oa]|on' },
  },
  exhaust: {
    isolates: { en: 'closed|shut|off|vent(?:ed|ing)?|exhaust(?:ed|ing)?', es: 'cerrad[oa]|off|escape|descarga(?:d[oa])?|purga(?:d[oa])?' },
    'lets-through': {
      en: `(?:open(?:ed)?(?! to (?:vent|exhaust))|closed to (?:vent|exhaust))|${on}|pressuri[sz]ed`,
      es: 'abiert[oa](?! al? (?:escape|aire|descarga))|cerrad[oa] al? (?:escape|aire|descarga)|on',
    },
  },
  vent: {
    isolates: { en: 'open(?:ed)?|vent(?:ed|ing)?', es: 'abiert[oa]|purga(?:d[oa])?' },
    'lets-through': { en: 'closed|shut', es: 'cerrad[oa]' },
  },
  insert: {
    isolates: {
      en: 'in|inserted|in place|fitted|installed|set|closed',
      es: 'puest[oa]|metid[oa]|insertad[oa]|colocad[oa]|introducid[oa]|montad[oa]|cerrad[oa]',
    },
    'lets-through': {
      en: '(?:in (?:its |the )?)?(?:parked|parking(?: hole| place)?|park|stowed|holder|rack|store)|out|removed|withdrawn|pulled|open',
      es: '(?:en (?:su |el )?)?(?:alojamiento|soporte|aparcad[oa]|guardad[oa])|fuera|sacad[oa]|quitad[oa]|retirad[oa]|abiert[oa]',
    },
  },
  part: {
    isolates: { en: 'apart|disconnected|uncoupled|parted|separated|removed', es: 'desacoplad[oa]|separad[oa]|desconectad[oa]|quitad[oa]' },
    'lets-through': { en: 'connected|coupled|joined|fitted', es: 'acoplad[oa]|conectad[oa]|unid[oa]|puest[oa]' },
  },
}

const actionOf: Readonly<Record<IsolatingDevice, Action>> = {
  'disconnect-switch': 'switch',
  'circuit-breaker': 'switch',
  plug: 'unplug',
  'line-valve': 'valve',
  'exhaust-valve': 'exhaust',
  blank: 'insert',
  block: 'insert',
  pin: 'insert',
  coupling: 'part',
}

/** How each action isolates, for a message. */
export const isolatingWords: Readonly<Record<Action, string>> = {
  switch: 'isolates when it is off',
  unplug: 'isolates when it is pulled',
  valve: 'isolates when it is closed',
  exhaust: 'isolates when it is closed, or open to vent',
  vent: 'relieves what is behind it when it is open',
  insert: 'holds when it is in place',
  part: 'isolates when it is apart',
}

const whole = (pattern: string, flags = 'iu') => new RegExp(`(?<![\\p{L}\\p{N}])(?:${pattern})(?![\\p{L}\\p{N}])`, flags)
const relieves = whole(
  'vents?|venting|drains?|draining|bleeds?|dumps?|lower(?:s|ing)?|by-?pass|return|relie(?:f|ves)|purgas?|drenaje|drena|vacía|vaciado|alivi[oa]|venteo|retorno',
)
const shuts = whole('shuts?|shut-?off|closes?|isolat(?:es|ion|ing)|supply|cierra|cierre|cort[ae]|aísla|aislamiento|alimentación')
const denies = whole('not|no|never|nunca|sin')

/** How the device of a point isolates; undefined where its own words leave open whether it shuts or relieves. */
export function actionOfPoint({ device, tag }: IsolationPoint, graph: Graph): Action | undefined {
  const action = actionOf[device]
  if (action !== 'valve' && action !== 'exhaust') return action
  const fitted = graph.device(tag.value)
  const said = [fitted?.kind ?? {}, fitted?.description ?? {}].flatMap((words) => Object.values(words).flatMap((it) => it?.value ?? [])).join(' ')
  if (!relieves.test(said)) return action
  if (!shuts.test(said)) return 'vent'
  return action === 'exhaust' ? action : undefined
}

/** What a position means for a device that isolates in this way; undefined where its words say neither, or both. */
export function meaningOfPosition(text: string, action: Action, language: string): PositionMeaning | undefined {
  if (language !== 'en' && language !== 'es') return undefined
  if (denies.test(text)) return undefined
  const through = whole(positionWords[action]['lets-through'][language])
  const rest = text.replace(through, ' ')
  const isolates = whole(positionWords[action].isolates[language]).test(rest)
  if (isolates === (rest !== text)) return undefined
  return isolates ? 'isolates' : 'lets-through'
}

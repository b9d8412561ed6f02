import type { Device, Part, Signal } from '../model/machine.ts'
import type { Place } from '../source/place.ts'
import { conditionOf } from './contact-claims.ts'
import { type Contact, contactNames, openAndClose } from './contacts.ts'

/** What else in the data tells which contact a signal comes from. */
export interface ContactEvidence {
  contact: Contact
  /** Goes on from `PB1 is NO in the I/O list, and`. */
  says: string
  place: Place
}

/** Devices whose terminals carry the numbers of their contacts, where they have two digits. Plugs count their pins otherwise. */
const numbered = new Set(['push-button', 'selector-switch', 'emergency-stop', 'limit-switch', 'temperature-switch', 'contactor', 'isolator'])

/** The last digit of a terminal is its function: 1 and 2 of a break contact, 3 and 4 of a make contact. Source: EN 50005 and EN 50013, from memory. */
export function contactOfPin({ pin }: Signal, { technology }: Device): ContactEvidence | undefined {
  if (!pin || !/^[1-9][1-4]$/.test(pin.value) || (technology && !numbered.has(technology.value))) return undefined
  const contact = /[12]$/.test(pin.value) ? 'NC' : 'NO'
  return { contact, says: `terminal \`${pin.value}\` is one of a ${contactNames[contact]} contact`, place: pin.place }
}

/** `NO` as a count of contacts or an output: `2 NO`, `PNP NO`, `(NO)`. In capitals it is also the word: `NO DRAIN`. */
const short = (words: string) => `(?:\\d ?x? ?|[PN]NP,? |[,;/+(] ?)(?:${words})(?= *(?:$|[,;/+)]| \\d| contacts?\\b))`
const makes = new RegExp(`${short('N\\.O\\.|NO|NA')}|normally[ -]open|normalmente abiert`, 'u')
const breaks = new RegExp(`${short('N\\.C\\.|NC')}|normally[ -]closed|normalmente cerrad`, 'u')

/** A part that is called after one kind of contact: `Push button, green, 1 NO`. */
export function contactOfPart({ number, description }: Part, { technology }: Device, language: string): ContactEvidence | undefined {
  const text = description[language]
  if (!text || openAndClose.has(technology?.value ?? '')) return undefined
  const [no, nc] = [makes.test(text.value), breaks.test(text.value)]
  if (no === nc || /\b(?:CO|changeover|change-over|antivalent|conmutado)\b/i.test(text.value)) return undefined
  return { contact: no ? 'NO' : 'NC', says: `its part \`${number.value}\` has ${no ? 'NO' : 'NC'} contacts only`, place: text.place }
}

const pressed = new Set(['push-button', 'emergency-stop', 'limit-switch'])
const atWork = new Set(['pressed', 'pushed', 'pulsado', 'pulsada', 'pulsa', 'presiona', 'accionado', 'actuated'])
const atRest = new Set(['released', 'pulled', 'unlatched', 'desenclavado', 'suelto'])

/** A signal that is on while its button is pressed comes from a make contact; one that is off then, from a break contact. */
export function contactOfMeaning({ meaning }: Signal, { technology }: Device, language: string): ContactEvidence | undefined {
  const text = meaning?.[language]
  const said = text && pressed.has(technology?.value ?? '') ? conditionOf(text.value) : undefined
  if (!text || !said) return undefined
  const [worked, rests] = [atWork, atRest].map((words) => said.words.some((word) => words.has(word)))
  if (worked === rests) return undefined
  const contact = said.on === worked ? 'NO' : 'NC'
  return { contact, says: `\`${said.says}\` is true of a ${contactNames[contact]} contact`, place: text.place }
}

export type Contact = 'NO' | 'NC'

export const contactNames: Readonly<Record<Contact, string>> = { NO: 'normally open', NC: 'normally closed' }

/** What these are themselves can be open or closed too: their text or part tells of that, and not of a contact. */
export const openAndClose: ReadonlySet<string> = new Set(['isolator', 'manual-valve', 'solenoid-valve', 'contactor', 'safety-interlock', 'cylinder'])

import type { Random } from '../random.ts'

/** A text in the source language and its translation. */
export interface Remark {
  en: string
  es: string
}

/** One to three sentences that a page of a station says and others do not, with numbers of their own. */
export function remarks(random: Random): Remark[] {
  return random.sample(forms, 1 + random.below(3)).map((form) => form(100 + random.below(900)))
}

const forms: readonly ((number: number) => Remark)[] = [
  (number) => ({
    en: `The book of the shift names this station on sheet ${number}.`,
    es: `El libro del turno nombra esta estación en la hoja ${number}.`,
  }),
  (number) => ({
    en: `Write what you saw into box ${number} of the round sheet.`,
    es: `Escriba lo que vio en la casilla ${number} de la hoja de ronda.`,
  }),
  (number) => ({
    en: `The store keeps tools for this job in rack ${number}.`,
    es: `El almacén guarda las herramientas para este trabajo en el estante ${number}.`,
  }),
  (number) => ({
    en: `A spare key hangs on hook ${number} of the key board.`,
    es: `Una llave de repuesto cuelga en el gancho ${number} del tablero de llaves.`,
  }),
  (number) => ({ en: `Cloths lie in locker ${number}, next to the wash room.`, es: `Los paños están en la taquilla ${number}, junto al lavadero.` }),
]

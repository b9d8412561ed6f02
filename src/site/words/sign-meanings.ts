import { meaningOf } from '../../hazard/safety-sign.ts'
import type { Spoken } from '../../model/words.ts'

/** The meaning of an ISO 7010 code in a language, or in English. Throws for a code that is not known. */
export function signMeaning(code: string, language: string): Spoken {
  const own = translated[language]?.[code]
  const english = meaningOf(code)
  if (english === undefined) throw new Error(`no sign ${code}`)
  return own === undefined ? { text: english, language: 'en' } : { text: own, language }
}

/** Spanish meanings from memory. */
const translated: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  es: {
    M002: 'leer el manual de instrucciones',
    M003: 'usar protección auditiva',
    M004: 'usar protección ocular',
    M009: 'usar guantes de protección',
    M013: 'usar pantalla facial',
    M021: 'desconectar antes de mantenimiento o reparación',
    M028: 'mantener cerrado con candado',
    P010: 'no tocar',
    W001: 'peligro general',
    W011: 'superficie resbaladiza',
    W012: 'electricidad',
    W015: 'carga suspendida',
    W017: 'superficie caliente',
    W018: 'arranque automático',
    W019: 'aplastamiento',
    W022: 'elemento afilado',
    W023: 'sustancia corrosiva',
    W024: 'aplastamiento de las manos',
    W025: 'rodillos en sentido contrario',
    W035: 'objetos que caen',
    W038: 'ruido fuerte repentino',
    W079: 'contenido caliente',
  },
}

import type { SearchKind } from './entry.ts'
import { fold } from './words.ts'

/** Words with which a reader says what kind of thing is wanted, folded. A language without a list gets no preference. */
const words: Readonly<Record<string, Partial<Record<SearchKind, readonly string[]>>>> = {
  en: {
    tag: ['device', 'devices', 'tag', 'tags', 'component'],
    alarm: ['alarm', 'alarms', 'fault', 'faults', 'error', 'message'],
    part: ['part', 'parts', 'spare', 'spares', 'order'],
    drawing: ['drawing', 'drawings', 'schematic', 'diagram', 'sheet'],
    lockout: ['lockout', 'lockouts', 'loto', 'isolation'],
    hazard: ['hazard', 'hazards', 'risk', 'risks'],
    job: ['job', 'jobs', 'task'],
    assembly: ['assembly', 'assemblies'],
    lesson: ['lesson', 'lessons', 'training'],
  },
  es: {
    tag: ['aparato', 'aparatos', 'dispositivo', 'marca', 'componente'],
    alarm: ['alarma', 'alarmas', 'fallo', 'averia', 'error', 'aviso'],
    part: ['pieza', 'piezas', 'repuesto', 'repuestos', 'recambio', 'recambios'],
    drawing: ['plano', 'planos', 'esquema', 'esquemas', 'hoja'],
    lockout: ['bloqueo', 'bloqueos', 'consignacion', 'loto'],
    hazard: ['peligro', 'peligros', 'riesgo', 'riesgos'],
    job: ['trabajo', 'trabajos', 'tarea'],
    assembly: ['conjunto', 'conjuntos'],
    lesson: ['leccion', 'lecciones', 'formacion'],
  },
}

/** Two words that the pages write as one, which says the kind. */
const inTwoWords: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  en: { 'lock out': 'lockout', 'locking out': 'lockout', 'lock outs': 'lockouts' },
}

/** What was typed with such pairs as one word: `lock out lift` is `lockout lift`. */
export function inOneWord(typed: readonly string[], language: string): string[] {
  const pairs = inTwoWords[language] ?? {}
  const words: string[] = []
  for (const word of typed) {
    const one = pairs[`${fold(words[words.length - 1] ?? '')} ${fold(word)}`]
    if (one) words.splice(-1, 1, one)
    else words.push(word)
  }
  return words
}

/** The kind that a typed word asks for. */
export function kindAskedBy(word: string, language: string): SearchKind | undefined {
  const folded = fold(word)
  const ofLanguage = words[language.split('-')[0] ?? ''] ?? {}
  for (const kind of Object.keys(ofLanguage) as SearchKind[]) if (ofLanguage[kind]?.includes(folded)) return kind
  return undefined
}

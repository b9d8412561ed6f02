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
  },
  es: {
    tag: ['aparato', 'aparatos', 'dispositivo', 'marca', 'componente'],
    alarm: ['alarma', 'alarmas', 'fallo', 'averia', 'error', 'aviso'],
    part: ['pieza', 'piezas', 'repuesto', 'repuestos', 'recambio', 'recambios'],
    drawing: ['plano', 'planos', 'esquema', 'esquemas', 'hoja'],
    lockout: ['bloqueo', 'bloqueos', 'consignacion', 'loto'],
    hazard: ['peligro', 'peligros', 'riesgo', 'riesgos'],
  },
}

/** The kind that a typed word asks for. */
export function kindAskedBy(word: string, language: string): SearchKind | undefined {
  const folded = fold(word)
  const ofLanguage = words[language.split('-')[0] ?? ''] ?? {}
  for (const kind of Object.keys(ofLanguage) as SearchKind[]) if (ofLanguage[kind]?.includes(folded)) return kind
  return undefined
}

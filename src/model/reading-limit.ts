import type { MeasureName } from '../reading/measures.ts'
import type { AnyPage } from './machine.ts'
import type { Reader } from './schema/common.ts'
import type { MachineFile } from './schema/machine-file.ts'

/** What a page may be at its hardest: a grade that it may not exceed, or an ease that it must reach. */
export interface ReadingLimit {
  reader: Reader
  measure: MeasureName
  value: number
}

/** Ours, set so that a page of the machines it was tried on passes when it is written well: no standard sets a number by reader. */
const defaults: Readonly<Record<Reader, { grade: number; ease: number }>> = {
  operator: { grade: 8, ease: 65 },
  maintenance: { grade: 9, ease: 55 },
  engineer: { grade: 12, ease: 40 },
}

/** Whom a page addresses: who is not named may be an operator. */
export const readerOf = ({ frontmatter }: AnyPage): Reader => ('reader' in frontmatter ? frontmatter.reader : undefined) ?? 'operator'

/** The limit of a reader in a language; undefined where no measure of the language is enforced. */
export function readingLimit({ file }: { file: Pick<MachineFile, 'readers'> }, reader: Reader, language: string): ReadingLimit | undefined {
  const own = file.readers?.[reader]
  if (language === 'en') return { reader, measure: 'fleschKincaidGrade', value: own?.grade ?? defaults[reader].grade }
  if (language === 'es') return { reader, measure: 'szigrisztPazos', value: own?.ease ?? defaults[reader].ease }
  return undefined
}

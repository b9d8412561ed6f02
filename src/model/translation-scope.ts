import type { MachineFile } from './schema/machine-file.ts'
import type { Collection } from './schema/pages.ts'

/** Whether machine.yaml wants a collection, or the texts that are in no page, whole in a language. Those are in the source language always. */
export function inScope({ languages: { source, complete } }: MachineFile, language: string, what: Collection | 'data'): boolean {
  return !(language === source && what === 'data') && (complete?.[language]?.includes(what) ?? true)
}

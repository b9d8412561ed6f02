import { recorded, refused, type Told } from './office-system.ts'

/** The calls that both editions of SCORM have, under other names. Each gives text; `'true'` where it succeeded. */
export interface ScormCalls {
  set(name: string, value: string): string
  commit(): string
  lastError(): string
  errorText(code: string): string
  /** What the call to commit is called, for a refusal. */
  commitName: string
}

export const worked = (result: unknown) => String(result) === 'true'

/** What the system says of its last refusal; `of` names what was asked. */
export function failureOf({ lastError, errorText }: ScormCalls, of: string): Told {
  const code = String(lastError())
  return refused(`${of}: ${code} ${errorText(code)}`.trim())
}

/** Sets each value, and says which the system refused first. */
export function setAll(calls: ScormCalls, values: Readonly<Record<string, string>>): Told {
  for (const [name, value] of Object.entries(values)) if (!worked(calls.set(name, value))) return failureOf(calls, name)
  return worked(calls.commit()) ? recorded : failureOf(calls, calls.commitName)
}

/** Whether a result passes: the mark of the system, where it gives one, counts before that of the lesson. */
export function passesBy(given: string, result: number, own: boolean | undefined): boolean | undefined {
  return given === '' || Number.isNaN(Number(given)) ? own : result >= Number(given)
}

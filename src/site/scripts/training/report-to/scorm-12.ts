import { clockDuration, rawScore } from '../../../../training/packages/result.ts'
import { kept, type OfficeSystem, recorded, refused } from './office-system.ts'
import { failureOf, passesBy, type ScormCalls, setAll, worked } from './scorm-calls.ts'

/** The object `API` of SCORM 1.2. Every call takes and gives text; `'true'` where it succeeded. Source: SCORM 1.2 RTE, section 3.3. */
export interface Scorm12Api {
  LMSInitialize(empty: ''): string
  LMSFinish(empty: ''): string
  LMSGetValue(name: string): string
  LMSSetValue(name: string, value: string): string
  LMSCommit(empty: ''): string
  LMSGetLastError(): string
  LMSGetErrorString(code: string): string
}

/** Longest text that a system of 1.2 must keep, in characters: CMIString4096. */
const longestKept = 4096

export function scorm12System(api: Scorm12Api): OfficeSystem {
  let readOnly = false
  let finished = false

  const calls: ScormCalls = {
    set: (name, value) => api.LMSSetValue(name, value),
    commit: () => api.LMSCommit(''),
    lastError: () => api.LMSGetLastError(),
    errorText: (code) => api.LMSGetErrorString(code),
    commitName: 'LMSCommit',
  }
  const failure = (of: string) => failureOf(calls, of)
  const set = (values: Readonly<Record<string, string>>) => setAll(calls, values)
  const status = () => api.LMSGetValue('cmi.core.lesson_status')
  const isDone = () => ['passed', 'completed'].includes(status())

  return {
    async start() {
      if (!worked(api.LMSInitialize(''))) return failure('LMSInitialize')
      readOnly = ['browse', 'review'].includes(api.LMSGetValue('cmi.core.lesson_mode'))
      return readOnly || !['', 'not attempted', 'unknown'].includes(status()) ? kept : set({ 'cmi.core.lesson_status': 'incomplete' })
    },
    async report({ completed, passed: own, score }) {
      if (finished) return refused('the lesson was closed')
      if (readOnly) return kept
      if (!score && own === undefined) {
        return !completed || isDone() ? kept : set({ 'cmi.core.lesson_status': 'completed' })
      }
      const passed = score ? passesBy(api.LMSGetValue('cmi.student_data.mastery_score'), rawScore(score), own) : own
      // A result that is there already is not made worse.
      if (!passed && isDone()) return kept
      const points = score ? { 'cmi.core.score.min': '0', 'cmi.core.score.max': '100', 'cmi.core.score.raw': String(rawScore(score)) } : {}
      const told = set({ ...points, 'cmi.core.lesson_status': passed ? 'passed' : 'failed' })
      return told.told === 'recorded' ? { ...told, passed } : told
    },
    async keep(text) {
      if (text.length > longestKept) return refused(`cmi.suspend_data: longer than ${longestKept} characters`)
      return readOnly || finished ? kept : set({ 'cmi.suspend_data': text })
    },
    kept: () => api.LMSGetValue('cmi.suspend_data'),
    async finish(durationS) {
      if (finished) return kept
      finished = true
      const told = readOnly ? kept : set({ 'cmi.core.session_time': clockDuration(durationS), 'cmi.core.exit': isDone() ? '' : 'suspend' })
      const ended = worked(api.LMSFinish('')) ? recorded : failure('LMSFinish')
      return told.told === 'refused' ? told : ended
    },
  }
}

import { isoDuration, scaledScore } from '../../../../training/packages/result.ts'
import { kept, type OfficeSystem, recorded, refused } from './office-system.ts'
import { failureOf, passesBy, type ScormCalls, setAll, worked } from './scorm-calls.ts'

/** The object `API_1484_11` of SCORM 2004. Source: SCORM 2004 4th edition RTE, section 3.1 (IEEE 1484.11.2). */
export interface Scorm2004Api {
  Initialize(empty: ''): string
  Terminate(empty: ''): string
  GetValue(name: string): string
  SetValue(name: string, value: string): string
  Commit(empty: ''): string
  GetLastError(): string
  GetErrorString(code: string): string
}

/** Longest text that a system of 2004 must keep, in characters. */
const longestKept = 64_000

export function scorm2004System(api: Scorm2004Api): OfficeSystem {
  let readOnly = false
  let finished = false

  const calls: ScormCalls = {
    set: (name, value) => api.SetValue(name, value),
    commit: () => api.Commit(''),
    lastError: () => api.GetLastError(),
    errorText: (code) => api.GetErrorString(code),
    commitName: 'Commit',
  }
  const failure = (of: string) => failureOf(calls, of)
  const set = (values: Readonly<Record<string, string>>) => setAll(calls, values)
  const isCompleted = () => api.GetValue('cmi.completion_status') === 'completed'
  const isPassed = () => api.GetValue('cmi.success_status') === 'passed'

  return {
    async start() {
      if (!worked(api.Initialize(''))) return failure('Initialize')
      readOnly = ['browse', 'review'].includes(api.GetValue('cmi.mode'))
      return readOnly || isCompleted() ? kept : set({ 'cmi.completion_status': 'incomplete' })
    },
    async report({ completed, passed: own, score }) {
      if (finished) return refused('the lesson was closed')
      if (readOnly) return kept
      const completion: Record<string, string> = completed && !isCompleted() ? { 'cmi.completion_status': 'completed' } : {}
      const passed = score ? passesBy(api.GetValue('cmi.scaled_passing_score'), scaledScore(score), own) : own
      // A result that is there already is not made worse.
      const judged = passed !== undefined && (passed || !isPassed())
      const values: Record<string, string> = { ...completion }
      if (judged && score) {
        const points = { min: '0', max: String(score.of), raw: String(score.right), scaled: String(scaledScore(score)) }
        for (const [name, value] of Object.entries(points)) values[`cmi.score.${name}`] = value
      }
      if (judged) values['cmi.success_status'] = passed ? 'passed' : 'failed'
      if (Object.keys(values).length === 0) return kept
      const told = set(values)
      return told.told === 'recorded' && judged ? { ...told, passed } : told
    },
    async keep(text) {
      if (text.length > longestKept) return refused(`cmi.suspend_data: longer than ${longestKept} characters`)
      return readOnly || finished ? kept : set({ 'cmi.suspend_data': text })
    },
    kept: () => api.GetValue('cmi.suspend_data'),
    async finish(durationS) {
      if (finished) return kept
      finished = true
      const told = readOnly ? kept : set({ 'cmi.session_time': isoDuration(durationS), 'cmi.exit': isCompleted() ? 'normal' : 'suspend' })
      const ended = worked(api.Terminate('')) ? recorded : failure('Terminate')
      return told.told === 'refused' ? told : ended
    },
  }
}

import { load, save } from '../store.ts'
import type { TrainingPage } from './training-page.ts'

export interface Person {
  readonly id: string
  readonly name: string
}

/** After this time somebody else stands at the panel: the fields are empty again. */
const rememberedForMs = 60 * 60 * 1000

const keyOf = ({ machineId }: TrainingPage) => `fettle.${machineId}.learner`

/** Who has recorded something last in this tab. */
export function lastLearner(page: TrainingPage): Person | undefined {
  try {
    const { id, name, atMs } = JSON.parse(load(keyOf(page), 'sessionStorage') ?? '{}')
    const ageMs = Date.now() - Number(atMs)
    return typeof id === 'string' && typeof name === 'string' && ageMs >= 0 && ageMs < rememberedForMs ? { id, name } : undefined
  } catch {
    // What another program left under this key is not ours.
    return undefined
  }
}

export function rememberLearner(page: TrainingPage, { id, name }: Person): void {
  save(keyOf(page), JSON.stringify({ id, name, atMs: Date.now() }), 'sessionStorage')
}

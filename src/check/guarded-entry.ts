import type { Graph } from '../model/graph.ts'
import type { Device, Page, Reference } from '../model/machine.ts'
import type { Place } from '../source/place.ts'
import { entryStep } from './entry-step.ts'

/** A job or a recovery. */
export type Task = Page<'procedures'> | Page<'alarms'>

/** A step that goes behind a guard, and a device that the page names and a lockout covers. */
export interface GuardedEntry {
  place: Place
  device: Device
  lockout: Page<'lockout'>
}

/** The first step of a task that goes behind a guard at a device that a lockout covers. `references` are those of the page in its own language. */
export function guardedEntry(page: Task, references: readonly Reference[], graph: Graph): GuardedEntry | undefined {
  for (const { kind, id } of references) {
    const device = kind === 'tag' ? graph.device(id) : undefined
    const [lockout] = device ? graph.lockoutsOf(device) : []
    if (!device || !lockout) continue
    const place = entryStep(page, page.language)
    return place && { place, device, lockout }
  }
  return undefined
}

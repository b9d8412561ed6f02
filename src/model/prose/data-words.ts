import type { Hazard } from '../hazard.ts'
import type { EnergySource, IsolationPoint, LinkedMachine } from '../machine.ts'
import type { Words } from '../words.ts'

/** The words of the data that a reader sees as sentences or labels. */
export function* dataWords(machine: LinkedMachine): Iterable<Words> {
  yield machine.name
  yield* machine.options.values()
  for (const { name } of machine.areas) yield name
  for (const { description, place } of machine.devices) yield* written(description, place)
  for (const { meaning } of machine.signals) yield* written(meaning)
  for (const { description } of machine.cards) yield description
  for (const { title } of machine.drawings) yield title
  for (const { text, trigger } of machine.alarms) yield* written(text, trigger)
  for (const { description } of machine.formats) yield description
  for (const point of machine.points) yield* pointWords(point)
  for (const source of machine.energy) yield* energyWords(source)
  for (const hazard of machine.hazards ?? []) yield* hazardWords(hazard)
}

/** What an energy says in words. */
export function energyWords({ name, hazard, dissipate, waitBasis, watch, verify }: EnergySource): Words[] {
  return written(name, hazard, dissipate, waitBasis, watch, verify.method, verify.expect)
}

/** What an isolation point says in words. */
export function pointWords({ safe, service, place, hardware, tagOut }: IsolationPoint): Words[] {
  return written(safe, service, place, hardware, tagOut?.at, tagOut?.reason, tagOut?.additional, tagOut?.proof)
}

/** What a hazard says in words. */
export function hazardWords({ name, origin, message, builtIn, user }: Hazard): Words[] {
  return [name, origin, ...(message ? [message.hazard, message.consequence, message.avoid] : []), ...builtIn, ...user]
}

const written = (...all: readonly (Words | undefined)[]) => all.filter((words) => words !== undefined)

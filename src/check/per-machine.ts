import type { Machine } from '../model/machine.ts'

/** What several rules ask of a machine, made once for each. */
export function perMachine<T>(make: (machine: Machine) => T): (machine: Machine) => T {
  const made = new WeakMap<Machine, { value: T }>()
  return (machine) => {
    let known = made.get(machine)
    if (!known) {
      known = { value: make(machine) }
      made.set(machine, known)
    }
    return known.value
  }
}

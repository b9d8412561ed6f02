import type { Refused } from '../refusals.ts'
import { pairingRefusal } from '../sensor-output.ts'
import type { SwitchedCircuit } from './circuit.ts'
import { namurRows } from './namur-rows.ts'
import { type ByConduction, type FaultRow, type RowSpec, type TargetState, targetStates } from './row.ts'
import { dark } from './row-parts.ts'
import { threeWireRows } from './three-wire-rows.ts'
import { twoWireRows } from './two-wire-rows.ts'

/** What a table depends on. */
type Wiring = Pick<SwitchedCircuit, 'output' | 'card' | 'contact'>

/** A site shows the few tables that there are on every page of a sensor. */
const tables = new Map<string, readonly FaultRow[] | Refused>()

/** Every fault that a circuit can have, the healthy one first; refused where sensor and card do not go together. */
export function faultTable({ output, card, contact }: Wiring): readonly FaultRow[] | Refused {
  const key = `${output} ${card} ${contact}`
  const known = tables.get(key)
  if (known) return known
  const wiring = { output, card, contact }
  const table = pairingRefusal(output, card) ?? specsOf(wiring).map((spec) => rowOf(spec, wiring))
  tables.set(key, table)
  return table
}

function specsOf({ output, card, contact }: Wiring): RowSpec[] {
  if (output === 'namur') return namurRows(contact)
  if (output === 'pnp' || output === 'npn') return threeWireRows(output)
  return twoWireRows(output, card === 'sourcing' ? 'sourcing' : 'sinking')
}

/** No LED of another channel changes with the target. */
const noOther: RowSpec['lights'] = { 'other-led': dark }

function rowOf(spec: RowSpec, circuit: Wiring): FaultRow {
  const conducts = { target: conductsIn('target', spec, circuit), none: conductsIn('none', spec, circuit) }
  const inStates = <T>(by: ByConduction<T>) =>
    Object.fromEntries(
      targetStates.flatMap((state) => {
        const it = by[conducts[state] ? 0 : 1]
        return it === undefined ? [] : [[state, it]]
      }),
    ) as Partial<Record<TargetState, T>>
  const each = <T>(all: Readonly<Record<string, ByConduction<T>>>) =>
    Object.fromEntries(Object.entries(all).map(([name, by]) => [name, inStates(by)]))
  const { id, weight, suspected } = spec
  return { id, weight, ...(suspected ? { suspected } : {}), readings: each(spec.readings), lights: each({ ...noOther, ...spec.lights }) }
}

/** Whether the output conducts in a state of the target, as the fault leaves it. */
function conductsIn(state: TargetState, { id, conducts }: RowSpec, { contact }: Wiring): boolean {
  if (conducts === 'always' || conducts === 'never') return conducts === 'always'
  const sensed = id === 'always-senses' || (id !== 'never-senses' && state === 'target')
  return (sensed === (contact === 'NO')) !== (conducts === 'inverted')
}

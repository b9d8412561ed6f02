import type { OutputCircuit, OutputField } from '../../src/signals/fault/output-rows.ts'
import { type Net, solve } from './simulated-circuit.ts'

/** What a technician could do to a load on an output. */
export type OutputFault =
  | 'healthy'
  | 'command-missing'
  | 'output-dark'
  | 'card-without-load-supply'
  | 'output-sinks'
  | 'output-stays-on'
  | 'output-overloaded'
  | 'load-shorted'
  | 'suppressor-conducts'
  | 'load-wire-open'
  | 'line-drops'
  | 'load-open'
  | 'turns-shorted'
  | 'load-of-higher-resistance'
  | 'output-supply-low'

const cut = 1e9
/** Share of the resistance of the load that a fault leaves. */
const loadShare: Partial<Record<OutputFault, number>> = {
  'load-shorted': 0.01,
  'load-open': 1e7,
  'turns-shorted': 0.5,
  'load-of-higher-resistance': 3,
  'output-overloaded': 0.1,
}

/** All readings of a circuit with one fault, out of a net of resistors that knows nothing of the fault table. */
export function simulateOutput(circuit: OutputCircuit, fault: OutputFault): Partial<Record<OutputField, number>> {
  const { ratedA, cableOhm, ratedV, loadA, dropV, hasElectronics } = circuit
  const supplyV = fault === 'output-supply-low' ? 0.7 * ratedV : circuit.supplyV
  const loadOhm = (ratedV / loadA) * (loadShare[fault] ?? 1)
  const line = fault === 'line-drops' ? 0.5 * loadOhm : fault === 'load-wire-open' ? cut : cableOhm / 2
  const net = (isOn: boolean, switchOhm: number): Net => {
    const closes = isOn && fault !== 'command-missing' && fault !== 'output-dark'
    const through = closes || fault === 'output-stays-on' ? switchOhm : 1e6
    return [
      ['L+', 'card', fault === 'card-without-load-supply' ? cut : 0.01],
      ['card', 'terminal', fault === 'output-sinks' ? cut : through],
      ['terminal', '0V', fault === 'output-sinks' && closes ? switchOhm : 1e7],
      ['terminal', 'plus', line],
      ['plus', 'minus', loadOhm],
      ['minus', '0V', cableOhm / 2],
    ]
  }
  /** A diode that conducts holds about a volt, and the output limits its current. */
  const conducting: Net = [
    ['L+', 'terminal', (supplyV - 1) / (1.2 * ratedA)],
    ['terminal', 'plus', 0.001],
    ['plus', 'minus', 1 / (1.2 * ratedA)],
    ['minus', '0V', 0.001],
  ]
  const read = (isOn: boolean) => {
    if (isOn && fault === 'suppressor-conducts') return measure(conducting)
    const first = measure(net(isOn, 0.5 * (dropV / loadA)))
    // An output that is asked for far too much switches itself off; one that is asked for a little too much carries it.
    return first.currentA > 5 * ratedA ? measure(net(isOn, 1e5)) : first
  }
  const measure = (it: Net) => {
    const nodes = solve(it, supplyV)
    const at = (node: string) => nodes.get(node) ?? Number.NaN
    return {
      terminalV: at('terminal'),
      loadV: at('plus') - at('minus'),
      currentA: (at('terminal') - at('plus')) / (it.find(([a, b]) => a === 'terminal' && b === 'plus')?.[2] ?? 1),
    }
  }
  const [on, off] = [read(true), read(false)]
  const lit = fault !== 'command-missing' && fault !== 'output-dark' ? 1 : 0
  return {
    supply: supplyV,
    'tag.on': fault === 'command-missing' ? 0 : 1,
    'led.on': lit,
    ...(fault === 'output-stays-on' ? {} : { 'led.off': 0 }),
    'terminal.on': on.terminalV,
    'terminal.off': off.terminalV,
    'load.on': on.loadV,
    'load.off': off.loadV,
    current: 1000 * on.currentA,
    // The diode of the meter, and its poles, make this reading a matter of luck.
    ...(hasElectronics || fault === 'suppressor-conducts' ? {} : { cold: loadOhm }),
  }
}

/** What can happen between the liquid and the flow on the screen. */
export const flowFaults = [
  'flow-none',
  'flow-without-supply',
  'flow-sensor-dead',
  'flow-wire-open',
  'flow-not-counted',
  'flow-factor-wrong',
  'flow-pulses-lost',
  'flow-pulses-added',
  'flow-does-not-stop',
  'flow-otherwise',
  'flow-of-other-meter',
] as const
export type FlowFault = (typeof flowFaults)[number]

interface Setup {
  pulsesPerLitre: number
  flowLPerMin: number
  supplyV: number
}

/** A rotor that gives a pulse each time a dose has passed, a wire that may pick up spikes, and a counter with a filter and a factor. */
export function simulateFlow({ pulsesPerLitre, flowLPerMin, supplyV }: Setup, fault: FlowFault | 'healthy') {
  const supply = fault === 'flow-without-supply' ? 0.4 * supplyV : supplyV
  const own = fault === 'flow-of-other-meter' ? 0.5 * pulsesPerLitre : pulsesPerLitre
  const passing = fault === 'flow-none' ? 0 : fault === 'flow-otherwise' ? 0.6 * flowLPerMin : flowLPerMin
  const running = observe(passing)
  const resting = observe(fault === 'flow-does-not-stop' ? 0.2 * flowLPerMin : 0)

  function observe(lPerMin: number) {
    const works = supply > 0.5 * supplyV && fault !== 'flow-sensor-dead'
    const spikesPerS = (0.3 * pulsesPerLitre * flowLPerMin) / 60
    const [seconds, steps] = [60, 6000]
    let [dose, spike, atMeter, atCard, counted] = [0, 0, 0, 0, 0]
    for (let step = 0; step < steps; step++) {
      dose += ((lPerMin / 60) * own * seconds) / steps
      spike += fault === 'flow-pulses-added' ? (spikesPerS * seconds) / steps : 0
      const pulses = works ? Math.floor(dose) : 0
      const spikes = Math.floor(spike)
      dose -= Math.floor(dose)
      spike -= spikes
      atMeter += pulses
      const arrived = (fault === 'flow-wire-open' ? 0 : pulses) + spikes
      atCard += arrived
      // The filter of the input swallows every third pulse.
      for (let it = 0; it < arrived; it++) counted += fault === 'flow-pulses-lost' && (atCard - it) % 3 === 0 ? 0 : 1
    }
    const factor = fault === 'flow-factor-wrong' ? 2 * pulsesPerLitre : pulsesPerLitre
    const shown = fault === 'flow-not-counted' ? 0 : (counted / factor / seconds) * 60
    return { atMeter: atMeter / seconds, atCard: atCard / seconds, shown }
  }

  return { flow: passing, supply, atMeter: running.atMeter, atCard: running.atCard, stopped: resting.atCard, shown: running.shown }
}

/** What can happen between an encoder and its counter. */
export type EncoderFault =
  | 'healthy'
  | 'encoder-without-supply'
  | 'encoder-stands'
  | 'channel-a-open'
  | 'channel-b-open'
  | 'channels-swapped'
  | 'edges-set-wrong'
  | 'pulses-lost'
  | 'pulses-added'
  | 'encoder-of-other-resolution'
  | 'turns-at-other-speed'

interface Setup {
  pulsesPerTurn: number
  speedPerMin: number
  supplyV: number
}

/** Two square waves a quarter apart through one turn, sampled finely, and a counter that follows their edges. */
export function simulateEncoder({ pulsesPerTurn, speedPerMin, supplyV }: Setup, fault: EncoderFault) {
  const pulses = fault === 'encoder-of-other-resolution' ? Math.round(pulsesPerTurn * 0.5) : pulsesPerTurn
  const dead = fault === 'encoder-without-supply' || fault === 'encoder-stands'
  const speed = fault === 'turns-at-other-speed' ? 0.5 * speedPerMin : speedPerMin
  const samples = pulses * 16
  const wave = (sample: number, shift: number) => (Math.floor((sample + shift) / 8) % 2 === 0 ? 1 : 0)
  let [counts, risesA, risesB] = [0, 0, 0]
  let [lastA, lastB] = [wave(0, 0), wave(0, 12)]
  for (let sample = 1; sample <= (dead ? 0 : samples); sample++) {
    const [trueA, trueB] = [wave(sample, 0), wave(sample, 12)]
    const a = fault === 'channel-a-open' ? 0 : trueA
    const b = fault === 'channel-b-open' ? 0 : trueB
    const [one, two] = fault === 'channels-swapped' ? [b, a] : [a, b]
    if (a > lastA) risesA++
    if (b > lastB) risesB++
    const [lastOne, lastTwo] = fault === 'channels-swapped' ? [lastB, lastA] : [lastA, lastB]
    const step = one !== lastOne ? (one === two ? -1 : 1) : two !== lastTwo ? (one === two ? 1 : -1) : 0
    // A counter of one edge takes the rising edge of the first channel alone.
    const taken = fault === 'edges-set-wrong' ? one > lastOne : fault !== 'pulses-lost' || sample % 10 !== 0
    if (taken) counts += step
    // Each spike on a channel is a pulse more, that the counter takes with the direction of the turn.
    if (fault === 'pulses-added' && sample % 50 === 0) {
      counts += 2
      risesA++
    }
    ;[lastA, lastB] = [a, b]
  }
  const perSecond = speed / 60
  return { supply: fault === 'encoder-without-supply' ? 0.3 * supplyV : supplyV, channelA: risesA * perSecond, channelB: risesB * perSecond, counts }
}

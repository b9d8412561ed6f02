import type { LockoutPhase, WrittenPhase } from '../model/lockout-phases.ts'

/** What the sequence needs to know of an energy source. */
export interface SequenceSource {
  id: string
  /** Points that cut it off. */
  points: readonly string[]
  /** Energy remains after isolation. */
  stored: boolean
  /** There is a time to wait until what is stored is harmless. */
  waits: boolean
  /** Can build up again while locked out. */
  reaccumulates: boolean
  /** Its absence is proved with a voltage tester. */
  voltageTest: boolean
  /** Its absence is proved by trying to start. */
  tryOut: boolean
}

/** A step of the author; `point` or `source` where it stands for the composed step of that point or source. */
export interface WrittenStep<Text> {
  phase: WrittenPhase
  point?: string | undefined
  source?: string | undefined
  text: Text
}

/** What a composed step says; its words come from the energy source, the point and the language. */
export type ComposedAct =
  | 'know-energies'
  | 'bring-tools'
  | 'tell-affected'
  | 'set-safe'
  | 'lock'
  | 'tag'
  | 'further-locks'
  | 'release-stored'
  | 'wait'
  | 'clear-people'
  | 'prove-tester'
  | 'prove'
  | 'prove-tester-again'
  | 'controls-off'
  | 'work'
  | 'watch'
  | 'clear-area'
  | 'count-people'
  | 'remove-locks'
  | 'tell-before-start'
  | 'set-service'

export interface LockoutStep<Text> {
  phase: LockoutPhase
  act: ComposedAct | 'written'
  text?: Text
  point?: string | undefined
  source?: string | undefined
  /** Sources that are still live, or hold energy that is not released, after this step; from isolating to releasing. */
  stillEnergised?: readonly string[]
}

export interface SequenceInput<Text> {
  /** In the order in which they are isolated. */
  sources: readonly SequenceSource[]
  /** Points where a tag hangs in place of a lock. */
  tagged: ReadonlySet<string>
  written: readonly WrittenStep<Text>[]
  tools: boolean
}

/**
 * The sequence of a lockout from the sources that the work touches: every point is isolated before one is locked,
 * every lock hangs before stored energy is released, and all of it is released before it is proved.
 * Source: 29 CFR 1910.147(d)(1) to (6) and (e)(1) to (3); the try-out and controls back to off: Appendix A.
 */
export function composeSequence<Text>({ sources, tagged, written, tools }: SequenceInput<Text>): LockoutStep<Text>[] {
  const points = [...new Set(sources.flatMap((source) => source.points))]
  const own = (part: WrittenPhase) => written.filter(({ phase }) => phase === part)
  const plain = (part: Exclude<WrittenPhase, 'restore'>) => own(part).map((step) => asStep<Text>(step, part))
  const restore = own('restore').map((step) => asStep<Text>(step, 'release'))
  const restored = new Set(restore.flatMap(({ point }) => point ?? []))
  const steps: LockoutStep<Text>[] = [
    { phase: 'prepare', act: 'know-energies' },
    ...(tools ? [{ phase: 'prepare', act: 'bring-tools' } as const] : []),
    ...plain('prepare'),
    { phase: 'notify', act: 'tell-affected' },
    ...plain('notify'),
    ...plain('shut-down'),
    ...merged('isolate', points, 'point', own('isolate'), (point) => [{ phase: 'isolate', act: 'set-safe', point }]),
    ...merged('lock', points, 'point', own('lock'), (point) => [{ phase: 'lock', act: tagged.has(point) ? 'tag' : 'lock', point }]),
    { phase: 'lock', act: 'further-locks' },
    ...merged(
      'dissipate',
      sources.filter(({ stored }) => stored).map(({ id }) => id),
      'source',
      own('dissipate'),
      (source) => [{ phase: 'dissipate', act: 'release-stored', source }],
      (source) => (sources.some(({ id, waits }) => id === source && waits) ? [{ phase: 'dissipate', act: 'wait', source }] : []),
    ),
    { phase: 'verify', act: 'clear-people' },
    ...sources.flatMap((source) => proof(source, own('verify'))),
    ...own('verify').flatMap((step) => (sources.some(({ id }) => id === step.source) ? [] : [asStep<Text>(step, 'verify')])),
    { phase: 'work', act: 'work' },
    ...plain('work'),
    ...sources.flatMap(({ id, reaccumulates }) => (reaccumulates ? [{ phase: 'work', act: 'watch', source: id } as const] : [])),
    { phase: 'release', act: 'clear-area' },
    { phase: 'release', act: 'count-people' },
    ...plain('release'),
    { phase: 'release', act: 'remove-locks' },
    { phase: 'release', act: 'tell-before-start' },
    // The last to be cut off comes back first, unless the author says otherwise.
    ...points
      .toReversed()
      .filter((point) => !restored.has(point))
      .map((point): LockoutStep<Text> => ({ phase: 'release', act: 'set-service', point })),
    ...restore,
  ]
  return withStillEnergised(steps, sources)
}

function asStep<Text>({ point, source, text }: WrittenStep<Text>, phase: LockoutPhase): LockoutStep<Text> {
  return { phase, act: 'written', text, point, source }
}

/**
 * The steps of a part that goes from point to point or from source to source: the author's for those that the
 * author wrote, composed ones for the others. A step of the author without either follows the one it was written after.
 */
function merged<Text>(
  phase: 'isolate' | 'lock' | 'dissipate',
  ids: readonly string[],
  key: 'point' | 'source',
  written: readonly WrittenStep<Text>[],
  compose: (id: string) => LockoutStep<Text>[],
  after: (id: string) => LockoutStep<Text>[] = () => [],
): LockoutStep<Text>[] {
  const groups = new Map<string | undefined, LockoutStep<Text>[]>()
  let current: string | undefined
  for (const step of written) {
    current = step[key] ?? current
    const group = groups.get(current) ?? []
    group.push(asStep(step, phase))
    groups.set(current, group)
  }
  // A step for what the lockout does not touch is reported by the check, and kept.
  const others = [...groups].flatMap(([id, steps]) => (id === undefined || ids.includes(id) ? [] : steps))
  return [...(groups.get(undefined) ?? []), ...ids.flatMap((id) => [...(groups.get(id) ?? compose(id)), ...after(id)]), ...others]
}

function proof<Text>({ id, voltageTest, tryOut }: SequenceSource, written: readonly WrittenStep<Text>[]): LockoutStep<Text>[] {
  const own = written.filter(({ source }) => source === id).map((step) => asStep<Text>(step, 'verify'))
  const tester = (act: ComposedAct): LockoutStep<Text>[] => (voltageTest ? [{ phase: 'verify', act, source: id }] : [])
  const prove: LockoutStep<Text>[] = own.length > 0 ? own : [{ phase: 'verify', act: 'prove', source: id }]
  const off: LockoutStep<Text>[] = tryOut ? [{ phase: 'verify', act: 'controls-off', source: id }] : []
  return [...tester('prove-tester'), ...prove, ...tester('prove-tester-again'), ...off]
}

/** Says after each step from isolating to releasing what is still live. */
function withStillEnergised<Text>(steps: readonly LockoutStep<Text>[], sources: readonly SequenceSource[]): LockoutStep<Text>[] {
  const lastOf = (phase: LockoutPhase, key: 'point' | 'source', id: string) => steps.findLastIndex((step) => step.phase === phase && step[key] === id)
  return steps.map((step, index) => {
    if (step.phase !== 'isolate' && step.phase !== 'lock' && step.phase !== 'dissipate') return step
    const live = sources.filter(({ id, points, stored }) => {
      const open = points.length === 0 || points.some((point) => lastOf('isolate', 'point', point) > index)
      return open || (stored && lastOf('dissipate', 'source', id) > index)
    })
    return { ...step, stillEnergised: live.map(({ id }) => id) }
  })
}

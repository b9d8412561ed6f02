import { type Lockout, waitInSequence } from '../energy/lockout-of-page.ts'
import type { ComposedAct, LockoutStep } from '../energy/lockout-sequence.ts'
import type { Spoken, Words } from '../model/words.ts'
import { waitLabel } from './parts/said.ts'
import { fill } from './words/fill.ts'
import type { Labels } from './words/labels.ts'
import { quantityName } from './words/quantities.ts'

/** A stretch of a composed step: plain words, the label of a device, or a text of the data in its own language. */
export type Piece = string | { tag: string } | { said: Spoken }

export interface ComposedText {
  pieces: readonly Piece[]
  /** What must be seen when the step worked. */
  result?: Spoken
}

export interface Speaker {
  labels: Labels
  language: string
  say(words: Words): Spoken
}

/** Acts that are said alike for every point and source. */
const plainLabels = {
  'know-energies': 'doKnowEnergies',
  'bring-tools': 'doBringTools',
  'tell-affected': 'doTellAffected',
  'further-locks': 'doFurtherLocks',
  'clear-people': 'doClearPeople',
  'prove-tester': 'doProveTester',
  'prove-tester-again': 'doProveTesterAgain',
  'controls-off': 'doControlsOff',
  work: 'doWork',
  'clear-area': 'doClearArea',
  'count-people': 'doCountPeople',
  'remove-locks': 'doRemoveLocks',
  'tell-before-start': 'doTellBeforeStart',
} as const satisfies Partial<Record<ComposedAct, keyof Labels>>

/** The words of a composed step. Throws for a step that the author wrote, or whose source or point is not in the lockout. */
export function composedText(
  { act, point: pointId, source: sourceId }: LockoutStep<unknown>,
  lockout: Lockout,
  { labels, language, say }: Speaker,
): ComposedText {
  const point = lockout.points.find((it) => it.point.value === pointId)
  const source = lockout.sources.find(({ id }) => id.value === sourceId)
  const of = <T>(value: T | undefined): T => {
    if (value === undefined) throw new Error(`a composed step \`${act}\` without its point or source`)
    return value
  }
  const atPoint = (label: string, values: (it: NonNullable<typeof point>) => Record<string, Piece>): ComposedText => {
    const it = of(point)
    return { pieces: fillPieces(label, { point: it.point.value, tag: { tag: it.tag.value }, place: { said: say(it.place) }, ...values(it) }) }
  }
  const ofSource = (label: string): ComposedText => ({ pieces: fillPieces(label, { name: { said: say(of(source).name) } }) })
  switch (act) {
    case 'set-safe':
      return atPoint(labels.doSet, ({ safe }) => ({ position: { said: say(safe) } }))
    case 'set-service':
      return atPoint(labels.doSet, ({ service }) => ({ position: { said: say(service) } }))
    case 'lock':
      return atPoint(labels.doLock, ({ hardware }) => ({ hardware: { said: say(hardware) } }))
    case 'tag': {
      const { additional } = of(of(point).tagOut)
      const { pieces } = atPoint(labels.doTag, ({ tagOut }) => ({ at: { said: say(of(tagOut).at) } }))
      return { pieces: additional ? [...pieces, ' ', { said: say(additional) }] : pieces }
    }
    case 'release-stored': {
      const { dissipate } = of(source)
      return dissipate ? { pieces: [{ said: say(dissipate) }] } : ofSource(labels.doReleaseStored)
    }
    case 'wait': {
      const wait = waitInSequence(of(source))
      const label =
        wait && 'seconds' in wait
          ? fill(labels.doWait, { time: waitLabel(labels, wait.seconds) })
          : fill(labels.doWaitUnknown, { missing: (wait?.notComputed ?? []).map((name) => quantityName(language, name)).join(', ') })
      return ofSource(label)
    }
    case 'prove': {
      const { method, expect, tags } = of(source).verify
      return { pieces: [{ said: say(method) }, ...tags.flatMap(({ value }): Piece[] => [' ', { tag: value }])], result: say(expect) }
    }
    case 'watch': {
      const { watch } = of(source)
      const { pieces } = ofSource(labels.doWatch)
      return { pieces: watch ? [...pieces, ' ', { said: say(watch) }] : pieces }
    }
    case 'written':
      throw new Error('a step of the author has words of its own')
    default:
      return { pieces: [labels[plainLabels[act]]] }
  }
}

/** Fills `{name}` in a label with pieces. */
function fillPieces(label: string, values: Readonly<Record<string, Piece>>): Piece[] {
  return label
    .split(/(\{\w+\})/)
    .filter((part) => part !== '')
    .map((part) => values[part.slice(1, -1)] ?? part)
}

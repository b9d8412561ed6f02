import type { Expectation } from '../../checkout/expectation.ts'
import { checkoutWords } from '../../checkout/words/words.ts'
import { signalWords } from '../../signals/words/words.ts'
import type { Context } from '../context.ts'
import type { BasisWord } from '../meter/meter-sheet.ts'
import { bandText, basisText, numberText } from '../meter/meter-words.ts'
import { fill } from '../words/fill.ts'
import { meterWords } from '../words/meter.ts'

export interface ExpectationRow {
  where: string
  name: string
  state: string
  shouldRead: string
  basis: string
}

/** What a reading is of, and when it is taken, in the language of the page. */
export function expectationName({ language, labels }: Context, { measured, state, seen, at, meter }: Expectation): { name: string; state: string } {
  const [words, signal, own] = [checkoutWords(language), signalWords(language), meterWords(language)]
  if (!words || !signal || !own) throw new Error(`expected readings have no words for the language ${language}`)
  const process = at ? `, ${labels.meterAtProcess} ${numberText(own, at.value, at.unit)} ${at.unit}` : ''
  return { name: meter ? signal.points[meter] : words.measured[measured], state: (seen ? signal.seen[seen] : words.states[state]) + process }
}

/** `generic` where a usual value stands in for a data sheet, or nobody has held a limit against its source. */
export function basisOfRest({ restsOn }: Expectation): BasisWord[] {
  const { bases, generic, fromMemory } = restsOn
  return [...new Set<BasisWord>([...bases, ...(generic || fromMemory ? (['generic'] as const) : [])])]
}

/** All that a device should read, or why it is not computed. */
export function expectationRows(context: Context, expectations: readonly Expectation[]): ExpectationRow[] {
  const words = meterWords(context.language)
  const signal = signalWords(context.language)
  const points = checkoutWords(context.language)?.points
  if (!words || !signal || !points) return []
  const shouldRead = (it: Expectation): string => {
    const { usual, low, high, value, unit, notComputed, refused, impossible } = it
    const plain = unit === '1' ? '' : unit
    const limit =
      low === undefined && high === undefined
        ? undefined
        : bandText(words, { ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) }, plain)
    const good = usual ? bandText(words, usual, plain) : value === undefined ? undefined : `${numberText(words, value, plain)} ${plain}`.trim()
    return [
      ...(good === undefined ? [] : [good]),
      ...(limit === undefined || limit === good ? [] : [`${words.meterLimit} ${limit}`]),
      ...(notComputed ? [fill(words.meterMissing, { missing: notComputed.join(', ') })] : []),
      ...(refused ? [signal.refusals[refused]] : []),
      ...(impossible ? [impossible.why] : []),
    ].join('; ')
  }
  return expectations.map((it) => ({
    where: points[it.point],
    ...expectationName(context, it),
    shouldRead: shouldRead(it),
    basis: basisText(words, basisOfRest(it)),
  }))
}

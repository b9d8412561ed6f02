import { causesOf } from '../checkout/causes-of.ts'
import type { Checkout } from '../checkout/checkout-of.ts'
import type { Expectation } from '../checkout/expectation.ts'
import { coldJunctionIn, isColdJunction, meaningOf } from '../checkout/meaning.ts'
import { judgeTaken, loopStateOf, observationsOf, type Taken } from '../checkout/reading.ts'
import type { CheckoutWords } from '../checkout/words/words.ts'
import type { Device, Machine } from '../model/machine.ts'
import { speak } from '../model/words.ts'
import { diagnose } from '../signals/fault/diagnose.ts'
import type { NextReading } from '../signals/fault/next-reading.ts'
import { type TargetState, targetStates } from '../signals/fault/row.ts'
import { isRefused } from '../signals/refusals.ts'
import { faultWords } from '../signals/words/fault-words.ts'
import type { SignalWords } from '../signals/words/words.ts'
import { inLanguage } from '../site/words/decimal.ts'

export interface Told {
  device: Device
  machine: Machine
  checkout: Checkout
  taken: readonly Taken[]
  words: CheckoutWords
  signals: SignalWords
  language: string
}

/** What a device should read, as a table, and the readings with their verdicts and likely faults. */
export function expectText(told: Told): string {
  const { device, machine, checkout, taken, words, signals, language } = told
  const rows = checkout.expectations.map((it) => [
    words.points[it.point],
    [words.measured[it.measured], ...(it.signal ? [`(${it.signal})`] : [])].join(' '),
    [it.seen ? signals.seen[it.seen] : words.states[it.state], ...(it.at ? [`${figure(it.at.value, language)} ${it.at.unit}`.trim()] : [])].join(
      ', ',
    ),
    limitsText(it, told),
    notes(it, told),
  ])
  const lines = [
    `${device.tag.value}  ${speak(device.description, language, machine.sourceLanguage).text}`,
    '',
    ...columns(rows),
    ...checkout.circuits.flatMap(({ signal, notComputed, refused }) => {
      const why = refused ? signals.refusals[refused] : notComputed && `${words.notComputed} ${notComputed.join(', ')}`
      return why ? [`${signal.address.value}: ${why}`] : []
    }),
    ...(checkout.approval ? ['', signals.refusals[checkout.approval]] : []),
    ...(taken.length > 0 ? ['', words.readings, ...taken.flatMap((it) => readingLines(it, told)), ...faultLines(told)] : []),
  ]
  return `${lines.map((line) => line.trimEnd()).join('\n')}\n`
}

function columns(rows: readonly string[][]): string[] {
  const widths = [0, 1, 2, 3].map((column) => Math.max(0, ...rows.map((row) => row[column]?.length ?? 0)))
  return rows.map((row) => `  ${row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ')}`)
}

function limitsText({ low, high, usual, value, unit }: Expectation, { words, language }: Told): string {
  const [shownLow, shownHigh] = usual ? [usual.low, usual.high] : []
  const ends = (from: number | undefined, to: number | undefined) => {
    if (from === undefined) return to === undefined ? '' : `${words.atMost} ${figure(to, language)}`
    if (to === undefined) return `${words.atLeast} ${figure(from, language)}`
    return from === to ? figure(from, language) : `${figure(from, language)} ${words.to} ${figure(to, language)}`
  }
  const band = ends(low, high)
  const nominal = usual ? ends(shownLow, shownHigh) : value === undefined || value === low || value === high ? '' : figure(value, language)
  const named = unit === '1' ? '' : unit
  return [band && `${band} ${named}`.trim(), nominal && `(${usual ? `${words.usually} ` : ''}${nominal} ${named}`.trim() + (nominal ? ')' : '')]
    .filter((it) => it)
    .join(' ')
}

function notes({ formula, restsOn, notComputed, refused, impossible }: Expectation, { words, signals }: Told): string {
  return [
    formula,
    restsOn.generic ? words.generic : undefined,
    restsOn.fromMemory ? words.fromMemory : undefined,
    notComputed && notComputed.length > 0 ? `${words.notComputed} ${notComputed.join(', ')}` : undefined,
    refused && signals.refusals[refused],
    impossible?.why,
  ]
    .filter((it) => it !== undefined)
    .join('  ·  ')
}

/** Four figures, without an exponent; the decimal mark of the language. */
function figure(value: number, language: string): string {
  const text = String(Number(Math.abs(value) >= 1e4 ? value.toFixed(0) : value.toPrecision(4)))
  return inLanguage(text, language)
}

function readingLines(taken: Taken, told: Told): string[] {
  const { checkout, words } = told
  if (isColdJunction(taken, checkout)) return [`  ${taken.typed}: ${words.coldJunction}`]
  const loop = loopStateOf(taken, checkout)
  const judged = judgeTaken(taken, checkout)
  const meaning = meaningIn(told, taken)
  const value = meaning && `${words.meaning} ${figure(meaning.value, told.language)} ${meaning.unit}`
  const said = loop || value ? [`  ${taken.typed}: ${[value, loop && words.loop[loop]].filter((it) => it).join('  ·  ')}`] : []
  if (taken.light) return [`  ${taken.typed}`]
  if (judged.length === 0 && said.length === 0) return [`  ${taken.typed}: ${words.noPlace}`]
  return [
    ...said,
    ...judged.map(({ expectation, verdict }) => {
      const { point, measured, state, signal } = expectation
      return `  ${taken.typed}: ${words.verdicts[verdict]}  ·  ${words.points[point]}, ${words.measured[measured]}${signal ? ` (${signal})` : ''}, ${words.states[state]}`
    }),
  ]
}

/** What a reading stands for, with the temperature of the terminals that was taken too. */
export const meaningIn = ({ checkout, taken }: Told, it: Taken) => meaningOf(it, checkout, coldJunctionIn(taken, checkout))

interface ToldFaults {
  /** The state that was taken for readings that name none; undefined where every reading names its own. */
  assumed: TargetState | undefined
  fits: boolean
  faults: { id: string; diagnosis: string; nextStep: string }[]
  next: string | undefined
}

/** Most faults that are told at once. */
const mostFaults = 3

/** The likely faults, for either state of the target where a reading does not say in which it was taken. */
export function faultsOf({ checkout, taken, signals }: Told): ToldFaults[] {
  const { circuit } = checkout
  if (taken.length === 0) return []
  if (!circuit) return otherFaults(causesOf(taken, checkout), signals)
  const open = taken.some(({ state }) => state === undefined)
  const of = { seen: checkout.circuits[0]?.seen, isSafetyDevice: checkout.approval !== undefined }
  return (open ? targetStates : targetStates.slice(0, 1)).flatMap((assumed): ToldFaults[] => {
    const observations = observationsOf(taken, assumed, circuit.output === 'namur')
    const found = observations.length > 0 ? diagnose(observations, circuit) : undefined
    if (!found || isRefused(found)) return []
    return [
      {
        assumed: open ? assumed : undefined,
        fits: found.fits,
        faults: found.diagnoses.slice(0, mostFaults).map(({ row }) => ({ id: row.id, ...faultWords(signals, row.id, of) })),
        next: found.next && nextText(found.next, signals),
      },
    ]
  })
}

function otherFaults(found: ReturnType<typeof causesOf>, signals: SignalWords): ToldFaults[] {
  if (!found) return []
  const causes = found.causes.slice(0, mostFaults).map(({ id }) => ({ id, ...signals.causes[id] }))
  const faults = found.healthy ? [{ id: 'healthy', ...signals.healthy.output }, ...causes] : causes
  return faults.length > 0 ? [{ assumed: undefined, fits: found.fits, faults, next: undefined }] : []
}

const nextText = (next: NextReading, signals: SignalWords) =>
  `${'point' in next ? signals.points[next.point] : signals.indicators[next.indicator]}, ${signals.states[next.state]}`

function faultLines(told: Told): string[] {
  const { words, signals } = told
  return faultsOf(told).flatMap(({ assumed, fits, faults, next }) => [
    '',
    `${words.faults}${assumed ? ` (${signals.states[assumed]})` : ''}`,
    ...(fits ? [] : [`  ${words.notAll}`]),
    ...faults.map(({ diagnosis, nextStep }, index) => `  ${index + 1}. ${diagnosis} ${nextStep}`),
    ...(next ? [`  ${words.next}: ${next}`] : []),
  ])
}

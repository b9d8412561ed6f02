import { adjusterOf, formatsOf, type SettingStep, settingsFor, settingsGone } from '../../model/changeover.ts'
import type { Context } from '../context.ts'
import { inLanguage } from '../words/decimal.ts'
import { fill } from '../words/fill.ts'

/** A setting as a page shows it. */
export interface ShownSetting {
  step: SettingStep
  what: string
  lang: string | undefined
  value: string
  unit: string
  /** What is done: by how much, in how many turns, which way. Empty where that is not known. */
  how: string[]
}

/** What changes from one product to another. */
export interface SetUpFrom {
  from: string
  heading: string
  changes: ShownSetting[]
  stays: ShownSetting[]
  gone: { what: string; lang: string | undefined }[]
}

export function everySetting(context: Context, format: string): ShownSetting[] {
  return settingsFor(context.machine.formats, format).map((step) => shown(context, step))
}

/** One list for each other product that may be on the machine. */
export function setUpsTo(context: Context, format: string): SetUpFrom[] {
  const { machine, labels } = context
  return formatsOf(machine)
    .filter((from) => from !== format)
    .map((from) => {
      const steps = settingsFor(machine.formats, format, from).map((step) => shown(context, step, from))
      const changes = steps.filter(({ step }) => step.by !== 0)
      const heading = fill(changes.length === 0 ? labels.setUpFromNone : labels.setUpFrom, { from, changes: changes.length, count: steps.length })
      const gone = settingsGone(machine.formats, format, from).map(({ description }) => said(context, description))
      return { from, heading, changes, stays: steps.filter(({ step }) => step.by === 0), gone }
    })
}

function shown(context: Context, step: SettingStep, from?: string): ShownSetting {
  const { labels, machine, language } = context
  const { row, by, turns, turn } = step
  const number = (value: number) => spoken(value, language)
  const withUnit = (value: number) => `${number(value)}\u00a0${row.unit.value}`
  const way = turn ? labels[`turning_${turn}`] : undefined
  const rounded = turns === undefined ? undefined : Number(turns.toFixed(2))
  const turned =
    rounded === undefined
      ? []
      : way === undefined
        ? [fill(labels.setUpTurnsOnly, { turns: number(rounded) })]
        : [rounded === 1 ? fill(labels.setUpTurn, { way }) : fill(labels.setUpTurns, { turns: number(rounded), way })]
  const changed =
    from === undefined
      ? []
      : step.from === undefined
        ? [fill(labels.setUpNew, { from })]
        : [
            fill(labels.setUpWas, { value: withUnit(step.from) }),
            ...(by ? [fill(by > 0 ? labels.setUpRaise : labels.setUpLower, { by: withUnit(Math.abs(by)) }), ...turned] : []),
          ]
  const { low, high } = adjusterOf(machine.formats, row.setting.value)
  const range =
    from === undefined && low !== undefined && high !== undefined ? [fill(labels.setUpRange, { low: number(low), high: withUnit(high) })] : []
  return { step, ...said(context, row.description), value: number(row.value.value), unit: row.unit.value, how: [...changed, ...range] }
}

function said({ say, language }: Context, words: Parameters<Context['say']>[0]) {
  const { text, language: of } = say(words)
  return { what: text, lang: of === language ? undefined : of }
}

const spoken = (value: number, language: string) => inLanguage(String(value), language)

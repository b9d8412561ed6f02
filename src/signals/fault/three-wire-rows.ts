import type { Level } from './level.ts'
import type { ByConduction, FaultId, RowSpec } from './row.ts'
import { anyLight, both, cardRows, dark, follows, leakageLights, lit } from './row-parts.ts'

const signal: ByConduction<Level> = ['driven', 'released']
const atReturn: ByConduction<Level> = both('return')
const full = { 'supply-at-sensor': both<Level>('full-supply'), 'brown-to-common': both<Level>('full-supply') }
const good = { ...full, 'output-at-sensor': signal, 'input-at-card': signal, 'input-to-cabinet': signal } satisfies RowSpec['readings']
const allFollow = { 'output-led': follows, 'card-led': follows, tag: follows } satisfies RowSpec['lights']
const noneArrives = { 'output-led': follows, 'card-led': dark, tag: dark } satisfies RowSpec['lights']
const allDark = { 'output-led': dark, 'card-led': dark, tag: dark } satisfies RowSpec['lights']

interface Roles {
  liveOpen: FaultId
  returnOpen: FaultId
  shortToLive: FaultId
  shortToReturn: FaultId
  wrongPolarity: FaultId
}
const roles: Readonly<Record<'pnp' | 'npn', Roles>> = {
  pnp: {
    liveOpen: 'l-plus-open',
    returnOpen: 'l-minus-open',
    shortToLive: 'signal-shorted-to-l-plus',
    shortToReturn: 'signal-shorted-to-l-minus',
    wrongPolarity: 'device-is-npn',
  },
  npn: {
    liveOpen: 'l-minus-open',
    returnOpen: 'l-plus-open',
    shortToLive: 'signal-shorted-to-l-minus',
    shortToReturn: 'signal-shorted-to-l-plus',
    wrongPolarity: 'device-is-pnp',
  },
}

/** 3-wire PNP on a sinking input, or NPN on a sourcing one. Circuit analysis; weights are common practice. */
export function threeWireRows(output: 'pnp' | 'npn'): RowSpec[] {
  const pnp = output === 'pnp'
  const { liveOpen, returnOpen, shortToLive, shortToReturn, wrongPolarity } = roles[output]
  const without = { 'input-at-card': atReturn, 'input-to-cabinet': atReturn }
  return [
    { id: 'healthy', weight: 10, readings: good, lights: allFollow },
    {
      id: 'signal-open',
      weight: 6,
      suspected: 'signal-wire',
      // A meter on a wire that hangs in the air shows the leakage of the sensor, or nothing.
      readings: { ...full, ...without, 'output-at-sensor': ['driven', undefined] },
      lights: noneArrives,
    },
    {
      id: liveOpen,
      weight: 4,
      suspected: 'supply',
      readings: {
        ...without,
        'supply-at-sensor': both('nothing'),
        'brown-to-common': both(pnp ? 'nothing' : 'full-supply'),
        'output-at-sensor': pnp ? atReturn : [undefined, undefined],
      },
      lights: allDark,
    },
    {
      id: returnOpen,
      weight: 3,
      suspected: 'supply',
      readings: {
        'supply-at-sensor': both('sagging-supply'),
        'brown-to-common': both(pnp ? 'full-supply' : 'sagging-supply'),
        'input-at-card': both('swings'),
        'input-to-cabinet': both('swings'),
      },
      // What comes through the sensor may be enough for the input, or not.
      lights: { 'output-led': both(['dark', 'unsteady']) },
    },
    {
      id: shortToLive,
      weight: 3,
      suspected: 'signal-wire',
      readings: { ...full, 'output-at-sensor': both('live'), 'input-at-card': both('live'), 'input-to-cabinet': both('live') },
      lights: { 'output-led': follows, 'card-led': lit, tag: lit },
    },
    {
      id: shortToReturn,
      weight: 2,
      suspected: 'signal-wire',
      readings: { ...full, ...without, 'output-at-sensor': atReturn },
      lights: { 'output-led': [['lit', 'unsteady'], ['dark']], 'card-led': dark, tag: dark },
    },
    {
      id: 'supply-reversed',
      weight: 1,
      suspected: 'supply',
      readings: { ...without, 'supply-at-sensor': both('reversed-supply'), 'brown-to-common': both('nothing') },
      lights: allDark,
    },
    {
      id: wrongPolarity,
      weight: 1,
      suspected: 'device',
      readings: { ...full, ...without, 'output-at-sensor': both('low-side') },
      lights: noneArrives,
    },
    { id: 'contact-inverted', weight: 2, suspected: 'device', conducts: 'inverted', readings: good, lights: allFollow },
    { id: 'never-senses', weight: 5, suspected: 'target', readings: good, lights: allFollow },
    { id: 'always-senses', weight: 3, suspected: 'target', readings: good, lights: allFollow },
    {
      id: 'low-supply',
      weight: 2,
      suspected: 'supply',
      // A drop in the wire that carries no signal leaves the input good.
      readings: { 'supply-at-sensor': both('low-supply'), 'input-at-card': ['weak', 'released'], 'input-to-cabinet': ['weak', 'released'] },
      lights: { 'output-led': follows, 'card-led': anyLight, tag: anyLight },
    },
    {
      id: 'card-common-open',
      weight: 1,
      suspected: 'terminal',
      readings: {
        ...full,
        'output-at-sensor': ['driven', undefined],
        'input-at-card': pnp ? atReturn : ['driven', undefined],
        'input-to-cabinet': ['driven', undefined],
      },
      lights: noneArrives,
    },
    ...cardRows(good, { 'output-led': follows }),
    {
      id: 'leakage',
      weight: 1,
      suspected: 'signal-wire',
      readings: {
        ...full,
        'output-at-sensor': ['driven', undefined],
        'input-at-card': ['driven', 'between'],
        'input-to-cabinet': ['driven', 'between'],
      },
      lights: { 'output-led': follows, ...leakageLights },
    },
  ]
}

import type { CardSense } from '../digital-input.ts'
import type { Level } from './level.ts'
import type { ByConduction, Light, RowSpec } from './row.ts'
import { anyLight, both, cardRows, dark, follows, leakageLights, lit, weakLight } from './row-parts.ts'

const signal: ByConduction<Level> = ['driven', 'released']
const atReturn: ByConduction<Level> = both('return')
const none: ByConduction<Level> = both('nothing')
const fed = { 'feed-at-sensor': both<Level>('full-supply') }

/** A 2-wire sensor or a dry contact, in series with the input. Circuit analysis; weights are common practice. */
export function twoWireRows(output: '2-wire' | 'dry contact', card: CardSense): RowSpec[] {
  const sensor = output === '2-wire'
  const led = (lights: ByConduction<readonly Light[]>): RowSpec['lights'] => (sensor ? { 'output-led': lights } : {})
  const across: ByConduction<Level> = [sensor ? 'drop' : 'nothing', 'rest']
  const good = { ...fed, 'across-sensor': across, 'input-at-card': signal } satisfies RowSpec['readings']
  const all = { ...led(follows), 'card-led': follows, tag: follows }
  const nothing = { ...led(dark), 'card-led': dark, tag: dark }
  const sinking = card === 'sinking'
  return [
    { id: 'healthy', weight: 10, readings: good, lights: all },
    {
      id: 'signal-open',
      weight: 6,
      suspected: 'signal-wire',
      readings: { ...fed, 'across-sensor': none, 'input-at-card': atReturn },
      lights: nothing,
    },
    {
      id: sinking ? 'l-plus-open' : 'l-minus-open',
      weight: 4,
      suspected: 'supply',
      readings: { 'feed-at-sensor': none, 'across-sensor': none, 'input-at-card': atReturn },
      lights: nothing,
    },
    {
      id: sinking ? 'signal-shorted-to-l-plus' : 'signal-shorted-to-l-minus',
      weight: 3,
      suspected: 'signal-wire',
      readings: { ...fed, 'across-sensor': none, 'input-at-card': both('live') },
      lights: { ...led(dark), 'card-led': lit, tag: lit },
    },
    {
      id: sinking ? 'signal-shorted-to-l-minus' : 'signal-shorted-to-l-plus',
      weight: 2,
      suspected: 'signal-wire',
      // A contact that closes on it blows the fuse.
      readings: { ...(sensor ? { 'across-sensor': [undefined, 'rest'] } : {}), 'input-at-card': atReturn },
      lights: { 'card-led': dark, tag: dark },
    },
    { id: 'contact-inverted', weight: 2, suspected: 'device', conducts: 'inverted', readings: good, lights: all },
    ...(sensor ? sensorRows(good, all) : contactRows(good, all)),
    {
      id: 'low-supply',
      weight: 2,
      suspected: 'supply',
      readings: {
        'feed-at-sensor': both('low-supply'),
        'across-sensor': [sensor ? 'drop' : 'nothing', undefined],
        'input-at-card': ['weak', 'released'],
      },
      lights: { ...led(follows), 'card-led': anyLight, tag: anyLight },
    },
    {
      id: 'card-common-open',
      weight: 1,
      suspected: 'terminal',
      readings: { ...fed, 'across-sensor': none, 'input-at-card': sinking ? atReturn : ['driven', undefined] },
      lights: nothing,
    },
    ...cardRows(good, led(follows)),
    {
      id: 'leakage',
      weight: sensor ? 3 : 1,
      suspected: sensor ? 'card' : 'signal-wire',
      readings: { ...fed, 'across-sensor': [across[0], undefined], 'input-at-card': ['driven', 'between'] },
      lights: { ...led(follows), ...leakageLights },
    },
  ]
}

function sensorRows(good: RowSpec['readings'], lights: RowSpec['lights']): RowSpec[] {
  const weak: RowSpec['lights'] = { 'card-led': weakLight, tag: weakLight }
  return [
    { id: 'never-senses', weight: 5, suspected: 'target', readings: good, lights },
    { id: 'always-senses', weight: 3, suspected: 'target', readings: good, lights },
    {
      id: 'drop-too-high',
      weight: 2,
      suspected: 'card',
      readings: { ...fed, 'across-sensor': ['high-drop', 'rest'], 'input-at-card': ['between', 'released'] },
      lights: { ...weak, 'output-led': follows },
    },
    {
      id: 'load-too-small',
      weight: 1,
      suspected: 'card',
      readings: { ...fed, 'across-sensor': [undefined, 'rest'], 'input-at-card': [undefined, 'released'] },
      lights: { ...weak, 'output-led': weakLight },
    },
  ]
}

function contactRows(good: RowSpec['readings'], lights: RowSpec['lights']): RowSpec[] {
  return [
    { id: 'contact-stays-open', weight: 5, suspected: 'device', conducts: 'never', readings: good, lights },
    { id: 'contact-stays-closed', weight: 4, suspected: 'device', conducts: 'always', readings: good, lights },
    {
      id: 'poor-contact',
      weight: 2,
      suspected: 'device',
      readings: { ...good, 'across-sensor': ['contact-drop', 'rest'], 'input-at-card': ['swings', 'released'] },
      lights: { 'card-led': anyLight, tag: anyLight },
    },
  ]
}

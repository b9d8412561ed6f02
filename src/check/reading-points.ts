import type { Graph } from '../model/graph.ts'
import { type Machine, type Signal, textsOf } from '../model/machine.ts'
import { attributeOf, elementsOf } from '../model/mdx-elements.ts'
import type { Place } from '../source/place.ts'
import { type Reading, stepsWithReadings } from './readings.ts'

/** A reading on a page, and a device whose signal it may read. */
export interface ReadingPoint {
  reading: Reading
  tag: string
  /** Each signal of the device, at least one. */
  signals: readonly Signal[]
  /** The reading itself names the device; otherwise its step does. */
  named: boolean
  /** No other device is named there, with or without a signal. */
  alone: boolean
}

/**
 * For every reading that names devices with signals, or whose step does, the devices that it may read: the only one,
 * or those that measure. None where that is not clear.
 */
export function readingPoints(machine: Machine, graph: Graph): ReadingPoint[][] {
  const worded = new Map(
    Map.groupBy(
      machine.bareTags().filter(({ prose }) => prose.where === 'attribute'),
      ({ prose }) => startOf(prose.place(0, prose.text.length)),
    ),
  )
  const pointsOf = (reading: Reading, tags: readonly (string | undefined)[], named: boolean): ReadingPoint[] => {
    const names = new Set(tags)
    const wired = [...names].flatMap((tag) => {
      const own = tag === undefined ? [] : graph.signalsOf(tag)
      return tag !== undefined && own.length > 0 ? [{ reading, tag, signals: own, named, alone: names.size === 1 }] : []
    })
    return wired.length === 1 ? wired : wired.filter((it) => it.signals.some(({ unit }) => unit))
  }
  return machine.pages.flatMap(textsOf).flatMap((text) =>
    stepsWithReadings(text).flatMap(({ step, readings }) => {
      const inStep = elementsOf(step, 'Tag').map((element) => attributeOf(element, 'id'))
      return readings.map((reading) => {
        const words = [...reading.values()].flatMap(({ place }) => worded.get(startOf(place)) ?? [])
        const own = words.map(({ mention: { tag } }) => tag)
        return own.length > 0 ? pointsOf(reading, own, true) : pointsOf(reading, inStep, false)
      })
    }),
  )
}

const startOf = ({ file, line, column }: Place) => `${file}:${line}:${column}`

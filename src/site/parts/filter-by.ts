import type { Graph } from '../../model/graph.ts'
import type { Device } from '../../model/machine.ts'
import type { Labels } from '../words/labels.ts'

export type FilterName = 'area' | 'kind' | 'drawing' | 'purpose'

/** A choice above a list; an entry of the list fits with one of its own values. */
export interface FilterBy {
  name: FilterName
  label: string
  /** What stands there while nothing is chosen. */
  all: string
  options: readonly { value: string; text: string }[]
}

/** The values of an entry as an attribute carries them; no value has a line break. */
export const filterValues = (values: readonly string[]): string | undefined => (values.length > 0 ? values.join('\n') : undefined)

export const purposes = ['reports', 'measures', 'driven', 'safety', 'none'] as const
export type Purpose = (typeof purposes)[number]

const purposeOfType: Readonly<Record<string, readonly Purpose[]>> = {
  DI: ['reports'],
  SDI: ['reports', 'safety'],
  AI: ['measures'],
  RTD: ['measures'],
  TC: ['measures'],
  CNT: ['measures'],
  ENC: ['measures'],
  DO: ['driven'],
  AO: ['driven'],
  SDO: ['driven', 'safety'],
}

/** What a device is there for, by its signals in the I/O list. */
export function purposesOf({ tag }: Device, graph: Graph): Purpose[] {
  const found = new Set(graph.signalsOf(tag.value).flatMap(({ type }) => purposeOfType[type?.value ?? ''] ?? []))
  return found.size === 0 ? ['none'] : purposes.filter((it) => found.has(it))
}

export function purposeLabel(labels: Labels, purpose: Purpose): string {
  return {
    reports: labels.purposeReports,
    measures: labels.purposeMeasures,
    driven: labels.purposeDriven,
    safety: labels.purposeSafety,
    none: labels.purposeNone,
  }[purpose]
}

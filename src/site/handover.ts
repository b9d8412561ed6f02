import type { Graph } from '../model/graph.ts'
import type { Machine } from '../model/machine.ts'
import type { SitePage } from './site-map.ts'

/** What the check has read and the pages show. */
export interface SiteInput {
  machine: Machine
  graph: Graph
  pages: readonly SitePage[]
  /** Addresses that have a page, the same in every language. */
  addresses: ReadonlySet<string>
  release: Release
  /** Whether pages say where their blocks stand in the files, for the preview. */
  preview: boolean
}

export interface Release {
  toolVersion: string
  /** Over all inputs of the build; see bundle/manifest.ts. */
  checkValue: string
  check: { errors: number; warnings: number; notes: number }
  /** Findings that were looked at and may stay until a day, in the order of the findings. */
  accepted: readonly { rule: string; file: string; line: number; message: string; reason: string; until: string }[]
  /** Short hash of the assets, so that a browser never mixes two releases. */
  assets: string
}

const key = Symbol.for('fettle.site')

/** Astro runs the pages in this process, in modules of its own: the global is the one place both can see. */
export function handOver(input: SiteInput): void {
  Reflect.set(globalThis, key, input)
}

export function handedOver(): SiteInput {
  const input: SiteInput | undefined = Reflect.get(globalThis, key)
  if (!input) throw new Error('the site is built by `fettle build`, which hands the checked machine over')
  return input
}

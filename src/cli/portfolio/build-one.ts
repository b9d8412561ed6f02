import { resolve } from 'node:path'
import type { Options } from '../options.ts'
import { startProgress } from '../progress.ts'
import { buildKeeper } from './kept-build.ts'
import type { Outcome } from './outcome.ts'

/** Builds one machine of several, unless what stands in its place is what a build would make. */
export async function buildOne(options: Options): Promise<Outcome> {
  const out = options.get('out')
  const keeper = out === undefined || options.has('no-cache') ? undefined : buildKeeper(options, resolve(out))
  const unchanged = await keeper?.unchanged()
  if (unchanged) return unchanged
  const { buildFolder } = await import('../build-folder.ts')
  return await buildFolder(options, startProgress(), keeper)
}

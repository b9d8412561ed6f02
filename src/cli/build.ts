import type { Options } from './options.ts'
import { startProgress } from './progress.ts'

/** Builds one machine here, or several in a process each. With --jobs one folder is several that happen to be one. */
export async function run(options: Options): Promise<number> {
  if (options.words.length > 1 || options.has('jobs')) {
    const { buildPortfolio } = await import('./portfolio/build-portfolio.ts')
    return await buildPortfolio(options)
  }
  const { buildFolder } = await import('./build-folder.ts')
  const { code } = await buildFolder(options, startProgress())
  return code
}

import type { Options } from './options.ts'
import { startProgress } from './progress.ts'

/** Builds one machine here, or several in a process each. */
export async function run(options: Options): Promise<number> {
  if (options.words.length > 1) {
    const { buildPortfolio } = await import('./portfolio/build-portfolio.ts')
    return await buildPortfolio(options)
  }
  const { buildFolder } = await import('./build-folder.ts')
  const { code } = await buildFolder(options, startProgress())
  return code
}

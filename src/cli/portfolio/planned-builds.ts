import { availableParallelism } from 'node:os'
import { join } from 'node:path'
import { readText } from '../../load/decode.ts'
import { parseYaml } from '../../load/yaml.ts'
import { type Options, UsageError } from '../options.ts'
import { openFolder } from '../paths.ts'

/** One machine of several, and where its site goes; undefined where machine.yaml does not tell, which the check will say. */
export interface PlannedBuild {
  folder: string
  outDir: string | undefined
}

/** Where several machines go: each into `<parent>/<machine id>`. Throws a UsageError where two would go to the same place. */
export function plannedBuilds(folders: readonly string[], parent: string): PlannedBuild[] {
  const planned = folders.map((folder) => {
    const id = idOf(folder)
    return { folder, outDir: id === undefined ? undefined : join(parent, id) }
  })
  const first = new Map<string, string>()
  for (const { folder, outDir } of planned) {
    if (outDir === undefined) continue
    const other = first.get(outDir)
    if (other !== undefined)
      throw new UsageError(
        `\`${other}\` and \`${folder}\` would both be built into \`${outDir}\`: nothing was built. Give each machine an \`id\` of its own, or build one of them alone with --out`,
      )
    first.set(outDir, folder)
  }
  return planned
}

function idOf(folder: string): string | undefined {
  const unread = () => undefined
  const opened = openFolder(folder)
  const source = opened.size('machine.yaml') === undefined ? undefined : readText(opened, 'machine.yaml', unread)
  const value = source && parseYaml(source, unread)?.value
  const id = typeof value === 'object' && value !== null && 'id' in value ? value.id : undefined
  return typeof id === 'string' && /^[a-z0-9-]+$/.test(id) ? id : undefined
}

/** Memory that the build of a machine takes at its peak, in bytes; measured in tests/bench/results/portfolio.md. */
const buildBytes = 1.5e9

/** How many machines are built at once: what --jobs says, else one a core as far as free memory allows. */
export function jobsFor(options: Pick<Options, 'get'>, count: number): number {
  const asked = options.get('jobs')
  if (asked !== undefined && !/^[1-9]\d{0,3}$/.test(asked)) throw new UsageError(`--jobs takes a number from 1 to 9999, not \`${asked}\``)
  const allowed = asked === undefined ? Math.min(availableParallelism(), Math.floor(process.availableMemory() / buildBytes)) : Number(asked)
  return Math.max(1, Math.min(allowed, count))
}

import { verify } from '../bundle/verify.ts'
import type { Options } from './options.ts'

export async function run(options: Options): Promise<number> {
  const [path = '.'] = options.words
  const result = await verify(path)
  if (options.get('format') === 'json') {
    process.stdout.write(`${JSON.stringify(result, null, 2)}\n`)
  } else if (result.unreadable !== undefined) {
    process.stdout.write(`${path}: ${result.unreadable}\n`)
  } else {
    for (const file of result.changed) process.stdout.write(`changed  ${shown(file)}\n`)
    for (const file of result.missing) process.stdout.write(`missing  ${shown(file)}\n`)
    for (const file of result.added) process.stdout.write(`added    ${shown(file)}\n`)
    const faults = result.changed.length + result.missing.length + result.added.length
    process.stdout.write(
      faults === 0
        ? `${path}: whole, as it was built\n`
        : `${path}: ${result.changed.length} changed, ${result.missing.length} missing, ${result.added.length} added\n`,
    )
  }
  if (result.unreadable !== undefined) return 2
  return result.changed.length + result.missing.length + result.added.length > 0 ? 1 : 0
}

/** A name from a stranger's zip file may hold what moves the cursor of a terminal. */
function shown(name: string): string {
  return name.replace(/[\p{Cc}\p{Cf}]/gu, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`)
}

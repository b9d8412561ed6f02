import { createHash } from 'node:crypto'
import { bundleEngine, bundlePageScript } from './bundle.ts'
import { lowerEngine } from './lower.ts'

/** What Pagefind says of its own files. */
interface PagefindEntry {
  languages: Record<string, { wasm?: string | null }>
}

/** The notice that Pagefind's licence asks for in every copy. */
const notice = '/*! Contains Pagefind 1.6.0 (https://pagefind.app), copyright Pagefind, MIT licence. */\n'

/**
 * Turns files of an index into classic scripts, since from disk a page may load nothing else: `core.js` with
 * the engine and our runtime, and a script `<name>.js` for each data file, which is loaded when it is needed.
 * @param pagefind all files that Pagefind makes, by path
 * @param data our own files by name; each becomes an argument of a script too
 */
export async function packSearch(pagefind: ReadonlyMap<string, Uint8Array>, data: ReadonlyMap<string, unknown>): Promise<Map<string, string>> {
  const read = (path: string): Uint8Array => {
    const bytes = pagefind.get(path)
    if (!bytes) throw new Error(`Pagefind has not made \`${path}\``)
    return bytes
  }
  const text = (path: string) => new TextDecoder().decode(read(path))
  const entry: PagefindEntry = JSON.parse(text('pagefind-entry.json'))
  const engines = new Map(Object.values(entry.languages).map(({ wasm }) => [`wasm.${wasm ?? 'unknown'}.pagefind`, wasm ?? 'unknown']))

  const scripts = new Map<string, string>()
  let pairs: string[] = []
  for (const path of [...engines.keys()].sort()) {
    const lowered = lowerEngine(read(path))
    pairs = lowered.pairs
    scripts.set(`${path}.js`, dataScript(path, base64(lowered.packed)))
  }
  for (const [path, bytes] of pagefind)
    if (/\.pf_(meta|index|fragment|filter)$/.test(path)) scripts.set(`${path}.js`, dataScript(path, base64(bytes)))
  for (const [name, value] of data) scripts.set(`${name}.js`, dataScript(name, value))

  const engine = await bundleEngine(text('pagefind.js'), pairs)
  const page = await bundlePageScript()
  // Names of terms and engines stay the same over builds; the version keeps a browser from taking an old one from its cache.
  const version = hash([...scripts].sort(([a], [b]) => (a < b ? -1 : 1)).flat())
  const head = `${notice}window.__fettleEngine=function(){${engine}};\nwindow.__fettleVersion=${JSON.stringify(version)};\n`
  scripts.set('core.js', `${head}${page}${dataScript('pagefind-entry.json', base64(read('pagefind-entry.json')))}`)
  return scripts
}

function dataScript(name: string, value: unknown): string {
  return `__fettleData(${JSON.stringify(name)},${JSON.stringify(value)});\n`
}

function base64(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('base64')
}

function hash(texts: readonly string[]): string {
  const sum = createHash('sha256')
  for (const text of texts) sum.update(text)
  return sum.digest('hex').slice(0, 10)
}

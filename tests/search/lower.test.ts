import { gunzipSync } from 'node:zlib'
import { close, createIndex } from 'pagefind'
import { beforeAll, expect, test } from 'vitest'
import { lowerEngine, lowerModule, patchEngineScript } from '../../src/search/lower.ts'
import { readByte, readBytes, readEach, readNumber, readSections, sectionId, valueType } from '../../src/search/wasm.ts'

// What lowering relies on in the pinned Pagefind. When a test here fails after an upgrade, look at the new engine
// before anything else, and try the lowered one in an old Chromium.

let engines: Map<string, Uint8Array>
let script: string
let version: string

beforeAll(async () => {
  const { index } = await createIndex()
  if (!index) throw new Error('Pagefind does not start')
  for (const language of ['en', 'es'])
    await index.addHTMLFile({ url: `/${language}.html`, content: `<html lang="${language}"><body><h1>Washer</h1>Lift` })
  const { files } = await index.getFiles()
  await close()
  engines = new Map(files.flatMap(({ path, content }) => (/^wasm\./.test(path) ? [[path, content]] : [])))
  const text = (name: string) => new TextDecoder().decode(files.find(({ path }) => path === name)?.content)
  script = text('pagefind.js')
  version = JSON.parse(text('pagefind-entry.json')).version
})

const bare = (packed: Uint8Array) => new Uint8Array(packed.subarray('pagefind_dcd'.length))

function section(module: Uint8Array, id: number) {
  const bytes = readSections(module).find((it) => it.id === id)?.bytes
  if (!bytes) throw new Error(`no section ${id}`)
  return { bytes, at: 0 }
}

/** What keeps a module from running before Chromium 96: functions with several results, and tables. */
function shape(module: Uint8Array) {
  const types = section(module, sectionId.type)
  const results = readEach(types, () => {
    readByte(types)
    readBytes(types, readNumber(types))
    return readBytes(types, readNumber(types)).length
  })
  const tables = section(module, sectionId.table)
  return { mostResults: Math.max(...results), tables: readNumber(tables), secondIsReference: tables.bytes.includes(valueType.externref) }
}

test('the pinned Pagefind is the one that was measured in old browsers', () => {
  expect(version).toBe('1.6.0')
  expect([...engines.keys()]).toEqual(expect.arrayContaining(['wasm.en.pagefind', 'wasm.es.pagefind']))
})

test('an engine needs newer browsers before lowering and runs in old ones after it', () => {
  for (const packed of engines.values()) {
    expect(shape(bare(gunzipSync(packed)))).toEqual({ mostResults: 2, tables: 2, secondIsReference: true })
    const lowered = lowerEngine(packed)
    expect(shape(bare(lowered.packed))).toEqual({ mostResults: 1, tables: 1, secondIsReference: false })
    expect(lowered.pairs.sort()).toEqual(['filters', 'request_all_filter_indexes', 'request_filter_indexes', 'request_indexes', 'search'])
    expect(lowered.packed.length).toBeLessThan(gunzipSync(packed).length * 1.05)
  }
})

test('the script is patched where it takes what lowering changed, and refused when it has changed itself', () => {
  const patched = patchEngineScript(script, ['search'])
  expect(patched).toContain('["search"]')
  expect(patched).not.toContain('wasm=instance.exports;')
  expect(() => patchEngineScript(patched, ['search'])).toThrow('pagefind.js no longer has')
})

test('what is no engine of Pagefind is refused', () => {
  expect(() => lowerModule(new Uint8Array([1, 2, 3]))).toThrow('no WebAssembly module')
  expect(() => lowerModule(new Uint8Array([0, 0x61, 0x73, 0x6d, 1, 0, 0, 0]))).toThrow('no section 1')
})

import { gunzipSync } from 'node:zlib'
import {
  externKind,
  functionType,
  name,
  number,
  opcode,
  readByte,
  readBytes,
  readEach,
  readName,
  readNumber,
  readSections,
  type Section,
  sectionId,
  valueType,
  vector,
  writeSections,
} from './wasm.ts'

/** How Pagefind begins everything that it packs. */
const mark = 'pagefind_dcd'
/** The global in which a function of two results leaves its second. */
const secondResult = '__second_result'

export interface Lowered {
  /** The engine as Pagefind takes it, but not compressed: a panel would take longer to unpack it than to read it. */
  packed: Uint8Array
  /** Exported functions that had two results. `patchEngineScript` gives them the second one back. */
  pairs: string[]
}

/**
 * Makes Pagefind's engine run on the browsers of old panels: Chromium 75 in place of 96. As shipped it needs
 * reference types, for a table that no instruction uses, and functions with two results. Whatever we rely on
 * is checked, so that an upgrade of Pagefind stops here and not on a panel.
 */
export function lowerEngine(packed: Uint8Array): Lowered {
  const raw = gunzipSync(packed)
  if (raw.subarray(0, mark.length).toString() !== mark) throw new Error('the engine of Pagefind is packed in another way than before')
  const { module, pairs } = lowerModule(raw.subarray(mark.length))
  if (!WebAssembly.validate(module)) throw new Error('the engine of Pagefind is not valid after lowering')
  return { packed: Buffer.concat([Buffer.from(mark), module]), pairs }
}

/** Changes the two places of pagefind.js that must know of the lowered engine. */
export function patchEngineScript(script: string, pairs: readonly string[]): string {
  const noTable = 'const table=wasm.__wbindgen_externrefs||{grow(){return 0},set(){}};'
  // The exports of a module cannot be changed, so a copy takes their place.
  const wrapped = `wasm=(exports=>{const all=Object.assign({},exports);for(const name of ${JSON.stringify(pairs)})all[name]=function(){const first=exports[name].apply(null,arguments);return[first,exports.${secondResult}.value]};return all})(instance.exports);`
  return replaceOnce(replaceOnce(script, 'const table=wasm.__wbindgen_externrefs;', noTable), 'wasm=instance.exports;', wrapped)
}

function replaceOnce(script: string, old: string, changed: string): string {
  const [before, after, ...more] = script.split(old)
  if (before === undefined || after === undefined || more.length > 0) throw new Error(`pagefind.js no longer has \`${old}\` exactly once`)
  return before + changed + after
}

export function lowerModule(module: Uint8Array): { module: Uint8Array<ArrayBuffer>; pairs: string[] } {
  const sections = readSections(module)
  const types = lowerTypes(bytesOf(sections, sectionId.type))
  const imports = countImports(bytesOf(sections, sectionId.import))
  const typeOfFunction = readNumbers(bytesOf(sections, sectionId.function))
  const isPair = (own: number) => types.pairs.has(typeOfFunction[own] ?? -1)
  const globals = addGlobal(bytesOf(sections, sectionId.global))
  const exports = lowerExports(bytesOf(sections, sectionId.export), globals.added, (index) => isPair(index - imports))
  const code = storeSecondResults(bytesOf(sections, sectionId.code), globals.added, isPair)
  if (code.changed !== exports.pairs.length) throw new Error('a function with two results is called from inside the engine')

  const lowered = new Map<number, Uint8Array>([
    [sectionId.type, types.bytes],
    [sectionId.table, keepFunctionTable(bytesOf(sections, sectionId.table))],
    [sectionId.global, globals.bytes],
    [sectionId.export, exports.bytes],
    [sectionId.code, code.bytes],
  ])
  const kept = sections.filter(({ id }) => id !== sectionId.custom).map(({ id, bytes }) => ({ id, bytes: lowered.get(id) ?? bytes }))
  return { module: writeSections(kept), pairs: exports.pairs }
}

function bytesOf(sections: readonly Section[], id: number): Uint8Array {
  const section = sections.find((it) => it.id === id)
  if (!section) throw new Error(`the engine of Pagefind has no section ${id}`)
  return section.bytes
}

/** Takes the second result from every type that has two. */
function lowerTypes(bytes: Uint8Array): { bytes: Uint8Array; pairs: Set<number> } {
  const reader = { bytes, at: 0 }
  const pairs = new Set<number>()
  const types = readEach(reader, (index) => {
    if (readByte(reader) !== functionType) throw new Error('the engine of Pagefind has types that are no functions')
    const parameters = readBytes(reader, readNumber(reader))
    const results = readBytes(reader, readNumber(reader))
    if (results.length > 2 || (results.length === 2 && results.some((type) => type !== valueType.i32)))
      throw new Error('the engine of Pagefind has functions with other results than before')
    if (results.length === 2) pairs.add(index)
    const kept = results.subarray(0, 1)
    return [functionType, ...number(parameters.length), ...parameters, ...number(kept.length), ...kept]
  })
  return { bytes: vector(types), pairs }
}

function countImports(bytes: Uint8Array): number {
  const reader = { bytes, at: 0 }
  return readEach(reader, () => {
    readName(reader)
    readName(reader)
    if (readByte(reader) !== externKind.function) throw new Error('the engine of Pagefind imports more than functions')
    readNumber(reader)
  }).length
}

function readNumbers(bytes: Uint8Array): number[] {
  const reader = { bytes, at: 0 }
  return readEach(reader, () => readNumber(reader))
}

/** Leaves out the table of references. */
function keepFunctionTable(bytes: Uint8Array): Uint8Array {
  const reader = { bytes, at: 0 }
  const tables = readEach(reader, () => {
    const start = reader.at
    const type = readByte(reader)
    const hasMost = (readByte(reader) & 1) === 1
    readNumber(reader)
    if (hasMost) readNumber(reader)
    return { type, bytes: bytes.subarray(start, reader.at) }
  })
  const [functions, references, ...others] = tables
  if (!functions || references?.type !== valueType.externref || others.length > 0)
    throw new Error('the engine of Pagefind has other tables than before')
  return vector([functions.bytes])
}

/** Adds a global that can be set, a 32-bit integer, 0 at first. */
function addGlobal(bytes: Uint8Array): { bytes: Uint8Array; added: number } {
  const reader = { bytes, at: 0 }
  const count = readNumber(reader)
  const isMutable = 1
  const global = [valueType.i32, isMutable, opcode.i32Const, 0, opcode.end]
  return { bytes: Uint8Array.from([...number(count + 1), ...bytes.subarray(reader.at), ...global]), added: count }
}

function lowerExports(bytes: Uint8Array, global: number, isPair: (index: number) => boolean): { bytes: Uint8Array; pairs: string[] } {
  const reader = { bytes, at: 0 }
  const all = readEach(reader, () => ({ name: readName(reader), kind: readByte(reader), index: readNumber(reader) }))
  const kept = all.filter(({ kind }) => kind !== externKind.table)
  kept.push({ name: secondResult, kind: externKind.global, index: global })
  return {
    bytes: vector(kept.map((it) => [...name(it.name), it.kind, ...number(it.index)])),
    pairs: all.filter(({ kind, index }) => kind === externKind.function && isPair(index)).map((it) => it.name),
  }
}

/** Lets each function of two results put the second, which lies on top, into the global before its end. */
function storeSecondResults(bytes: Uint8Array, global: number, isPair: (own: number) => boolean): { bytes: Uint8Array; changed: number } {
  const reader = { bytes, at: 0 }
  let changed = 0
  const bodies = readEach(reader, (own) => {
    const body = readBytes(reader, readNumber(reader))
    if (!isPair(own)) return Buffer.concat([Uint8Array.from(number(body.length)), body])
    changed++
    const code = [...body.subarray(0, -1), opcode.globalSet, ...number(global), opcode.end]
    return Uint8Array.from([...number(code.length), ...code])
  })
  return { bytes: vector(bodies), changed }
}

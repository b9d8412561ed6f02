import { runInNewContext } from 'node:vm'
import { build } from 'esbuild'
import { expect, test } from 'vitest'
import { scripts, target } from '../../src/site/assets.ts'

/**
 * Names of the language and of pages that came after Chromium 80, which esbuild does not lower, with the version that brought
 * them. From memory of the release notes.
 */
const younger: Readonly<Record<string, number>> = {
  'replaceAll(': 85,
  'replaceChildren(': 86,
  'Promise.any(': 85,
  'new WeakRef': 84,
  'randomUUID(': 92,
  '.at(-': 92,
  'Object.hasOwn(': 93,
  'structuredClone(': 98,
  'findLast(': 97,
  'findLastIndex(': 97,
  'toSorted(': 110,
  'toReversed(': 110,
  'groupBy(': 117,
  'Promise.withResolvers(': 119,
}

/** What `scripts/younger-names.ts` fills in where a script begins with it. */
const filledIn = ['replaceChildren(', 'Object.hasOwn(']

test.each(Object.entries(scripts))('%s asks for nothing that the browser of an old panel lacks', async (_, entry) => {
  const { outputFiles } = await build({ entryPoints: [`src/site/${entry}`], bundle: true, minify: true, target, format: 'iife', write: false })
  const text = outputFiles[0]?.text ?? ''
  expect(text.length).toBeGreaterThan(100)
  const isFilledIn = text.includes('"replaceChildren",function') && text.includes('Object,"hasOwn"')
  expect(Object.keys(younger).filter((name) => text.includes(name) && !(isFilledIn && filledIn.includes(name)))).toEqual([])
})

// Case C28 of the journal, in an engine without what came after Chromium 80.
test('records are chained on an old panel', async () => {
  const contents = `import '../younger-names.ts'\nexport { entryAfter } from '../../../training/journal.ts'\nexport { readJournal } from '../../../training/journal-file.ts'`
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: 'src/site/scripts/training', loader: 'ts' },
    bundle: true,
    write: false,
    format: 'iife',
    globalName: 'records',
    target,
  })
  const hash = runInNewContext(
    `delete Object.hasOwn; delete Object.groupBy; delete Array.prototype.at; delete Array.prototype.findLast; delete Array.prototype.toSorted
     delete String.prototype.replaceAll; delete Uint8Array.prototype.toHex; delete Uint8Array.fromHex; delete globalThis.structuredClone
     ${outputFiles[0]?.text}
     records.entryAfter(undefined, { person: 'P-0042', lesson: 'LSN-014', revision: 'C', event: 'completed', date: '2026-11-25' }).hash`,
    { TextEncoder },
  )
  expect(hash).toBe('5e414e2cbed5dbedfbb8e4a2241078a985e9f1b23f56a7464fa208bebd5ceb25')
})

test('a younger name would be found', async () => {
  const { outputFiles } = await build({
    stdin: { contents: 'alert([1].at(-1), Object.hasOwn({}, "a"))' },
    bundle: true,
    minify: true,
    target,
    write: false,
  })
  expect(Object.keys(younger).filter((name) => outputFiles[0]?.text.includes(name))).toEqual(['.at(-', 'Object.hasOwn('])
})

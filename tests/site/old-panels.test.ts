import { runInNewContext } from 'node:vm'
import { build } from 'esbuild'
import { expect, test } from 'vitest'
import { scripts, styleSheet } from '../../src/site/assets.ts'
import { target } from '../../src/site/bundling.ts'
import { styles } from '../../src/site/own-styles.ts'
import { missingStyles } from './younger-styles.ts'

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
  'Promise.try(': 128,
  'Intl.Segmenter': 87,
  'Intl.DisplayNames': 81,
  'new AggregateError': 85,
  'AbortSignal.timeout(': 103,
  'URL.canParse(': 120,
  'checkVisibility(': 105,
  'showPopover(': 114,
  scrollend: 114,
  'isWellFormed(': 111,
  'toSpliced(': 110,
  'Array.fromAsync(': 121,
  'Iterator.from(': 122,
  '.inert=': 102,
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

test.each(Object.entries(scripts))('%s goes through no entries, keys or values by what iterators have from 122 on', async (_, entry) => {
  const { outputFiles } = await build({ entryPoints: [`src/site/${entry}`], bundle: true, minify: true, target, format: 'iife', write: false })
  expect(outputFiles[0]?.text.match(throughIterators) ?? []).toEqual([])
})

const throughIterators = /\.(values|keys|entries)\(\)\.(map|filter|some|every|find|flatMap|reduce|forEach|take|drop|toArray)\(/g

test.each(styles)('%s asks for nothing that an old panel has nothing else for', async (name) => {
  const css = await styleSheet(name)
  expect(css.length).toBeGreaterThan(300)
  expect(missingStyles(css)).toEqual([])
})

test.each([
  ['.a{inset:0}', [';inset:']],
  ['.a:has(.b){color:red}', [':has(']],
  ['.a:not(.b,.c){color:red}', [':not(.b,']],
  ['.a:not(.b){color:red}', []],
  ['.a{height:100dvh}', ['0dvh']],
  ['.a::before{content:"a & b"}', []],
  ['.a:focus-visible{color:red}', []],
  ['@media(width>=1px){.a{color:red}}', ['@media(width>']],
])('%s asks an old panel for %j', (css, missing) => expect(missingStyles(css).map((it) => it.replace('{', ';'))).toEqual(missing))

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

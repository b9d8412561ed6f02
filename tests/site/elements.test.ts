import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { elements } from '../../src/model/elements.ts'
import { jsonSchemas } from '../../src/model/json-schemas.ts'

test('every element that a page may use has a component, and every component an element', () => {
  const files = readdirSync('src/site/elements')
    .filter((name) => name.endsWith('.astro'))
    .map((name) => name.replace('.astro', ''))
  // Markdown's own link, picture and table; `<Fitted>` is opened or taken out before a page is shown.
  const ofMarkdown = ['Image', 'Link', 'MarkdownTable']
  expect([...files, 'Fitted'].sort()).toEqual([...Object.keys(elements), ...ofMarkdown].sort())
})

test('every component is in the registry', () => {
  const registry = readFileSync('src/site/elements/registry.ts', 'utf8')
  for (const name of readdirSync('src/site/elements')) if (name.endsWith('.astro')) expect(registry).toContain(`from './${name}'`)
})

test("the example's JSON Schemas are those of the code; `npx fettle schema example-machine` writes them", () => {
  const written = readdirSync('example-machine/schema')
    .sort()
    .map((name) => [name, readFileSync(`example-machine/schema/${name}`, 'utf8')])
  expect(written).toEqual(jsonSchemas())
})

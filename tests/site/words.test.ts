import { readdirSync } from 'node:fs'
import { expect, test } from 'vitest'

/** Every table of labels in a language, with the file that it stands in. */
async function tablesOf(ending: RegExp): Promise<[string, object][]> {
  const files = readdirSync('src/site/words', { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'))
  const modules = await Promise.all(files.map(async (file) => [file, await import(`../../src/site/words/${file}`)] as const))
  return modules.flatMap(([file, exported]: readonly [string, Record<string, unknown>]) =>
    Object.entries(exported).flatMap(([name, table]): [string, object][] =>
      ending.test(name) && typeof table === 'object' && table !== null ? [[`${file} ${name}`, table]] : [],
    ),
  )
}

test.each([
  ['en', /En$|^en[A-Z]/],
  ['es', /Es$|^es[A-Z]/],
])('no two tables of labels in %s hold the same key: one would take the place of the other', async (language, ending) => {
  const tables = await tablesOf(ending)
  expect(tables.length).toBeGreaterThan(3)
  const owners = new Map<string, string[]>()
  for (const [name, table] of tables) for (const key of Object.keys(table)) owners.set(key, [...(owners.get(key) ?? []), name])
  expect([...owners].filter(([, names]) => names.length > 1)).toEqual([])
  // What is written in the language's own file after the tables would take their place as well.
  const { [language]: whole } = await import(`../../src/site/words/${language}.ts`)
  for (const [name, table] of tables) for (const [key, said] of Object.entries(table)) expect([name, key, whole[key]]).toEqual([name, key, said])
})

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** Classes that a page uses and only style sheets that it does not load speak of: `plan.css .plan-label on areas/lift.html`. */
export function classesWithoutStyles(siteDir: string): string[] {
  const classesOf = new Map(
    readdirSync(join(siteDir, 'assets'))
      .filter((name) => name.endsWith('.css') && !['print.css', 'older.css', 'display.css'].includes(name))
      .map((name) => [name, new Set(readFileSync(join(siteDir, 'assets', name), 'utf8').match(/(?<=\.)[a-zA-Z][\w-]*/g))]),
  )
  const pages = readdirSync(siteDir, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.html'))
  return pages.flatMap((path) => {
    const html = readFileSync(join(siteDir, path), 'utf8')
    const loaded = new Set(Array.from(html.matchAll(/assets\/([\w-]+\.css)/g), ([, name = '']) => name))
    const used = new Set(Array.from(html.matchAll(/class="([^"]*)"/g), ([, names = '']) => names.split(' ')).flat())
    const spokenOf = (name: string) => [...classesOf].filter(([, classes]) => classes.has(name)).map(([sheet]) => sheet)
    return [...used].flatMap((name) => {
      const sheets = spokenOf(name)
      return sheets.length > 0 && !sheets.some((sheet) => loaded.has(sheet)) ? [`${sheets.join(' ')} .${name} on ${path}`] : []
    })
  })
}

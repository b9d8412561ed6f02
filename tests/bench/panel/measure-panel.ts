import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { launchChromium } from '../../browser/chromium.ts'
import { runFettle } from '../../cli/run-fettle.ts'
import { inTemporaryFolder } from '../cost/in-temporary-folder.ts'
import { readFiles, textOf } from '../example.ts'
import { largePdf, largeSvg } from './large-sheets.ts'
import { measureSheet, type SheetCost } from './measure-sheet.ts'

/** How large sheets behave on a slow panel, from disk. Chromium slows the main thread alone: what other threads draw is as fast as the computer. */
export async function measurePanel(): Promise<string> {
  const files = new Map([...readFiles('tests/fixtures/sound-machine', 'content')].filter(([path]) => !path.startsWith('content/')))
  files.set('drawings/E-900.svg', largeSvg())
  files.set('drawings/E-901.pdf', await largePdf())
  files.set(
    'data/drawings.csv',
    `${textOf(files, 'data/drawings.csv').trimEnd()}\nE-900,Large sheet,schematic,1,A\nE-901,Large picture,schematic,1,A\n`,
  )
  const machine = new Map([...files].map(([path, content]) => [`machine/${path}`, content]))
  return inTemporaryFolder(machine, async (dir) => {
    mkdirSync(join(dir, 'shared'))
    const { code, stdout, stderr } = await runFettle([
      'build',
      join(dir, 'machine'),
      '--shared',
      join(dir, 'shared'),
      '--out',
      join(dir, 'site'),
      '--no-zip',
    ])
    if (code !== 0) throw new Error(`${stdout}${stderr}`)
    const browser = await launchChromium()
    try {
      const address = (drawing: string) => pathToFileURL(join(dir, 'site', 'drawings', `${drawing}.html`)).href
      return panelTable([
        ['SVG, 6,000 elements', await measureSheet(browser, address('E-900'))],
        ['picture of 2400 px', await measureSheet(browser, address('E-901'))],
      ])
    } finally {
      await browser.close()
    }
  })
}

export function panelTable(costs: readonly (readonly [string, SheetCost])[]): string {
  return [
    '| sheet on the whole screen, main thread 6× slower | Larger to the next picture | work for each move | pictures for each move | longest beat |',
    '| --- | --: | --: | --: | --: |',
    ...costs.map(
      ([name, { zoomStepMs, workPerMoveMs, picturesPerMove, longestBeatMs }]) =>
        `| ${name} | ${zoomStepMs.toFixed(0)} ms | ${workPerMoveMs.toFixed(1)} ms | ${picturesPerMove.toFixed(2)} | ${longestBeatMs.toFixed(0)} ms |`,
    ),
    '',
  ].join('\n')
}

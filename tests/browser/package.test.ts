import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { unzipSync } from 'fflate'
import type { Browser, FrameLocator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { runFettle } from '../cli/run-fettle.ts'
import { startCmi5Office } from '../site/report-to/cmi5-office.ts'
import { writeTrainedMachine } from '../trained-machine.ts'
import { violations } from './axe.ts'
import { launchChromium, openPage } from './chromium.ts'
import { type Served, serveFolder } from './serve.ts'

const office = { width: 1280, height: 800, touch: true }

let browser: Browser
let served: Served
const dir = mkdtempSync(join(tmpdir(), 'fettle-office-'))
const machine = writeTrainedMachine()

/** A system in the office: a mock runtime with the lesson in a frame. */
const runtimePage = (script: string, start: string) =>
  `<!doctype html><meta charset="utf-8"><link rel="icon" href="data:,"><title>Office</title><script src="${script}"></script><script>${start}</script>
   <iframe name="content" src="about:blank" style="width:100%;height:95vh;border:0"></iframe>
   <script>content.location.replace(new URLSearchParams(location.search).get('open'))</script>`

beforeAll(async () => {
  browser = await launchChromium()
  for (const format of ['cmi5', 'scorm-1.2', 'scorm-2004']) {
    const ran = await runFettle([
      'package',
      machine.folder,
      '--shared',
      machine.shared,
      '--sequence',
      'first-day',
      '--format',
      format,
      '--out',
      machine.dir,
    ])
    expect(ran).toMatchObject({ code: 0 })
    for (const [path, bytes] of Object.entries(unzipSync(readFileSync(join(machine.dir, `first-day.${format}.en.zip`))))) {
      mkdirSync(dirname(join(dir, format, path)), { recursive: true })
      writeFileSync(join(dir, format, path), bytes)
    }
  }
  for (const name of ['scorm12.min.js', 'scorm2004.min.js']) copyFileSync(`node_modules/scorm-again/dist/${name}`, join(dir, name))
  const settings = '{ autocommit: false, logLevel: 5 }'
  writeFileSync(join(dir, 'office-1.2.html'), runtimePage('scorm12.min.js', `window.API = new Scorm12API(${settings})`))
  writeFileSync(join(dir, 'office-2004.html'), runtimePage('scorm2004.min.js', `window.API_1484_11 = new Scorm2004API(${settings})`))
  served = await serveFolder(dir)
}, 120_000)
afterAll(async () => {
  await browser?.close()
  await served?.close()
  machine.remove()
  rmSync(dir, { recursive: true, force: true })
})

/** A system answers so for a learner of whom it keeps nothing yet, and one that is out of order. */
const nothingKept = /(404|503).*\/xapi\/(agents\/profile|activities\/state)\?/

async function at(address: string, act: (page: Page) => Promise<void>, options: Parameters<typeof openPage>[1] = office): Promise<void> {
  const opened = await openPage(browser, options)
  try {
    await opened.page.goto(`${served.url}${address}`)
    await act(opened.page)
    expect(opened.faults().filter((fault) => !nothingKept.test(fault))).toEqual([])
  } finally {
    await opened.close()
  }
}

/** FETTLE_PICTURES=<folder> takes pictures to look at. */
async function picture(page: Page, name: string): Promise<void> {
  const folder = process.env.FETTLE_PICTURES
  if (folder === undefined) return
  for (const scheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: scheme })
    await page.screenshot({ path: join(folder, `${name}-${scheme}.png`) })
  }
}

/** Answers the questions of the lesson one after the other, each with the answer that holds the words. */
async function answer(lesson: FrameLocator, ...answers: string[]): Promise<void> {
  const again = lesson.getByRole('button', { name: 'Repeat the questions' })
  if (await again.isVisible()) await again.tap()
  for (const [index, words] of answers.entries()) {
    await lesson.locator('.quiz-choice').filter({ hasText: words }).tap()
    await lesson.getByRole('button', { name: 'Answer', exact: true }).tap()
    await lesson.getByRole('button', { name: index + 1 < answers.length ? 'Next question' : 'See the result' }).tap()
  }
}

describe('a lesson of a SCORM 1.2 package under a mock runtime', () => {
  const value = (page: Page, name: string) => page.evaluate((it) => Reflect.get(window, 'API').LMSGetValue(it), name)

  test('questions answered: status and score reach the runtime, and the bar says so', async () => {
    await at('office-1.2.html?open=scorm-1.2/launch/stop-and-lock.html', async (page) => {
      const launch = page.frameLocator('[name=content]')
      const lesson = launch.frameLocator('[name=lesson]')
      const status = launch.getByRole('status')
      await status.getByText('The training system records this lesson.').waitFor()
      expect(await value(page, 'cmi.core.lesson_status')).toBe('incomplete')
      expect(await lesson.getByRole('heading', { level: 1 }).textContent()).toBe('Stop the press & lock it')
      expect(await lesson.locator('[data-lesson-record]').isVisible()).toBe(false)
      await picture(page, 'package')

      await answer(lesson, 'The shift leader', 'The proof')
      await status.getByText('Not passed: 1 of 2 right.').waitFor()
      expect([await value(page, 'cmi.core.lesson_status'), await value(page, 'cmi.core.score.raw')]).toEqual(['failed', '50'])

      await picture(page, 'package-failed')
      await answer(lesson, 'Who put it there', 'The proof')
      await status.getByText('Recorded: passed. 2 of 2 right.').waitFor()
      expect([await value(page, 'cmi.core.lesson_status'), await value(page, 'cmi.core.score.raw')]).toEqual(['passed', '100'])

      await launch.getByRole('button', { name: 'Close the lesson' }).tap()
      await status.getByText('The lesson is closed.').waitFor()
      const [ended, time] = await page.evaluate(() => {
        const api = Reflect.get(window, 'API')
        return [api.isTerminated(), api.cmi.getCurrentTotalTime()]
      })
      expect(ended).toBe(true)
      await page.reload()
      // The next learner at this computer finds no answers.
      await lesson.getByText('Question 1 of 2').waitFor()
      expect(await page.evaluate(() => [localStorage.length, sessionStorage.length])).toEqual([0, 0])
      expect(time).toMatch(/^\d+:\d\d:\d\d/)
    })
  })

  test('a page that is left for another goes on with the answers given', async () => {
    await at('office-1.2.html?open=scorm-1.2/launch/stop-and-lock.html', async (page) => {
      const launch = page.frameLocator('[name=content]')
      const lesson = launch.frameLocator('[name=lesson]')
      await lesson.locator('.quiz-choice').filter({ hasText: 'Who put it there' }).tap()
      await lesson.getByRole('button', { name: 'Answer', exact: true }).tap()
      await lesson.getByRole('link', { name: 'PS-101' }).tap()
      await lesson.locator('.kind-device').waitFor()
      await launch.getByRole('link', { name: 'Back to the lesson' }).tap()
      await lesson.getByText('Question 2 of 2').waitFor()
    })
  })

  test('a lesson that asks nothing is finished with a button; its links stay in the package and lead back', async () => {
    await at('office-1.2.html?open=scorm-1.2/launch/look-round.html', async (page) => {
      const launch = page.frameLocator('[name=content]')
      const lesson = launch.frameLocator('[name=lesson]')
      await lesson.getByRole('link', { name: 'PS-101' }).tap()
      await lesson.locator('.kind-device').waitFor()
      await launch.getByRole('link', { name: 'Back to the lesson' }).tap()
      await lesson.getByRole('heading', { name: 'Look round' }).waitFor()
      await launch.getByRole('button', { name: 'I have finished this lesson' }).tap()
      await launch.getByRole('status').getByText('Recorded: done.').waitFor()
      expect(await value(page, 'cmi.core.lesson_status')).toBe('completed')
    })
  })

  test.each([
    ['light', 1280, 800],
    ['dark', 800, 480],
  ] as const)('axe finds nothing in the bar, nothing is too wide and buttons fit a finger: %s, %d x %d', async (colorScheme, width, height) => {
    await at(
      'office-1.2.html?open=scorm-1.2/launch/look-round.html',
      async (page) => {
        const frame = page.frames().find((it) => it.name() === 'content')
        if (!frame) throw new Error('no frame')
        await frame.getByRole('button', { name: 'I have finished this lesson' }).waitFor()
        await picture(page, `package-${width}`)
        expect(await violations(frame, { withoutFrames: true })).toEqual([])
        expect(await frame.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0)
        const heights = await frame.locator('.launch-acts > :visible').evaluateAll((all) => all.map((it) => it.getBoundingClientRect().height))
        expect(heights).toHaveLength(3)
        for (const own of heights) expect(own).toBeGreaterThanOrEqual(50)
      },
      { width, height, touch: true, context: { colorScheme } },
    )
  })

  test('without a system the bar says that nothing is recorded', async () => {
    await at('scorm-1.2/launch/stop-and-lock.html', async (page) => {
      await page.getByRole('status').getByText('What you do in this lesson is not recorded.').waitFor()
      expect(await page.getByRole('button').count()).toBe(0)
    })
  })
})

test('SCORM 2004: a scaled score and both statuses reach the runtime', async () => {
  await at('office-2004.html?open=scorm-2004/launch/stop-and-lock.html', async (page) => {
    const launch = page.frameLocator('[name=content]')
    await launch.getByRole('status').getByText('The training system records this lesson.').waitFor()
    await answer(launch.frameLocator('[name=lesson]'), 'Who put it there', 'The proof')
    await launch.getByRole('status').getByText('Recorded: passed. 2 of 2 right.').waitFor()
    const values = await page.evaluate(() =>
      ['completion_status', 'success_status', 'score.scaled'].map((name) => Reflect.get(window, 'API_1484_11').GetValue(`cmi.${name}`)),
    )
    expect(values).toEqual(['completed', 'passed', '1'])
  })
})

describe('cmi5', () => {
  test('a launched lesson says initialized, completed, passed, and terminated when its window goes', async () => {
    const system = await startCmi5Office({ masteryScore: 0.8 })
    try {
      await at(`cmi5/launch/stop-and-lock.html${system.launch('s1')}`, async (page) => {
        const status = page.getByRole('status')
        await status.getByText('The training system records this lesson.').waitFor()
        await answer(page.frameLocator('[name=lesson]'), 'Who put it there', 'The proof')
        await status.getByText('Recorded: passed. 2 of 2 right.').waitFor()
        await page.goto('about:blank')
        await expect.poll(() => system.verbs()).toEqual(['launched', 'initialized', 'completed', 'passed', 'terminated'])
      })
    } finally {
      await system.close()
    }
  })

  test('a system that fails at first is asked again, and a learner who comes back is where the lesson was left', async () => {
    const system = await startCmi5Office()
    try {
      system.setAnswer(503)
      await at(`cmi5/launch/look-round.html${system.launch('s1')}`, async (page) => {
        await page.getByRole('status').getByText('Not recorded: LMS.LaunchData: 503').waitFor()
        system.setAnswer(undefined)
        await page.getByRole('button', { name: 'Tell it again' }).tap()
        await page.getByRole('status').getByText('The training system records this lesson.').waitFor()
        await page.frameLocator('[name=lesson]').getByRole('link', { name: 'PS-101' }).tap()
        await page.frameLocator('[name=lesson]').locator('.kind-device').waitFor()
        await page.getByRole('button', { name: 'Close the lesson' }).tap()
        await page.getByRole('status').getByText('The lesson is closed.').waitFor()
      })
      await at(`cmi5/launch/look-round.html${system.launch('s2')}`, async (page) => {
        await page.frameLocator('[name=lesson]').locator('.kind-device').waitFor()
        await page.getByRole('button', { name: 'Close the lesson' }).tap()
        await page.getByRole('status').getByText('The lesson is closed.').waitFor()
      })
      expect(system.verbs()).toEqual(['launched', 'initialized', 'terminated', 'launched', 'initialized', 'terminated'])
    } finally {
      await system.close()
    }
  })

  test('opened without a launch it asks nobody for anything', async () => {
    await at('cmi5/launch/stop-and-lock.html', async (page) => {
      await page.getByRole('status').getByText('What you do in this lesson is not recorded.').waitFor()
    })
  })

  test('the learner goes where the system wants', async () => {
    const system = await startCmi5Office({ returnURL: `${served.url}office-1.2.html?open=about:blank` })
    try {
      await at(`cmi5/launch/look-round.html${system.launch('s1')}`, async (page) => {
        await page.getByRole('button', { name: 'I have finished this lesson' }).tap()
        await page.getByRole('status').getByText('Recorded: done.').waitFor()
        await page.getByRole('button', { name: 'Close the lesson' }).tap()
        await page.waitForURL(/office-1\.2/)
        expect(system.verbs()).toEqual(['launched', 'initialized', 'completed', 'terminated'])
      })
    } finally {
      await system.close()
    }
  })
})

import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import type { TrainingRecord } from '../../src/training/record.ts'
import { violations } from './axe.ts'
import { builtSite } from './built-site.ts'
import { openPage } from './chromium.ts'
import { pdfText } from './pdf-text.ts'
import { buildPlanning, journalOf, taken } from './planning-machine.ts'
import { usePage } from './use-page.ts'

const panel = { width: 1024, height: 768, touch: true }

/** Where pictures are put to be looked at; without it none are taken. */
const pictures = process.env.FETTLE_PICTURES

const site = builtSite(() => buildPlanning())

async function onPlanning(act: (page: Page) => Promise<void>, options: Parameters<typeof openPage>[1] = panel, path = 'planning.html') {
  await usePage(site.browser, options, async (page) => {
    await page.clock.setFixedTime(new Date('2026-11-26T10:00:00'))
    await page.addInitScript(() => {
      window.print = () => {}
    })
    await page.goto(site.fromDisk(path))
    await act(page)
  })
}

/** Sessions as they are shown: their headings and the titles of their lessons. */
const sessions = (page: Page) =>
  page
    .locator('.plan-session')
    .evaluateAll((all) =>
      all.map((session) =>
        [session.querySelector('h3')?.textContent, ...[...session.querySelectorAll('.row-main > span')].map((title) => title.textContent)].join(
          ' | ',
        ),
      ),
    )
const plan = (page: Page) => page.locator('[data-plan-result]')

async function takeOver(page: Page, ...records: readonly TrainingRecord[]): Promise<string> {
  const { text, last } = journalOf(...records)
  await page
    .locator('[data-records-import]')
    .setInputFiles({ name: 'records.jsonl', mimeType: 'application/octet-stream', buffer: Buffer.from(text) })
  await page.locator('[data-plan-who]').waitFor()
  return last
}

const ana = [...taken('P-0042', 'Ana Gómez', 'look-round', '2026-11-02'), ...taken('P-0042', 'Ana Gómez', 'stop-and-lock', '2026-11-02', 'P-0007')]
const ben = taken('P-0043', 'Ben Okafor', 'stop-and-lock', '2026-11-03')

async function printed(page: Page, button: string): Promise<string> {
  await page.getByRole('button', { name: button, exact: true }).tap()
  const text = await pdfText(await page.pdf({ preferCSSPageSize: true }))
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')))
  return text
}

describe('by touch, opened from disk', () => {
  test('a role, what is done, the length of a session and the days make a plan', async () => {
    await onPlanning(async (page) => {
      await expect
        .poll(() => sessions(page))
        .toEqual([
          'Session 1 · 30 min | Look round | Stop the press & lock it',
          'Session 2 · 40 min | Start the press | Run the press',
          'Session 3 · 20 min | Check a pressure switch',
        ])
      await expect
        .poll(() => plan(page).textContent())
        .toContain('5 lessons in 3 sessions of at most 40 minutes. 90 minutes in all. No plan has fewer sessions.')
      await expect.poll(() => plan(page).textContent()).toContain('after “Stop the press & lock it”, signed off · part of “First day”')

      await page.locator('.plan-tick', { hasText: 'Look round' }).tap()
      await expect.poll(() => page.locator('[data-plan-open]').textContent()).toBe('4 of 5 lessons are open.')
      for (let press = 0; press < 4; press++) await page.getByRole('button', { name: '5 minutes more' }).tap()
      await expect
        .poll(() => sessions(page))
        .toEqual(['Session 1 · 20 min | Stop the press & lock it', 'Session 2 · 60 min | Start the press | Run the press | Check a pressure switch'])

      await page.locator('[data-plan-first]').fill('2026-11-27')
      await expect
        .poll(async () => (await sessions(page)).map((session) => session.split(' | ')[0]))
        .toEqual(['Session 1 · 20 min · Fri, Nov 27, 2026', 'Session 2 · 60 min · Mon, Nov 30, 2026'])
      await page.locator('.plan-choice', { hasText: 'Sat' }).tap()
      await expect.poll(async () => (await sessions(page))[1]).toContain('Sat, Nov 28, 2026')

      await page.locator('.plan-choice', { hasText: 'Maintenance technician' }).tap()
      await expect.poll(() => plan(page).textContent()).toContain('Training plan: Maintenance technician')
      await expect.poll(() => plan(page).textContent()).toContain('3 lessons')
      await page.locator('[data-plan-minutes]').fill('30')
      await expect.poll(() => plan(page).textContent()).toBe('“Lock the press out alone” takes 40 minutes. A session has 30.')
      await page.locator('[data-plan-minutes]').fill('')
      await expect.poll(() => plan(page).textContent()).toBe('Enter the minutes of a session, from 1 to 999.')
    })
  })

  test('records say what is done; the sign-off sheet carries names, revisions, lines and the last hash', async () => {
    await onPlanning(async (page) => {
      const blank = await printed(page, 'Print a sign-off sheet')
      expect(blank).toContain('There are no records on this device yet.')
      const last = await takeOver(page, ...ana, ...ben)
      await page.locator('[data-plan-person]').selectOption('P-0042')
      await expect.poll(() => page.locator('.plan-tick', { hasText: 'lock it' }).textContent()).toContain('holds until Nov 2, 2029')
      await expect
        .poll(() => sessions(page))
        .toEqual(['Session 1 · 40 min | Start the press | Run the press', 'Session 2 · 20 min | Check a pressure switch'])
      const sheet = await printed(page, 'Print a sign-off sheet')
      for (const said of ['Sign-off sheet: Operator', 'Ana Gómez', 'P-0042', 'run-it, Rev. A', 'Signature of the learner', last])
        expect(sheet).toContain(said)
      expect(sheet).not.toMatch(/Certificate|Whose records|Skills/)
      const paper = await printed(page, 'Print the plan')
      expect(paper).toContain('Training plan: Operator · Ana Gómez (P-0042)')
      expect(paper).not.toMatch(/Certificate|Sign-off sheet|Whose records/)
    })
  })

  test('the certificate has names and dates, lesson and revision, of those alone for whom every lesson holds (C22)', async () => {
    await onPlanning(async (page) => {
      const button = page.getByRole('button', { name: 'Print the certificate' })
      expect(await button.isDisabled()).toBe(true)
      await takeOver(page, ...ben)
      expect(await button.isDisabled()).toBe(true)
      await expect
        .poll(() => page.locator('[data-plan-certificate]').textContent())
        .toContain('Ben Okafor (P-0043): Stop the press & lock it: waits for a sign-off')
      await page.getByRole('button', { name: 'Wipe all records' }).tap()
      await page.getByRole('button', { name: 'Go on to wipe' }).tap()
      await page.getByRole('button', { name: 'Wipe now' }).tap()
      await page.locator('[data-plan-who]').waitFor({ state: 'hidden' })
      await takeOver(page, ...ana, ...ben)
      const certificate = await printed(page, 'Print the certificate')
      for (const said of [
        'Certificate of training: control of hazardous energy',
        'Ana Gómez',
        'P-0042',
        'Stop the press & lock it',
        'Nov 2, 2026',
        '1910.147(c)(7)(iv)',
        'For the employer: name',
      ])
        expect(certificate).toContain(said)
      expect(certificate).not.toMatch(/Ben|Training plan|Skills/)
    })
  })

  test('the skills say levels, gaps, on whom they rest and who can teach', async () => {
    await onPlanning(async (page) => {
      await takeOver(page, ...ana, ...ben)
      const matrix = page.locator('[data-plan-matrix]')
      await expect.poll(() => matrix.locator('thead').textContent()).toBe('PersonLock out · Operator needs 2Press · Operator needs 3')
      expect(await matrix.locator('tbody tr').allTextContents()).toEqual([
        'Ana GómezP-00422: does it under supervision0: not yetlacks 3',
        'Ben OkaforP-00430: not yetlacks 20: not yetlacks 3',
        'All togetherAt level 2: 1People missing: 1. Rests on one person: Ana Gómez. Nobody can train others in itAt level 3: 0People missing: 1. Nobody can train others in it',
      ])
    })
  })

  test('in Spanish, and linked from the lessons', async () => {
    await onPlanning(
      async (page) => {
        await page.getByRole('link', { name: 'Planificar la formación' }).tap()
        await page.waitForURL(/es\/planning\.html$/)
        await expect.poll(async () => (await sessions(page))[0]).toBe('Sesión 1 · 30 min | Look round | Stop the press & lock it')
      },
      panel,
      'es/lessons.html',
    )
  })

  test('without scripts each role has its lessons in an order that works', async () => {
    await onPlanning(
      async (page) => {
        expect(await page.locator('[data-planning]').isVisible()).toBe(false)
        expect(await page.locator('[data-plan-lists] h2').allTextContents()).toEqual(['Operator', 'Maintenance technician', 'Trainer'])
        expect(await page.locator('[data-plan-lists] ol').first().locator('.row-main > span').allTextContents()).toEqual([
          'Look round',
          'Stop the press & lock it',
          'Start the press',
          'Run the press',
          'Check a pressure switch',
        ])
      },
      { ...panel, context: { javaScriptEnabled: false } },
    )
  })

  test('a plan of many lessons comes after what was touched is shown', async () => {
    const opened = await openPage(site.browser, panel)
    await opened.page.addInitScript(() => {
      document.addEventListener('readystatechange', () => {
        const sheet = document.querySelector('[data-planning-sheet]')
        if (document.readyState !== 'interactive' || !sheet) return
        const read = JSON.parse(sheet.textContent ?? '')
        for (let number = 1; number <= 30; number++) {
          const lesson = {
            ...read.lessons[0],
            taught: { ...read.lessons[0].taught, id: `more-${number}` },
            needs: [],
            needsSignedOff: [],
            minutes: 20,
          }
          read.lessons.push(lesson)
          read.roles[0].asked.push({ lesson: `more-${number}`, why: 'more' })
        }
        sheet.textContent = JSON.stringify(read)
      })
    })
    await opened.page.goto(site.fromDisk('planning.html'))
    await expect.poll(() => plan(opened.page).textContent()).toContain('35 lessons in 18 sessions')
    await opened.page.locator('.plan-tick').last().tap()
    await expect.poll(() => opened.page.locator('[data-plan-open]').textContent()).toBe('34 of 35 lessons are open.')
    await expect.poll(() => plan(opened.page).textContent()).toContain('34 lessons in ')
    await opened.page.locator('[data-plan-minutes]').fill('')
    await expect.poll(() => plan(opened.page).textContent()).toBe('Enter the minutes of a session, from 1 to 999.')
    expect(opened.faults()).toEqual([])
    await opened.close()
  })

  test('an engine that cannot replace children at once shows the plan as well', async () => {
    const opened = await openPage(site.browser, panel)
    await opened.page.addInitScript(() => {
      Reflect.deleteProperty(Element.prototype, 'replaceChildren')
    })
    await opened.page.goto(site.fromDisk('planning.html'))
    await expect.poll(() => sessions(opened.page)).toHaveLength(3)
    expect(opened.faults()).toEqual([])
    await opened.close()
  })
})

describe('its look', () => {
  test.each([
    ['light', 1024, 768],
    ['dark', 1024, 768],
    ['light', 800, 480],
    ['dark', 800, 480],
    ['light', 1920, 1080],
  ] as const)('axe finds nothing, and no page is too wide: %s, %d x %d', async (colorScheme, width, height) => {
    await onPlanning(
      async (page) => {
        await takeOver(page, ...ana, ...ben)
        await page.locator('[data-plan-person]').selectOption('P-0042')
        await page.locator('[data-plan-first]').fill('2026-12-03')
        expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBe(0)
        expect(await violations(page, { everyRule: true })).toEqual([])
        if (!pictures) return
        mkdirSync(pictures, { recursive: true })
        await page.screenshot({ path: join(pictures, `planning-${width}-${colorScheme}.png`), fullPage: true })
      },
      { width, height, touch: true, context: { colorScheme } },
    )
  })
})

import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { buildExample } from './build-example.ts'
import { builtSite } from './built-site.ts'
import { usePage } from './use-page.ts'

// What people at the machine ask, and how far the answer is: from the start page by touch, or after one search.

interface Question {
  asked: string
  /** What is typed into the field of the start page; left out where touches alone lead there. */
  search?: string
  /** Names of the links that are touched, at most two. */
  touches: readonly (string | RegExp)[]
  page: RegExp
  /** Stands on that page, and in view without scrolling where `inView` says so. */
  answer: string | RegExp
  inView?: boolean
}

const questions: readonly Question[] = [
  { asked: 'alarm 201 is on: what do I do', search: '201', touches: [/^A0201/], page: /alarms\/A0201/, answer: 'Lift did not reach its position' },
  { asked: 'alarm 201, without typing', touches: [/^It stopped/, /^A0201/], page: /alarms\/A0201/, answer: /LO-2/, inView: true },
  { asked: 'where is PRS204', search: 'prs204', touches: [/^PRS204/], page: /tags\/PRS204/, answer: /left post, 0\.3 m/, inView: true },
  {
    asked: 'what is this at the lift, on the plan',
    touches: [/Destacking lift/, /^PRS204/],
    page: /tags\/PRS204/,
    answer: 'inductive proximity switch',
    inView: true,
  },
  {
    asked: 'which part is the pump seal',
    search: 'wash pump seal',
    touches: [/2010-0411/],
    page: /parts\/2010-0411/,
    answer: /silicon carbide/,
    inView: true,
  },
  { asked: 'how do I lock out the lift', touches: [/^Lock it out/, /^LO-2/], page: /lockout\/lo-2/, answer: /points still open/, inView: true },
  { asked: 'how do I set up crate C6420', touches: [/^Do a job/, /C6420/], page: /set-up\/C6420/, answer: /C6420/, inView: true },
  {
    asked: 'what should PRS204 read',
    search: 'PRS204',
    touches: [/^PRS204/, /^Measure and find the fault/],
    page: /tags\/PRS204\.html#meter/,
    answer: /Expect|expect/,
  },
  {
    asked: 'on which sheet is PRS204',
    search: 'PRS204',
    touches: [/^PRS204/, /^Find it on the drawing/],
    page: /drawings\/E-104\/2\.html#at-PRS204/,
    answer: /Sheet 2 of 3/,
  },
  { asked: 'what is at terminal X2:4', search: 'X2:4', touches: [/^X2:4/], page: /tags\/PRS204/, answer: /X2:4/ },
  {
    asked: 'something splashed into my eye',
    search: 'splash in the eye',
    touches: [/A splash in the eye/],
    page: /lessons\/caustic-liquid\.html#a-splash-in-the-eye/,
    answer: 'A splash in the eye',
    inView: true,
  },
  { asked: 'what do I clean each day', touches: [/^Do a job/, /every day/], page: /procedures\/clean-daily/, answer: /Time/, inView: true },
  { asked: 'what do I learn next', touches: [/^Learn it/, /^Operator/i], page: /paths\/operator/, answer: /lesson/i, inView: true },
]

const site = builtSite(() => buildExample('--no-zip'))

test.each(questions)('$asked', async ({ search, touches, page: expected, answer, inView }) => {
  expect(touches.length).toBeLessThanOrEqual(2)
  await usePage(site.browser, { width: 1024, height: 768, touch: true }, async (page) => {
    await page.goto(site.fromDisk('index.html'))
    if (search !== undefined) {
      await page.locator('input[name=q]').fill(search)
      await page.locator('[data-search-results] a').first().waitFor()
    }
    for (const [index, name] of touches.entries()) {
      const within = index === 0 && search !== undefined ? page.locator('[data-search-results]') : page
      const link = within.getByRole('link', { name }).first()
      await link.waitFor()
      const before = page.url()
      // A label on the plan is a link with its leader line; the label is what is touched.
      const label = link.locator('rect').first()
      await ((await label.count()) > 0 ? label : link).tap()
      await page.waitForURL((url) => url.href !== before)
    }
    expect(page.url()).toMatch(expected)
    const found = page.locator('main').getByText(answer).first()
    await found.waitFor()
    if (inView) expect(await standsInView(page, answer)).toBe(true)
  })
})

/** Whether one of the places where the answer stands is above the rail, without scrolling. */
async function standsInView(page: Page, answer: string | RegExp): Promise<boolean> {
  const railTop = (await page.locator('.rail').boundingBox())?.y ?? 0
  for (const place of await page.locator('main').getByText(answer).all()) {
    const box = await place.boundingBox()
    if (box && box.y >= 0 && box.y + box.height <= railTop) return true
  }
  return false
}

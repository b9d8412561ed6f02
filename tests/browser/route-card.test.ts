import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { violations } from './axe.ts'
import { buildSoundMachine } from './build-sound-machine.ts'
import { builtSite } from './built-site.ts'
import { usePage } from './use-page.ts'

const message = (hazard: string) => `<Safety severity="minor-or-moderate-injury">
  <Hazard>${hazard}</Hazard>
  <Consequence>It could cut your hand.</Consequence>
  <Avoid>Wear gloves.</Avoid>
</Safety>
`
const tall = Array.from({ length: 30 }, (_, index) => `    Look at mark ${index + 1} of the scale.\n`).join('\n')

const job = `---
title: Change the jaws
kind: maintain
when: when the jaws are worn
reader: maintenance
minutes: 20
tools: [Spanner]
lockout: [lo-1]
---
<Include caution="crush" />

## Take them off

<Steps>
  <Step>Open the clamp.</Step>
  <Step>
    <Safety severity="minor-or-moderate-injury" kind="embedded">
      <Hazard>The screws have sharp edges.</Hazard>
      <Consequence>They could cut your hand.</Consequence>
      <Avoid>Wear gloves.</Avoid>
    </Safety>

    Turn the screws out.

${tall}
  </Step>
  <Step>Lift the jaws out.</Step>
</Steps>

## Put new ones in

${message('The new jaws are sharp.')}
<Steps>
  <Step>
    Put the jaws in (1).

    <Figure image="photos/press.svg" alt="The press">
      <Callout n="1" x="25" y="80">Jaws, <Tag id="PS-101" /></Callout>
      <Callout n="2" x="100" y="0">Lamp</Callout>
    </Figure>
  </Step>
  <Step>Turn the screws in.</Step>
</Steps>
`

const alarm = `---
title: Clamp pressure low
alarm: A01
lockout: [lo-1]
minutes: 5
reader: maintenance
---
See [what it is for](front/use#what-it-is-for). <Fitted option="fan">The fan <Tag id="MTR5" /> may be off.</Fitted>

<Causes>
  <Cause likelihood="usual">The air is off. Open the valve.</Cause>
  <Cause likelihood="sometimes" tags="PS-101">The switch reads low. Measure it.</Cause>
</Causes>
`

/** What must be in view with each step, whole or in brief. */
const walk: readonly [step: string, ...hazards: string[]][] = [
  ['Open the clamp.', 'The clamp closes with 5 kN.'],
  ['Turn the screws out.', 'The clamp closes with 5 kN.', 'The screws have sharp edges.'],
  ['Lift the jaws out.', 'The clamp closes with 5 kN.'],
  ['Put the jaws in (1).', 'The clamp closes with 5 kN.', 'The new jaws are sharp.'],
  ['Turn the screws in.', 'The clamp closes with 5 kN.', 'The new jaws are sharp.'],
]

const site = builtSite(() => buildSoundMachine({ 'pages/procedures/jaws.mdx': job, 'pages/alarms/clamp.mdx': alarm }))

const addressOf = (path: string) => site.fromDisk(path)
const address = () => addressOf('procedures/jaws.html')
const panel = (width: number, height: number) => ({ width, height, touch: true, context: { reducedMotion: 'reduce' as const } })
const here = (page: Page) => page.locator('[aria-current=step]')
const on = (page: Page) => page.locator('.step-on')

/** Hazards that can be read now: of messages that are wholly between the edge of the window and the buttons and not covered, or in brief. */
function hazardsInView(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const strip = document.querySelector('.brief-messages')
    const top = strip instanceof HTMLElement && !strip.hidden ? strip.getBoundingClientRect().bottom : 0
    const bottom = document.querySelector('.step-bar')?.getBoundingClientRect().top ?? innerHeight
    const whole = [...document.querySelectorAll('main .safety')].filter((it) => {
      const box = it.getBoundingClientRect()
      return box.top >= top - 1 && box.bottom <= bottom + 1
    })
    const brief = [...document.querySelectorAll<HTMLElement>('.brief-messages [data-hazard]')].filter((it) => it.offsetHeight > 0)
    return [...whole.map((it) => it.querySelector('.safety-hazard')), ...brief].map((it) => it?.textContent?.trim() ?? '')
  })
}

test.each([
  [1024, 768],
  [800, 480],
])('each step comes into view with its messages, by touch, at %d × %d', async (width, height) => {
  await usePage(site.browser, panel(width, height), async (page) => {
    await page.goto(address())
    expect(await here(page).count()).toBe(1)
    if ((await on(page).textContent()) === 'To step 1') await on(page).tap()
    for (const [step, ...hazards] of walk) {
      expect(await here(page).textContent()).toContain(step)
      const [box, strip, bar] = await Promise.all(['[aria-current=step]', '.brief-messages', '.step-bar'].map((it) => page.locator(it).boundingBox()))
      if (!box || !bar) throw new Error('no step in focus, or no buttons')
      expect(box.y, step).toBeGreaterThanOrEqual(strip?.height ?? 0)
      if (box.height < bar.y / 2) expect(box.y + box.height, step).toBeLessThanOrEqual(bar.y)
      else expect(box.y, step).toBeLessThan(bar.y / 2)
      const inView = await hazardsInView(page)
      for (const hazard of hazards) expect(inView, step).toContain(hazard)
      expect(await violations(page), step).toEqual([])
      await on(page).tap()
    }
    expect(await page.getByRole('status').textContent()).toBe('All steps are ticked.')
  })
})

test('a message that is scrolled out of a long step stays in brief', async () => {
  await usePage(site.browser, panel(800, 480), async (page) => {
    await page.goto(address())
    await on(page).tap()
    await on(page).tap()
    await page.mouse.wheel(0, 500)
    await expect.poll(() => hazardsInView(page)).toEqual(['The clamp closes with 5 kN.', 'The screws have sharp edges.'])
    expect(await page.locator('.brief-messages .safety-word').allTextContents()).toEqual(['WARNING', 'CAUTION'])
    await page.mouse.wheel(0, 5000)
    await expect.poll(() => on(page).textContent()).toBe('To step 2')
    expect(await hazardsInView(page)).not.toContain('The screws have sharp edges.')
  })
})

test('one step back takes its tick off, ticks stay after a reload, and all are cleared at once', async () => {
  await usePage(site.browser, panel(800, 480), async (page) => {
    await page.goto(address())
    await on(page).tap()
    expect(await page.getByRole('button', { name: 'Back one step' }).isDisabled()).toBe(true)
    await on(page).tap()
    await on(page).tap()
    await page.getByRole('button', { name: 'Back one step' }).tap()
    expect(await here(page).textContent()).toContain('Turn the screws out.')
    await page.reload()
    expect(await here(page).textContent()).toContain('Turn the screws out.')
    expect(await page.locator('[data-tick]:checked').count()).toBe(1)
    for (const box of await page.locator('[data-tick]').all()) await box.check()
    expect(await here(page).count()).toBe(0)
    await page.getByRole('button', { name: 'Clear the ticks' }).tap()
    expect(await page.locator('[data-tick]:checked').count()).toBe(0)
    expect(await here(page).textContent()).toContain('Open the clamp.')
  })
})

test('a touched step comes into focus, and its own tick goes on too', async () => {
  await usePage(site.browser, panel(1024, 768), async (page) => {
    await page.goto(address())
    await page.getByText('Lift the jaws out.').tap()
    expect(await here(page).textContent()).toContain('Lift the jaws out.')
    await here(page).locator('[data-tick]').tap()
    expect(await here(page).textContent()).toContain('Put the jaws in (1).')
  })
})

test('keys and screen readers are led along', async () => {
  await usePage(site.browser, panel(1024, 768), async (page) => {
    await page.goto(address())
    const focused = page.locator(':focus')
    await on(page).focus()
    await page.keyboard.press('Enter')
    expect(await focused.getAttribute('aria-current')).toBe('step')
    expect(await focused.textContent()).toContain('Turn the screws out.')
    for (const name of [null, 'Back one step', 'Done, next step']) {
      await page.keyboard.press('Tab')
      expect(await focused.evaluate((it) => (it instanceof HTMLButtonElement ? it.textContent : null))).toBe(name)
    }
    await page.keyboard.press('Enter')
    expect(await focused.getAttribute('aria-current')).toBe('step')
    expect(await focused.textContent()).toContain('Lift the jaws out.')
  })
})

test('on paper and with scripts off all steps are equal', async () => {
  const looks = (page: Page) =>
    page
      .locator('.route-step')
      .evaluateAll((all) => [
        ...new Set(all.map((it) => ['color', 'backgroundColor', 'boxShadow'].map((name) => getComputedStyle(it)[name as 'color']).join())),
      ])
  await usePage(site.browser, panel(1024, 768), async (page) => {
    await page.goto(address())
    expect((await looks(page)).length).toBe(2)
    await page.emulateMedia({ media: 'print' })
    expect((await looks(page)).length).toBe(1)
    expect(await page.locator('.step-bar').isVisible()).toBe(false)
    expect(await page.locator('.brief-messages').isVisible()).toBe(false)
  })
  await usePage(site.browser, { ...panel(1024, 768), context: { javaScriptEnabled: false } }, async (page) => {
    await page.goto(address())
    expect((await looks(page)).length).toBe(1)
    expect(await page.locator('.step-bar').count()).toBe(0)
  })
})

test.each([true, false])('marks stand where the picture has them, and below it is what they are, with scripts: %j', async (javaScriptEnabled) => {
  await usePage(site.browser, { width: 800, height: 480, touch: true, context: { javaScriptEnabled } }, async (page) => {
    await page.goto(address())
    await page.locator('.figure').scrollIntoViewIfNeeded()
    const picture = await page.locator('.figure img').boundingBox()
    if (!picture) throw new Error('no picture')
    expect(picture.width).toBeGreaterThan(100)
    expect(picture.height).toBeLessThan(480 / 2)
    for (const [index, x, y] of [
      [0, 0.25, 0.8],
      [1, 1, 0],
    ] as const) {
      const mark = await page.locator('.figure-marks circle').nth(index).boundingBox()
      if (!mark) throw new Error('no mark')
      expect(mark.x + mark.width / 2).toBeCloseTo(picture.x + x * picture.width, 0)
      expect(mark.y + mark.height / 2).toBeCloseTo(picture.y + y * picture.height, 0)
    }
    expect(await page.locator('.callouts li').allInnerTexts()).toEqual(['1\nJaws, PS-101', '2\nLamp'])
  })
})

test('a recovery says time, reader and lockout before it, and a cause leads to the readings that settle it', async () => {
  await usePage(site.browser, panel(800, 480), async (page) => {
    await page.goto(addressOf('alarms/A01.html'))
    expect(await page.locator('.facts').first().textContent()).toMatch(/5 min[\s\S]*maintenance/)
    const lockout = await page.locator('.act-lockout').boundingBox()
    const recovery = await page.locator('.recovery').boundingBox()
    expect(lockout?.y).toBeLessThan(recovery?.y ?? 0)
    expect(await page.locator('.cause-often').allTextContents()).toEqual(['Most often', 'Sometimes'])
    await page.locator('.cause').getByRole('link', { name: 'PS-101 Measure it' }).tap()
    await page.waitForURL(`${addressOf('tags/PS-101.html')}#meter`)
    expect(await page.locator('#meter').isVisible()).toBe(true)
  })
})

test('the buttons stand at the edge of a page without a thumb rail, as one in a package', async () => {
  await usePage(site.browser, panel(800, 480), async (page) => {
    await page.addInitScript(() => {
      new MutationObserver(() => document.querySelector('.rail')?.remove()).observe(document, { childList: true, subtree: true })
    })
    await page.goto(address())
    expect(await page.locator('.rail').count()).toBe(0)
    const bar = await page.locator('.step-bar').boundingBox()
    expect((bar?.y ?? 0) + (bar?.height ?? 0)).toBeCloseTo(480, 0)
  })
})

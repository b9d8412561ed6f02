import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { type BuiltExample, buildExample } from './build-example.ts'
import { type OldChromium, startOldChromium } from './old-chromium.ts'

/** A page of each kind that has a script or a layout of its own. */
const kinds = [
  'index.html',
  'search.html',
  'devices.html',
  'tags/PRS204.html',
  'areas/lift.html',
  'alarms/A0201.html',
  'parts/4440-0021.html',
  'drawings/E-104/2.html',
  'lessons.html',
  'lessons/machine-tour.html',
  'checks/check-inductive/PRS204.html',
  'paths/operator.html',
  'lockout/lo-1.html',
  'procedures/set-up-crate-format.html',
  'set-up/C6420.html',
  'parts-lists/pusher.html',
  'front/safety.html',
  'about.html',
  'planning.html',
  'es/alarms/A0201.html',
]

// The package holds a browser for this system alone.
describe.runIf(process.platform === 'linux' && process.arch === 'x64')('in Chromium 80, from disk', () => {
  let old: OldChromium
  let built: BuiltExample
  beforeAll(async () => {
    ;[old, built] = await Promise.all([startOldChromium(1024, 768), buildExample('--no-zip')])
  }, 180_000)
  afterAll(async () => {
    await old?.close()
    built?.remove()
  })
  beforeEach(() => {
    old.page.faults.length = 0
  })
  const open = (path: string) => {
    const [file = '', rest = ''] = path.split(/(?=[?#])/)
    return old.page.goto(pathToFileURL(join(built.dir, file)).href + rest)
  }

  test('it is that version, and has no gap in flex boxes', async () => {
    expect(await old.page.evaluate('navigator.userAgent')).toContain('HeadlessChrome/80.')
    await open('index.html')
    expect(
      await old.page.evaluate(`(() => {
        const box = document.createElement('div')
        box.style = 'display: flex; flex-direction: column; gap: 10px; position: absolute'
        box.append(document.createElement('i'), document.createElement('i'))
        document.body.append(box)
        return box.offsetHeight
      })()`),
    ).toBe(0)
  })

  test('every kind of page opens without a fault, and no wider than the screen', async () => {
    for (const path of kinds) {
      await open(path)
      expect(await old.page.evaluate('document.querySelectorAll("h1").length'), path).toBe(1)
      expect(await old.page.evaluate('document.documentElement.scrollWidth'), path).toBe(1024)
      expect(old.page.faults, path).toEqual([])
    }
  })

  test('what stands side by side is kept apart', async () => {
    await open('alarms/A0201.html')
    const apart = (selector: string) =>
      old.page.evaluate(`(() => {
        const boxes = [...document.querySelectorAll(${JSON.stringify(selector)})].map((it) => it.getBoundingClientRect())
        return Math.round(Math.min(...boxes.slice(1).map((box, index) => box.left - boxes[index].right)))
      })()`)
    expect(await apart('.plate-field')).toBe(26)
    expect(await apart('.plate-tools > *')).toBe(6)
    expect(await apart('.alarm-head > *')).toBe(18)
  })

  test('search finds names and words, with the keys of the page', async () => {
    await open('search.html')
    await old.page.tap('.search-form button', 'Keys')
    for (const letter of 'PRS204') await old.page.tap('.keys button', letter)
    expect(await old.page.until('(document.querySelector("[data-search-results] a") || {}).textContent')).toContain('PRS204')
    await open('search.html?q=raised%20load')
    await old.page.until('document.querySelectorAll("[data-search-results] a").length > 3')
    expect(await old.page.evaluate('document.querySelector("main").innerText')).not.toContain('Only names were searched')
    expect(await old.page.evaluate('document.querySelector("[data-search-results]").textContent')).toMatch(/lift|load/i)
    expect(old.page.faults).toEqual([])
  })

  test('a page that is left while its search begins says nothing', async () => {
    for (let time = 0; time < 10; time++) for (const path of ['index.html', 'search.html']) await open(path)
    expect(old.page.faults).toEqual([])
  })

  test('the address of an alarm leads to its page, and an unknown one to a list', async () => {
    await open('lookup.html?alarm=201')
    await old.page.until('location.pathname.endsWith("alarms/A0201.html")')
    await open('lookup.html?alarm=777')
    expect(await old.page.until('document.querySelectorAll("[data-lookup] a").length')).toBeGreaterThan(0)
    expect(old.page.faults).toEqual([])
  })

  test('a reading is typed and judged', async () => {
    await open('tags/PRS204.html#meter')
    await old.page.tap('button', 'The device reacts, the controller does not see it')
    await old.page.tap('[data-field^="supply"]')
    for (const key of '24') await old.page.tap(`[data-key="${key}"]`)
    await old.page.tap('[data-keys-take]')
    expect(await old.page.until('(document.querySelector("[data-field^=supply]").textContent.match(/24/) || [])[0]')).toBe('24')
    expect(old.page.faults).toEqual([])
  })

  test('a result is recorded in the chain, and planning takes it up', async () => {
    await open('lessons/machine-tour.html')
    for (let left = true; left; ) {
      await old.page.tap('[data-quiz-live] label')
      await old.page.tap('[data-quiz-live] button', 'Answer')
      left = (await old.page.evaluate('[...document.querySelectorAll("button")].some((it) => it.textContent.includes("Next question"))')) === true
      await old.page.tap('button', left ? 'Next question' : 'See the result')
    }
    await old.page.tap('[data-record-form] [data-person-id]')
    await old.page.type('P-0042')
    await old.page.tap('[data-record-form] [data-person-name]')
    await old.page.type('Ada')
    await old.page.tap('button', 'Record it')
    await old.page.until('document.querySelector("[data-lesson-end] [data-said]").textContent.trim()')
    await open('planning.html')
    await old.page.until('document.querySelector("main").textContent.includes("P-0042")')
    await old.page.until('document.querySelector("[data-paper]").textContent.includes("A walk round the machine")')
    expect(old.page.faults).toEqual([])
  })

  test('steps are led through, ticks stay, and the theme is changed', async () => {
    await open('procedures/lift-rollers-and-brake.html')
    for (const step of [1, 2, 3]) {
      if ((await old.page.evaluate('document.querySelector(".step-on").textContent.startsWith("To step")')) === true) await old.page.tap('.step-on')
      await old.page.until('document.querySelector(".step-on").textContent === "Done, next step"')
      await old.page.tap('.step-on')
      await old.page.until(`document.querySelectorAll('[data-tick]:checked').length === ${step}`)
    }
    await open('procedures/lift-rollers-and-brake.html')
    expect(await old.page.evaluate('document.querySelectorAll("[data-tick]:checked").length')).toBe(3)
    await old.page.tap('[data-display-switch]')
    await old.page.tap('#display button', 'Dark')
    expect(await old.page.evaluate('document.documentElement.dataset.theme')).toBe('dark')
    expect(old.page.faults).toEqual([])
  })

  test('a drawing is enlarged on the whole screen, and searched with the keys of the page', async () => {
    await open('drawings/E-104/2.html#at-PRS204')
    await old.page.tap('[data-full]')
    const width = 'document.querySelector("[data-sheet-drawing]").getBoundingClientRect().width'
    const whole = Number(await old.page.evaluate(width))
    await old.page.tap('[data-zoom=in]')
    await old.page.until(`${width} > ${whole * 1.5}`)
    await old.page.tap('[data-find-open]')
    for (const letter of 'LS2') await old.page.tap('[data-find] .keys button', letter)
    await old.page.until('document.querySelectorAll(".hit").length > 1')
    await old.page.tap('[data-find] .keys button', 'Find')
    await old.page.until('document.querySelectorAll(".hit-here").length === 1')
    await old.page.tap('[data-find-step="1"]')
    expect(await old.page.until('(document.querySelector("[data-find-status]").textContent.match(/^2 of \\d+$/) || [])[0]')).toBeTruthy()
    expect(old.page.faults).toEqual([])
  })

  test('the plan leads to a device', async () => {
    await open('areas/lift.html')
    await old.page.tap('.plan-wide .plan-label > rect')
    await old.page.until('location.pathname.endsWith("tags/MTR201.html")')
    expect(old.page.faults).toEqual([])
  })
})

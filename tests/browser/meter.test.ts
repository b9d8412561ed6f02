import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { violations } from './axe.ts'
import { buildExample } from './build-example.ts'
import { builtSite } from './built-site.ts'
import type { OpenedPage, openPage } from './chromium.ts'
import { usePage } from './use-page.ts'

const panel = { width: 1024, height: 768, touch: true }
const sensor = 'checks/check-inductive/PRS204.html'

const site = builtSite(() => buildExample('--no-zip'))

async function onPage(path: string, act: (page: Page, opened: OpenedPage) => Promise<void>, options: Parameters<typeof openPage>[1] = panel) {
  await usePage(site.browser, options, async (page, opened) => {
    await page.goto(site.fromDisk(path))
    await act(page, opened)
  })
}

const keyNames: Readonly<Record<string, string>> = { '.': 'decimal', ',': 'decimal', '−': 'sign' }

/** By touch alone: the field, the number keys, the unit where it is another, and the button that takes it. */
async function enter(page: Page, field: string, number: string, unit?: string): Promise<void> {
  await page.locator(`[data-field="${field}"]`).tap()
  for (const sign of number) await page.locator(`[data-key="${keyNames[sign] ?? sign}"]`).tap()
  if (unit) await page.locator('[data-keys-units]').getByText(unit, { exact: true }).tap()
  await page.locator('[data-keys-take]').tap()
}
const tapLight = (page: Page, indicator: string, pattern: string) => page.locator(`[data-light="${indicator}"][data-pattern="${pattern}"]`).tap()
const likely = (page: Page) => page.locator('[data-outcome] .fault-first .fault-name').textContent()
const verdict = (page: Page, field: string) => page.locator(`[data-field="${field}"] [data-verdict]`).textContent()
const suspected = (page: Page) => page.locator('.path-suspected').allTextContents()

describe('by touch, opened from disk', () => {
  test('a healthy sensor', async () => {
    await onPage(sensor, async (page) => {
      await enter(page, 'supply', '24,1')
      await enter(page, 'input-at-card.target', '21.9')
      await enter(page, 'input-at-card.none', '0.1')
      for (const light of ['output-led', 'card-led', 'tag']) await tapLight(page, light, 'with')
      expect(await likely(page)).toBe('The circuit is healthy.')
      expect(await verdict(page, 'input-at-card.target')).toBe('as expected')
      expect(await page.locator('[data-field="supply"] [data-value]').textContent()).toBe('24.1 V')
      expect(await suspected(page)).toEqual([])
      expect(await page.locator('.path-cut, .path-doubt').count()).toBe(0)
    })
  })

  test('the device reacts and the controller does not see it: two taps to the open signal wire', async () => {
    await onPage(sensor, async (page) => {
      await page.getByRole('link', { name: /Measure and find the fault/ }).tap()
      await page.getByRole('button', { name: 'The device reacts, the controller does not see it' }).tap()
      expect(await likely(page)).toBe('The signal wire is open between sensor and card.')
      expect(await suspected(page)).toEqual(['suspected here: signal wire'])
      expect(await page.locator('.meter .path-cut').getAttribute('data-place')).toBe('wire')
      const line = await page.locator('.meter .path-cut').evaluate((it) => getComputedStyle(it, '::before').backgroundImage)
      expect(line).toContain('repeating-linear-gradient')
    })
  })

  test('the controller sees it and nothing is there: the short, and the forced bit or wrong address', async () => {
    await onPage(sensor, async (page) => {
      await page.getByRole('button', { name: 'The controller sees it, nothing is there' }).tap()
      expect(await likely(page)).toBe('The signal wire touches L+.')
      expect(await page.locator('[data-outcome] .fault-others').textContent()).toContain('a bit that is forced to 1')
      await tapLight(page, 'card-led', 'with')
      expect(await likely(page)).toContain('wrong address, wrong mapping, or a bit that is forced to 1')
      expect(await suspected(page)).toEqual(['suspected here: address and program'])
    })
  })

  test('no supply at the sensor', async () => {
    await onPage(sensor, async (page) => {
      await tapLight(page, 'output-led', 'never')
      await enter(page, 'supply-at-sensor.target', '0')
      await enter(page, 'brown-to-common.target', '0')
      expect(await likely(page)).toBe('L+ does not reach the sensor.')
      expect(await verdict(page, 'supply-at-sensor.target')).toBe('not as expected')
      expect(await page.locator('.meter .path-doubt').getAttribute('data-place')).toBe('device')
    })
  })

  test('the channel of the card has failed', async () => {
    await onPage(sensor, async (page) => {
      await enter(page, 'input-at-card.target', '22')
      await enter(page, 'input-at-card.none', '0')
      await tapLight(page, 'card-led', 'never')
      await tapLight(page, 'tag', 'never')
      expect(await likely(page)).toBe('The channel of the card has failed.')
      expect(await suspected(page)).toEqual(['suspected here: card'])
    })
  })

  test('a contact that stays open, on the page of its device', async () => {
    await onPage('tags/LS207.html', async (page) => {
      await enter(page, 'across-sensor.target', '24')
      await tapLight(page, 'tag', 'never')
      expect(await likely(page)).toBe('The contact stays open.')
    })
  })

  test('a Pt100 at 131.2 Ω, in Spanish', async () => {
    await onPage('es/checks/check-pt100/TE416.html', async (page) => {
      await enter(page, 'element', '131,2')
      expect(await page.locator('[data-outcome] .meter-figure').textContent()).toBe('80,8 °C')
      expect(await verdict(page, 'element')).toBe('como se espera')
      await enter(page, 'element', '0,1312', 'kΩ')
      expect(await page.locator('[data-outcome] .meter-figure').textContent()).toBe('80,8 °C')
    })
  })

  test('a loop at 3.5 mA, and at 13.6 mA', async () => {
    await onPage('checks/check-current-loop/PT518.html', async (page) => {
      await enter(page, 'loop-current', '3.5')
      expect(await verdict(page, 'loop-current')).toBe('not as expected')
      expect(await page.locator('[data-outcome]').textContent()).toContain('This is a failure current, low (NAMUR NE 43: up to 3.6 mA).')
      expect(await likely(page)).toBe('The transmitter reports a failure with a low current.')
      expect(await suspected(page)).toEqual(['suspected here: device'])
      await page.locator('[data-field="loop-current"]').tap()
      await page.locator('[data-keys-remove]').tap()
      await enter(page, 'loop-current', '13.6')
      expect(await page.locator('[data-outcome] .meter-figure').textContent()).toBe('3.6 bar')
      expect(await verdict(page, 'loop-current')).toBe('as expected')
    })
  })

  test('a thermocouple in mV, with the temperature of its terminals: right, and shorted', async () => {
    await onPage('checks/check-thermocouple/TC517.html', async (page) => {
      // NIST ITS-90: type K 4.096 mV at 100 °C, 1.285 mV at 32 °C.
      await enter(page, 'thermovoltage', '2.811')
      await enter(page, 'coldJunction', '32')
      expect(await page.locator('[data-outcome] .meter-figure').textContent()).toBe('100.0 °C')
      await enter(page, 'reference', '99.5')
      expect(await verdict(page, 'thermovoltage')).toBe('as expected')
      await enter(page, 'thermovoltage', '0')
      expect(await likely(page)).toBe('The cable is shorted: the card shows the temperature of the short circuit.')
      expect(await suspected(page)).toEqual(['suspected here: signal wire'])
      expect(await page.locator('.meter .path-cut').count()).toBe(1)
    })
  })

  test('a coil whose wire is open, and one that is open itself, in Spanish', async () => {
    await onPage('es/tags/SOL211.html', async (page) => {
      await tapLight(page, 'tag', 'with')
      await enter(page, 'terminal.on', '23,6')
      await enter(page, 'load.on', '0,1')
      expect(await likely(page)).toBe('El hilo está abierto entre la tarjeta y la carga.')
      expect(await suspected(page)).toEqual(['sospecha aquí: hilo de señal'])
      expect(await verdict(page, 'load.on')).toBe('no es lo esperado')
      await enter(page, 'load.on', '23,4')
      await enter(page, 'current', '0')
      expect(await likely(page)).toBe('La propia carga está abierta.')
      expect(await page.locator('.meter .path-doubt').getAttribute('data-place')).toBe('device')
    })
  })

  test('a flow meter whose pulses do not arrive, and one that counts at another flow', async () => {
    await onPage('tags/FLM519.html', async (page) => {
      await enter(page, 'atMeter', '5,1')
      expect(await page.locator('[data-field="atMeter"] [data-value]').textContent()).toBe('5.1 Hz')
      await enter(page, 'atCard', '0')
      expect(await likely(page)).toBe('The pulses do not arrive at the card.')
      expect((await suspected(page)).length).toBeGreaterThan(0)
      await enter(page, 'atMeter', '2.5')
      await enter(page, 'atCard', '2.5')
      await enter(page, 'shown', '15')
      expect(await likely(page)).toBe('The flow meter may be right: another flow than in service.')
      await enter(page, 'flow', '15')
      expect(await likely(page)).toBe('The flow meter is in order.')
      expect(await verdict(page, 'atCard')).toBe('as expected')
    })
  })

  test('a wrong unit is refused in plain words, and nothing is kept of it', async () => {
    await onPage(sensor, async (page) => {
      await enter(page, 'input-at-card.target', '0.1', 'mA')
      const refused = page.locator('[data-keys-refused]')
      expect(await refused.textContent()).toBe('This unit measures something else. This point is read in V.')
      await page.locator('[data-keys-input]').fill('21,6 v')
      await page.locator('[data-keys-take]').tap()
      expect(await refused.textContent()).toContain('Did you mean V?')
      await page.locator('[data-keys-close]').tap()
      expect(await page.locator('[data-field="input-at-card.target"] [data-value]').textContent()).toBe('– V')
      expect(await page.evaluate(() => Object.keys(localStorage).filter((key) => key.includes('.meter.')))).toEqual([])
    })
  })

  test('a reload in the middle keeps readings and taps, for this device alone, until they are cleared', async () => {
    await onPage(sensor, async (page) => {
      await page.getByRole('button', { name: 'The device reacts, the controller does not see it' }).tap()
      await enter(page, 'output-at-sensor.target', '21,6')
      await page.reload()
      expect(await page.locator('[data-field="output-at-sensor.target"] [data-value]').textContent()).toBe('21.6 V')
      expect(await page.locator('[data-light="tag"][aria-pressed="true"]').textContent()).toBe('Always off')
      expect(await likely(page)).toBe('The signal wire is open between sensor and card.')
      expect(await page.locator('[data-kept]').textContent()).toMatch(/^Readings of .+, kept on this panel\.$/)
      await page.goto(site.fromDisk('tags/PRS205.html'))
      expect(await page.locator('[data-outcome]').textContent()).toBe('Nothing is entered yet.')
      await page.goto(site.fromDisk('tags/PRS204.html'))
      expect(await page.locator('[data-field="output-at-sensor.target"] [data-value]').textContent()).toBe('21.6 V')
      const ask = page.getByRole('group', { name: /^Clear every reading/ })
      expect(await ask.isVisible()).toBe(false)
      await page.getByRole('button', { name: 'Clear readings' }).tap()
      for (const name of ['No, keep them', 'Yes, clear them']) {
        const box = await ask.getByRole('button', { name }).boundingBox()
        expect(Math.min(box?.height ?? 0, box?.width ?? 0)).toBeGreaterThanOrEqual(48)
      }
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('No, keep them')
      await ask.getByRole('button', { name: 'No, keep them' }).tap()
      expect(await ask.isVisible()).toBe(false)
      expect(await page.locator('[data-field="output-at-sensor.target"] [data-value]').textContent()).toBe('21.6 V')
      await page.getByRole('button', { name: 'Clear readings' }).tap()
      await ask.getByRole('button', { name: 'Yes, clear them' }).tap()
      expect(await ask.isVisible()).toBe(false)
      expect(await page.locator('[data-outcome]').textContent()).toBe('Nothing is entered yet.')
      await page.reload()
      expect(await page.locator('[data-outcome]').textContent()).toBe('Nothing is entered yet.')
    })
  })

  test('what another program left in the store does no harm', async () => {
    await onPage(sensor, async (page) => {
      await enter(page, 'supply', '24')
      for (const left of ['{', '[]', 'null', '{"atMs":1}', `{"atMs":${Date.now()},"readings":{"supply":3},"lights":{"tag":"no"}}`]) {
        await page.evaluate((text) => localStorage.setItem(Object.keys(localStorage).find((key) => key.includes('.meter.')) ?? '', text), left)
        await page.reload()
        expect(await page.locator('[data-outcome]').textContent(), left).toBe('Nothing is entered yet.')
      }
    })
  })
})

describe('on paper and without scripts', () => {
  test('the record holds readings, limits, what they rest on, verdicts, a line for the name and the caution', async () => {
    await onPage(sensor, async (page) => {
      await tapLight(page, 'tag', 'never')
      await enter(page, 'input-at-card.target', '0.1')
      await page.evaluate(() => Object.assign(window, { print: () => undefined }))
      await page.getByRole('button', { name: 'Print the record' }).tap()
      await page.emulateMedia({ media: 'print' })
      const record = page.locator('[data-record]')
      expect(await record.isVisible()).toBe(true)
      expect(await page.locator('.prose:visible, [data-meter-live]:visible').count()).toBe(0)
      const text = ((await record.textContent()) ?? '').replace(/\s+/g, ' ')
      for (const said of [
        'PRS204',
        '0400-017',
        'Name',
        'input terminal to 0 V of the card',
        'not as expected',
        'tag in the controller: Always off',
        'Parts are live',
        'does not validate',
      ])
        expect(text).toContain(said)
      expect(text).toMatch(/(generic limit|data sheet|standard)/)
      expect(await record.locator('.sign-line').count()).toBe(1)
    })
  })

  test('with scripts off the whole fault table is there to read, and nothing to tap', async () => {
    await onPage(
      sensor,
      async (page) => {
        expect(await page.locator('.fault-table tbody tr').count()).toBeGreaterThan(15)
        expect(await page.getByText('The signal wire is open between sensor and card.').isVisible()).toBe(true)
        expect(await page.locator('[data-meter-live]').isVisible()).toBe(false)
      },
      { ...panel, context: { javaScriptEnabled: false } },
    )
  })
})

describe('for everyone', () => {
  test.each([
    ['light', 1024, 768],
    ['dark', 1024, 768],
    ['light', 800, 480],
  ] as const)('axe finds nothing, no page is too wide and keys fit a glove: %s, %d x %d', async (colorScheme, width, height) => {
    await onPage(
      sensor,
      async (page) => {
        await page.getByRole('button', { name: 'The device reacts, the controller does not see it' }).tap()
        await enter(page, 'input-at-card.target', '0.1')
        await page.locator('[data-fault-table] summary').tap()
        await picture(page, `${colorScheme}-${width}`)
        expect(await violations(page)).toEqual([])
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
        await page.locator('[data-field="input-at-card.none"]').tap()
        await picture(page, `${colorScheme}-${width}-keys`)
        expect(await violations(page)).toEqual([])
        const keys = await page.locator('[data-key], [data-keys-take]').evaluateAll((all) => all.map((it) => it.getBoundingClientRect().toJSON()))
        for (const { top, bottom, width: keyWidth } of keys) {
          expect(bottom - top).toBeGreaterThanOrEqual(50)
          expect(keyWidth).toBeGreaterThanOrEqual(56)
          expect(bottom).toBeLessThanOrEqual(height)
        }
        expect(keys).toHaveLength(14)
      },
      { width, height, touch: true, context: { colorScheme } },
    )
  })

  test.each(['tags/SOL211.html', 'tags/TC517.html', 'tags/MTR101.html', 'tags/ENC104.html', 'tags/FLM519.html', 'tags/LT056.html'])(
    'nor on %s',
    async (path) => {
      await onPage(path, async (page) => {
        for (const summary of await page.locator('[data-folds] summary').all()) await summary.tap()
        expect(await violations(page)).toEqual([])
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(panel.width)
      })
    },
  )

  async function picture(page: Page, name: string): Promise<void> {
    const folder = process.env.FETTLE_PICTURES
    if (folder) await page.screenshot({ path: join(folder, `meter-${name}.png`), fullPage: !name.endsWith('keys') })
  }
})

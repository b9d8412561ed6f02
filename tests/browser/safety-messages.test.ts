import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { contrastRatio, leastContrast } from '../../src/hazard/contrast.ts'
import { panelOf } from '../../src/hazard/panel.ts'
import { inOrderOfHarm } from '../../src/hazard/signal-word.ts'
import { violations } from './axe.ts'
import type { BuiltMachine } from './build-sound-machine.ts'
import { launchChromium, openPage } from './chromium.ts'
import { buildMessages } from './safety-machine.ts'

let browser: Browser
beforeAll(async () => {
  browser = await launchChromium()
}, 60_000)
afterAll(() => browser?.close())

/** Where pictures are put to be looked at; without it none are taken. */
const pictures = process.env.FETTLE_PICTURES

describe.each(['z535', 'iso-3864-2'] as const)('the form %s', (form) => {
  let built: BuiltMachine
  beforeAll(async () => {
    built = await buildMessages(form)
  }, 120_000)
  afterAll(() => built?.remove())

  async function onPage<T>(path: string, context: BrowserContextOptions, use: (page: Page) => Promise<T>): Promise<T> {
    const opened = await openPage(browser, { width: 1024, height: 768, touch: true, context })
    try {
      await opened.page.goto(pathToFileURL(join(built.dir, path)).href)
      return await use(opened.page)
    } finally {
      await opened.close()
    }
  }

  /** Colours of each panel as the browser shows them: word, letters, ground, and the text with what lies behind it. */
  const shown = (page: Page) =>
    page.locator('.safety:not(.safety-directive):not(.safety-brief)').evaluateAll((all) => {
      const hex = (colour: string) =>
        `#${(colour.match(/[\d.]+/g) ?? [])
          .slice(0, 3)
          .map((it) => Number(it).toString(16).padStart(2, '0'))
          .join('')}`
      const behind = (it: Element | null): string => {
        const colour = it ? getComputedStyle(it).backgroundColor : 'rgb(255, 255, 255)'
        return /, 0\)$|transparent/.test(colour) ? behind(it?.parentElement ?? null) : hex(colour)
      }
      return all.map((message) => {
        const panel = message.querySelector('.safety-word')
        const texts = [...message.querySelectorAll('.safety-text p, .safety-text div, .safety-text a, .sign-code, .sign-meaning')]
        const mark = message.querySelector('.alert-mark')
        const triangle = message.querySelector('.alert-ground')
        return {
          kind: message.className,
          word: panel?.textContent?.trim(),
          ground: panel ? hex(getComputedStyle(panel).backgroundColor) : '',
          letters: panel ? hex(getComputedStyle(panel).color) : '',
          sizePx: [panel, message.querySelector('.safety-text')].map((it) => (it ? Number.parseFloat(getComputedStyle(it).fontSize) : 0)),
          italic: panel ? getComputedStyle(panel).fontStyle === 'italic' : false,
          alert: mark && triangle ? [hex(getComputedStyle(triangle).fill), hex(getComputedStyle(mark).fill)] : undefined,
          texts: texts.map((it) => [hex(getComputedStyle(it).color), behind(it)] as const),
          role: message.getAttribute('role'),
          name: message.getAttribute('aria-label'),
        }
      })
    })

  describe.each(['light', 'dark'] as const)('%s', (colorScheme) => {
    test('shows the colours of the table, with enough contrast for letters and text', async () => {
      const messages = await onPage('front/messages.html', { colorScheme }, shown)
      expect(messages.map(({ word }) => word)).toEqual([
        ...['DANGER', 'WARNING', 'CAUTION', 'NOTICE', 'DANGER', 'WARNING', 'CAUTION', 'NOTICE'],
        ...['DANGER', 'WARNING', 'CAUTION', 'NOTICE', 'WARNING'],
      ])
      for (const { word: said, ground, letters, italic, alert, texts, kind, role, name } of messages) {
        const word = inOrderOfHarm.find((it) => it.toUpperCase() === said) ?? 'notice'
        const panel = panelOf(word, form)
        expect({ kind, ground, letters, italic, alert }).toEqual({
          ...{ kind, ground: panel.ground, letters: panel.letters, italic: panel.italic },
          alert: panel.alert && [panel.alert.triangle, panel.alert.mark],
        })
        expect(contrastRatio(ground, letters)).toBeGreaterThanOrEqual(leastContrast.text)
        expect(texts.length).toBeGreaterThan(2)
        for (const [colour, behind] of texts)
          expect([kind, colour, behind, contrastRatio(colour, behind) >= leastContrast.enhancedText]).toEqual([kind, colour, behind, true])
        expect([role, name]).toEqual(['note', said])
      }
    })

    test.each(['front/messages.html', 'front/summary.html', 'es/front/messages.html', 'es/front/summary.html'])(
      'axe finds nothing on %s',
      async (path) => {
        expect(await onPage(path, { colorScheme }, (page) => violations(page))).toEqual([])
      },
    )
  })

  test('the word of a panel is half as large again as the text', async () => {
    // Source: ANSI Z535.2 and Z535.4, from a secondary text; both are set in capitals of about one height to the size.
    const messages = await onPage('front/messages.html', {}, shown)
    for (const {
      kind,
      sizePx: [word = 0, text = 1],
    } of messages)
      if (!kind.includes('embedded')) expect([kind, word / text >= 1.5]).toEqual([kind, true])
  })

  test('white letters on a dark ground are printed at 12 pt or more', async () => {
    // Source: ISO/IEC Guide 37:2012. 12 pt are 16 px.
    const messages = await onPage('front/messages.html', {}, async (page) => {
      await page.emulateMedia({ media: 'print' })
      return shown(page)
    })
    const white = messages.filter(({ letters }) => letters === '#ffffff')
    expect(white.length).toBeGreaterThan(2)
    for (const {
      kind,
      sizePx: [word = 0],
    } of white)
      expect([kind, word >= 16]).toEqual([kind, true])
  })

  test('on paper the words of one kind of message are of one size', async () => {
    const messages = await onPage('front/messages.html', {}, async (page) => {
      await page.emulateMedia({ media: 'print' })
      return shown(page)
    })
    const sizes = Map.groupBy(messages, ({ kind }) => /safety-(section|grouped|embedded)/.exec(kind)?.[1])
    expect([...sizes.keys()]).toEqual(['section', 'grouped', 'embedded'])
    for (const [kind, these] of sizes) expect([kind, new Set(these.map(({ sizePx: [word] }) => word)).size]).toEqual([kind, 1])
  })

  test('under forced colours each word keeps a border, and its letters and mark differ from their ground', async () => {
    const messages = await onPage('front/messages.html', { forcedColors: 'active' }, shown)
    for (const { ground, letters, alert } of messages) {
      expect(contrastRatio(ground, letters)).toBeGreaterThanOrEqual(leastContrast.enhancedText)
      if (alert) expect(contrastRatio(alert[0] ?? '', alert[1] ?? '')).toBeGreaterThanOrEqual(leastContrast.enhancedText)
    }
  })

  test('a sound reader meets the word before the text, and each sign by its meaning', async () => {
    const tree = await onPage('front/messages.html', {}, (page) => page.locator('.safety-section.safety-warning').first().ariaSnapshot())
    expect(tree).toContain('note "WARNING"')
    expect(tree).toContain('img "crushing of hands"')
    expect(tree.indexOf('WARNING')).toBeLessThan(tree.indexOf('The clamp closes.'))
    expect(tree).toContain('tether tools')
  })

  test('no message is wider than a narrow screen', async () => {
    const opened = await openPage(browser, { width: 390, height: 844, touch: true })
    await opened.page.goto(pathToFileURL(join(built.dir, 'front/messages.html')).href)
    expect(await opened.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390)
    await opened.close()
  })

  if (pictures)
    test('pictures to look at', async () => {
      mkdirSync(pictures, { recursive: true })
      const ways: [string, BrowserContextOptions, (page: Page) => Promise<unknown>][] = [
        ['light', {}, async () => undefined],
        ['dark', { colorScheme: 'dark' }, async () => undefined],
        ['grey', {}, (page) => page.addStyleTag({ content: 'html { filter: grayscale(1) }' })],
        ['print', {}, (page) => page.emulateMedia({ media: 'print' })],
        ['forced', { forcedColors: 'active' }, async () => undefined],
      ]
      for (const [name, context, prepare] of ways)
        await onPage('front/messages.html', context, async (page) => {
          await prepare(page)
          await page.screenshot({ path: join(pictures, `${form}-${name}.png`), fullPage: true })
          if (name === 'print') await page.pdf({ path: join(pictures, `${form}.pdf`), format: 'A4' })
        })
    }, 60_000)
})

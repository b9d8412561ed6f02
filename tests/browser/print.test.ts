import { execFile } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type PrintedPages, printedLinks } from './printed-links.ts'
import { printedQr } from './printed-qr.ts'

const run = promisify(execFile)
const pictures = process.env.FETTLE_PICTURES

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle print #ü '))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

async function print(name: string, ...options: string[]): Promise<string> {
  const out = join(folder, name)
  await run(process.execPath, ['src/cli/fettle.ts', 'print', 'example-machine', '--out', out, ...options], { maxBuffer: 10_000_000 })
  return out
}

describe('the book of the example machine', () => {
  let bytes: Buffer
  let printed: PrintedPages

  beforeAll(async () => {
    bytes = readFileSync(await print('book.pdf'))
    printed = await printedLinks(bytes)
    if (pictures) {
      mkdirSync(pictures, { recursive: true })
      writeFileSync(join(pictures, 'book.pdf'), bytes)
    }
  }, 900_000)

  const pageOf = (id: string) => printed.places.get(id) ?? 0

  test('has the page number in each line of the contents on which its chapter begins', () => {
    const lines = printed.links.filter(({ on }) => on >= pageOf('contents') && on < pageOf('c1'))
    expect(lines.length).toBeGreaterThan(60)
    const wrong = lines.filter(({ to, text }) => Number(/\d+$/.exec(text)?.[0]) !== printed.places.get(to))
    expect(wrong).toEqual([])
  })

  test('has in the index the numbers of the pages that name the thing', () => {
    const numbers = printed.links.filter(({ on }) => on >= pageOf('index'))
    expect(numbers.length).toBeGreaterThan(800)
    expect(numbers.filter(({ to, text }) => Number(text.replace(/,.*$/, '')) !== printed.places.get(to))).toEqual([])
  })

  test('has in each cross reference the number of its page', () => {
    const references = printed.links.flatMap((link) => {
      const [, page] = /\(page (\d+)\)$/.exec(link.text) ?? []
      return page === undefined ? [] : [{ ...link, page: Number(page) }]
    })
    expect(references.length).toBeGreaterThan(500)
    expect(references.filter(({ to, page }) => page !== printed.places.get(to))).toEqual([])
  })

  test('says machine, revision and page on every page but the cover', () => {
    const total = printed.texts.length
    const wrong = printed.texts.flatMap((text, index) =>
      index === 0 ||
      (text.includes(`Page ${index + 1} of ${total}`) && text.includes('0400-MAN-07 · Rev. D · 2026-09-14') && text.includes('Serial no. 0400-017'))
        ? []
        : [index + 1],
    )
    expect(wrong).toEqual([])
    expect(printed.texts.every((text) => text.includes('Invented demonstration machine'))).toBe(true)
  })

  test('has letters of the size that the styles give them: one part that is too wide or too high makes all of them smaller', () => {
    expect(printed.largestPt[pageOf('contents') - 1]).toBeCloseTo(18)
  })

  test('begins with safety, and has every font in it', () => {
    expect(printed.texts[pageOf('c1') - 1]).toMatch(/1 Safety/)
    const text = bytes.toString('latin1')
    const descriptors = [...text.matchAll(/\/Type \/FontDescriptor[\s\S]*?>>/g)].map(([it]) => it)
    expect(descriptors.length).toBeGreaterThan(2)
    expect(descriptors.filter((it) => !/\/FontFile[23]? /.test(it))).toEqual([])
  })
})

describe('the lockouts of the example machine', () => {
  let first: string
  beforeAll(async () => {
    first = await print('first', '--what', 'lockout')
  }, 900_000)
  const pdfOf = (out: string, name: string) => readFileSync(join(out, name))

  const numbers = [1, 2, 3, 4, 5, 6]

  test('are a file each, named as their page', () => expect(readdirSync(first).sort()).toEqual(numbers.map((number) => `lockout-lo-${number}.pdf`)))

  test.each(['en', 'es'].flatMap((language) => ['a4', 'letter'].map((paper) => [language, paper] as const)))(
    'take two pages at most in %s on %s, with no letter below 9 pt but in the drawing of the plan',
    async (language, paper) => {
      const out =
        paper === 'a4' && language === 'en'
          ? first
          : await print(`${language}-${paper}`, '--what', 'lockout', '--paper', paper, '--language', language)
      for (const name of readdirSync(out)) {
        const { texts, letterPt } = await printedLinks(pdfOf(out, name))
        expect([name, texts.length <= 2]).toEqual([name, true])
        // The plan is a drawing made for a larger sheet: its lettering is below 5 pt, the numbers of the points are not.
        expect([name, letterPt.flat().filter((pt) => pt > 5 && pt < 9)]).toEqual([name, []])
      }
    },
    900_000,
  )

  test('say machine, revision and build check value, and their QR code finds the page', async () => {
    for (const number of numbers) {
      const pdf = pdfOf(first, `lockout-lo-${number}.pdf`)
      const { texts } = await printedLinks(pdf)
      expect(texts[0]?.replace(/\s+/g, ' ')).toMatch(/RCW 400.*0400-017.*0400-MAN-07.*Rev\. D.*Build check value( [0-9a-f]{4}){3}/)
      expect(await printedQr(pdf)).toBe(`LO-${number}`)
    }
  })

  test('mark every isolation point of the board on the plan, and hold every step of the page', async () => {
    const { texts } = await printedLinks(pdfOf(first, 'lockout-lo-1.pdf'))
    const said = texts.join(' ').replace(/\s+/g, ' ')
    for (const point of ['E1', 'G1', 'P1', 'P2', 'W1', 'T1', 'T2', 'C1'])
      expect([point, said.split(new RegExp(`\\b${point}\\b`)).length - 1 >= 3]).toEqual([point, true])
    expect(said).toContain('Set each to CLOSED, one after the other, as on the board: P2 HV223')
    expect(said).toContain('Wait 90 s: Compressed air with receiver.')
    expect(said).toContain('Start the machine as in')
    expect(said).toContain('Signature')
  })

  test('are equal byte for byte when they are printed again in another time zone', async () => {
    process.env.TZ = 'Pacific/Auckland'
    const second = await print('second', '--what', 'lockout')
    delete process.env.TZ
    for (const name of readdirSync(first)) expect([name, pdfOf(first, name).equals(pdfOf(second, name))]).toEqual([name, true])
  }, 900_000)
})

describe('sheets for a hand or a folder', () => {
  const read = async (out: string, name: string) => {
    const pdf = readFileSync(join(out, name))
    const { texts, letterPt } = await printedLinks(pdf)
    return { pages: texts.length, text: texts.join(' ').replace(/\s+/g, ' '), leastPt: Math.min(...letterPt.flat()), qr: await printedQr(pdf) }
  }

  test('a set-up card has every setting of its product on one page', async () => {
    const out = await print('set-up', '--what', 'set-up', '--paper', 'letter')
    expect(readdirSync(out).sort()).toEqual(['set-up-C4320.pdf', 'set-up-C6420.pdf', 'set-up-C6430.pdf'])
    const { pages, text, leastPt, qr } = await read(out, 'set-up-C4320.pdf')
    expect([pages, leastPt, qr]).toEqual([1, 9, 'C4320'])
    expect(text).toContain('From C6420: 5 of 9 settings change')
    expect(text).toMatch(/Every setting .*Handwheel A: guide width at the infeed .*312 mm/)
  }, 300_000)

  test('the record of a device has its limits, and room for readings, name and date', async () => {
    const out = await print('checkout', '--what', 'checkout', '--tag', 'PRS204')
    expect(readdirSync(out)).toEqual(['checkout-PRS204.pdf'])
    const { pages, text, leastPt, qr } = await read(out, 'checkout-PRS204.pdf')
    expect([pages, leastPt, qr]).toEqual([1, 9, 'PRS204'])
    expect(text).toMatch(/Should read .*Measured In order/)
    expect(text).toMatch(/input terminal to 0 V of the card terminal .*22\.0 to 24\.0 V; limit 11\.0 to 30\.0 V/)
    for (const line of ['Lock out before touching', 'Parts are live while you measure', 'Name', 'Date', 'Signature', 'X2:4'])
      expect(text).toContain(line)
  }, 300_000)

  test('the record of a guard door, with two channels and a lock, takes one page in the longer language on the shorter paper', async () => {
    const out = await print('guard', '--what', 'checkout', '--tag', 'GLS221', '--language', 'es', '--paper', 'letter')
    const { pages, text, leastPt, qr } = await read(out, 'checkout-GLS221.pdf')
    expect([pages, leastPt, qr]).toEqual([1, 9, 'GLS221'])
    for (const said of ['channel-1', 'channel-2', 'unlock', 'Q_UnlockLift', 'resistencia de la bobina', 'Firma']) expect(text).toContain(said)
  }, 300_000)

  test('every recovery card takes one page, and its QR code finds the alarm', async () => {
    const out = await print('alarms', '--what', 'alarms', '--paper', 'letter')
    expect(readdirSync(out).length).toBeGreaterThan(10)
    for (const name of readdirSync(out)) {
      const { pages, leastPt, qr } = await read(out, name)
      expect([name, pages, leastPt >= 9, `alarms-${qr}.pdf`]).toEqual([name, 1, true, name])
    }
  }, 300_000)

  test('the order sheet has every part once, and the heads of its columns on each page', async () => {
    const out = await print('parts', '--what', 'parts')
    const { text, leastPt, qr } = await read(out, 'parts.pdf')
    expect([leastPt, qr]).toEqual([9, 'Parts'])
    const { texts } = await printedLinks(readFileSync(join(out, 'parts.pdf')))
    expect(texts.filter((it) => !/Number\s+Description\s+Qty/.test(it))).toEqual([])
    // Parts of the option that this serial number does not have are not on it.
    const rows = readFileSync('example-machine/data/bom.csv', 'utf8')
      .split('\n')
      .filter((row) => !row.endsWith('chain-oiler'))
    const listed = rows.flatMap((row) => /^\d{4}-\d{4}/.exec(row)?.[0] ?? [])
    expect(listed.length).toBeGreaterThan(50)
    expect(listed.filter((part) => text.split(part).length !== 2)).toEqual([])
  }, 300_000)

  test('a tag that no device has is refused, and so is one with another kind of sheet', async () => {
    const refused = (...options: string[]) =>
      print('none', ...options).then(String, (error: { stderr: string; stdout: string }) => error.stderr + error.stdout)
    expect(await refused('--what', 'checkout', '--tag', 'PRS999')).toContain('no device has the tag `PRS999`')
    expect(await refused('--what', 'lockout', '--tag', 'PRS204')).toContain('--tag goes with --what checkout alone')
  }, 300_000)

  test('a sign-off sheet has a line for each lesson of its role, with what is shown to the judge', async () => {
    const out = await print('sign-off', '--what', 'sign-off')
    const { pages, text, leastPt, qr } = await read(out, 'sign-off-operator.pdf')
    expect([pages, leastPt, qr]).toEqual([1, 9, 'Operator'])
    expect(text).toMatch(/A walk round the machine Rev\. B .*Shows the three emergency stops/)
    expect(text).toMatch(/Learner .*Trainer .*Signature of the learner/)
    // More lessons than a page holds: the head of the table stands on each.
    const { texts } = await printedLinks(readFileSync(join(out, 'sign-off-trainer.pdf')))
    expect(texts.length).toBeGreaterThan(1)
    expect(texts.slice(0, -1).filter((it) => !it.replace(/\s+/g, ' ').includes('Signature of the learner'))).toEqual([])
  }, 300_000)
})

import { readFileSync } from 'node:fs'
import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { type DrawnSheet, drawPdfSheets } from '../../src/site/pdf-sheets.ts'

async function draw(name: string): Promise<{ svg: string; small: Buffer }> {
  let drawn = { svg: '', small: Buffer.of() }
  const take = ({ svg, small }: DrawnSheet) => {
    drawn = { svg, small: Buffer.from(small, 'base64') }
  }
  await drawPdfSheets(readFileSync(`tests/fixtures/drawings/${name}`), [{ page: 1, take }])
  return drawn
}

describe.each([
  ['chromium.pdf', 300, 210],
  ['libreoffice.pdf', 300.75, 210.75],
])('%s drawn for the site', (name, widthPt, heightPt) => {
  test('has the size of the page in points, and ink where the tags stand', async () => {
    const { svg, small } = await draw(name)
    const [width = 0, height = 0] = /viewBox="0 0 (\S+) (\S+)"/.exec(svg)?.slice(1).map(Number) ?? []
    expect([Math.abs(width - widthPt) < 0.1, Math.abs(height - heightPt) < 0.1]).toEqual([true, true])
    const picture = Buffer.from(/base64,([^"]+)/.exec(svg)?.[1] ?? '', 'base64')
    const scale = 2400 / width
    const darkest = async (left: number, top: number) => {
      const box = { left: Math.round(left * scale), top: Math.round(top * scale), width: Math.round(30 * scale), height: Math.round(8 * scale) }
      return Math.min(...(await sharp(picture).extract(box).greyscale().raw().toBuffer()))
    }
    expect((await sharp(picture).metadata()).width).toBe(2400)
    const { width: smallWidth = 0, height: smallHeight = 0 } = await sharp(small).metadata()
    expect([smallWidth, Math.abs(smallHeight / smallWidth - height / width) < 0.001]).toEqual([1200, true])
    // PS-101 stands from 22.5 to 54 pt, 30 to 40 pt from the top by pdftotext; 60 pt to its right nothing is drawn.
    expect(await darkest(23, 31)).toBeLessThan(40)
    expect(await darkest(110, 31)).toBe(255)
  })

  test('has the same bytes on each run', async () => expect(await draw(name)).toEqual(await draw(name)))
})

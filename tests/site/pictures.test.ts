import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { expect, test } from 'vitest'
import type { Machine } from '../../src/model/machine.ts'
import { pictureFile, writePictures } from '../../src/site/pictures.ts'

test.each([
  ['photos/lift.JPG', 'images/photos/lift.JPG.webp'],
  ['drawings/A-401.svg', 'images/drawings/A-401.svg'],
])('%s lies at %s', (path, expected) => expect(pictureFile(path)).toBe(expected))

test('a large photo is made as wide as a panel needs, the same each time; a picture that no page shows is left out', async () => {
  const dir = mkdtempSync(join(tmpdir(), 'fettle-'))
  try {
    const photo = join(dir, 'lift.png')
    await sharp({ create: { width: 4000, height: 3000, channels: 3, background: '#888' } })
      .png()
      .toFile(photo)
    const place = { file: 'a.mdx', line: 1, column: 1, endLine: 1, endColumn: 1 }
    const machine = {
      images: new Map([
        ['photos/lift.png', photo],
        ['photos/unused.png', photo],
      ]),
      references: [{ kind: 'image', id: 'photos/lift.png', place, fits: [] }],
    } satisfies Pick<Machine, 'images' | 'references'> as unknown as Machine
    await writePictures(machine, join(dir, 'one'))
    await writePictures(machine, join(dir, 'two'))
    const one = readFileSync(join(dir, 'one/images/photos/lift.png.webp'))
    const { width, format } = await sharp(one).metadata()
    expect([width, format]).toEqual([1600, 'webp'])
    expect(readFileSync(join(dir, 'two/images/photos/lift.png.webp')).equals(one)).toBe(true)
    expect(() => readFileSync(join(dir, 'one/images/photos/unused.png.webp'))).toThrow()
  } finally {
    rmSync(dir, { recursive: true, force: true })
  }
})

test('a picture that cannot be read is named, with the place that shows it', async () => {
  const dir = mkdtempSync(join(tmpdir(), 'fettle-'))
  try {
    const photo = join(dir, 'lift.png')
    writeFileSync(photo, 'no picture')
    const place = { file: 'a.mdx', line: 3, column: 9, endLine: 3, endColumn: 17 }
    const machine = {
      images: new Map([['lift.png', photo]]),
      references: [{ kind: 'image', id: 'lift.png', place, fits: [] }],
    } satisfies Pick<Machine, 'images' | 'references'> as unknown as Machine
    const broken = await writePictures(machine, join(dir, 'site'))
    expect(broken).toHaveLength(1)
    expect(broken[0]).toMatch(/^a\.mdx:3:9: the picture `lift\.png` cannot be read: /)
  } finally {
    rmSync(dir, { recursive: true, force: true })
  }
})

import { hash } from 'node:crypto'
import { copyFile, mkdir, readFile, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import sharp from 'sharp'
import type { Machine } from '../model/machine.ts'
import { type KeptFiles, keptOr } from '../source/kept-files.ts'
import { compare } from '../source/place.ts'

/** Widest that a photo is shown; a panel has 1280 px, a person may enlarge. */
const widestPx = 1600

/** Where a picture of the machine or of the shared content lies in the site. Photos become WebP, drawings stay as they are. */
export function pictureFile(path: string): string {
  return `images/${path}${/\.(png|jpe?g)$/i.test(path) ? '.webp' : ''}`
}

/** Writes the pictures that pages show, and no others. Tells which of them are broken, and where they are shown. */
export async function writePictures({ images, references }: Machine, siteDir: string, kept?: KeptFiles): Promise<string[]> {
  const shown = Map.groupBy(
    references.filter(({ kind }) => kind === 'image'),
    ({ id }) => id,
  )
  const broken: string[] = []
  for (const [path, [first]] of [...shown].sort(([a], [b]) => compare(a, b))) {
    const file = images.get(path)
    if (file === undefined) continue
    const to = join(siteDir, pictureFile(path))
    await mkdir(dirname(to), { recursive: true })
    if (!/\.(png|jpe?g)$/i.test(path)) {
      await copyFile(file, to)
      continue
    }
    try {
      const photo = await readFile(file)
      await writeFile(to, await keptOr(kept, ['photo', hash('sha256', photo)], () => shrink(photo)))
    } catch (error) {
      const place = first && `${first.place.file}:${first.place.line}:${first.place.column}: `
      broken.push(
        `${place ?? ''}the picture \`${path}\` cannot be read: ${(error instanceof Error ? error.message : String(error)).replace(/\s+/g, ' ')}`,
      )
    }
  }
  return broken
}

/** How wide and high a picture is shown at most, in px, turned as the camera was held; undefined for one that cannot be read. A drawing has a shape and no size. */
export async function pictureSize(file: string): Promise<{ widthPx: number; heightPx: number; isDrawing: boolean } | undefined> {
  try {
    const { autoOrient, format } = await sharp(file).metadata()
    return { widthPx: autoOrient.width, heightPx: autoOrient.height, isDrawing: format === 'svg' }
  } catch {
    return undefined // `writePictures` tells of it, with its place
  }
}

/** Turned as the camera was held, no wider than the panel needs, without place and owner of the camera. */
function shrink(photo: Uint8Array): Promise<Buffer> {
  return sharp(photo).rotate().resize({ width: widestPx, withoutEnlargement: true }).webp({ quality: 80 }).toBuffer()
}

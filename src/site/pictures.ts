import { copyFile, mkdir, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import sharp from 'sharp'
import type { Machine } from '../model/machine.ts'

/** Widest that a photo is shown; a panel has 1280 px, a person may enlarge. */
const widestPx = 1600

/** Where a picture of the machine or of the shared content lies in the site. Photos become WebP, drawings stay as they are. */
export function pictureFile(path: string): string {
  return `images/${path}${/\.(png|jpe?g)$/i.test(path) ? '.webp' : ''}`
}

/** Writes the pictures that pages show, and no others. */
export async function writePictures({ images, references }: Machine, siteDir: string): Promise<void> {
  const shown = new Set(references.flatMap(({ kind, id }) => (kind === 'image' ? [id] : [])))
  for (const path of [...shown].sort()) {
    const file = images.get(path)
    if (file === undefined) continue
    const to = join(siteDir, pictureFile(path))
    await mkdir(dirname(to), { recursive: true })
    if (/\.(png|jpe?g)$/i.test(path)) await writeFile(to, await shrink(file))
    else await copyFile(file, to)
  }
}

/** Turned as the camera was held, no wider than the panel needs, without place and owner of the camera. */
function shrink(file: string): Promise<Buffer> {
  return sharp(file).rotate().resize({ width: widestPx, withoutEnlargement: true }).webp({ quality: 80 }).toBuffer()
}

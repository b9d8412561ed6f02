import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** A link as a reader sees it on paper. */
export interface PrintedLink {
  /** Page on which it is printed, from 1. */
  on: number
  to: string
  /** The words inside it. */
  text: string
}

export interface PrintedPages {
  /** Page of each named place. */
  places: ReadonlyMap<string, number>
  links: readonly PrintedLink[]
  /** The words of each page. */
  texts: readonly string[]
  /** Height of the largest letters of each page, in points. */
  largestPt: readonly number[]
  /** Heights of the letters of each page, in points, each once, the least first. */
  letterPt: readonly (readonly number[])[]
  /** Width and height of each page in points, as it is read. */
  sizePt: readonly (readonly [number, number])[]
}

/** Reads a PDF as a reader does: what is printed where, and where each link leads. */
export async function printedLinks(bytes: Uint8Array): Promise<PrintedPages> {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise
  const places = new Map<string, number>()
  for (const [name, place] of (await pdf.getDestinations()) as unknown as Map<string, [never]>)
    places.set(name, (await pdf.getPageIndex(place[0])) + 1)
  const links: PrintedLink[] = []
  const texts: string[] = []
  const letterPt: number[][] = []
  const sizePt: [number, number][] = []
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number)
    const { width, height } = page.getViewport({ scale: 1 })
    sizePt.push([Math.round(width), Math.round(height)])
    const { items } = await page.getTextContent()
    const words = items.flatMap((item) =>
      'str' in item ? [{ text: item.str, x: item.transform[4] as number, y: item.transform[5] as number, width: item.width }] : [],
    )
    const heights = items.flatMap((item) => ('str' in item && item.str.trim() !== '' ? [Math.round(item.height * 10) / 10] : []))
    letterPt.push([...new Set(heights)].sort((a, b) => a - b))
    texts.push(words.map(({ text }) => text).join(' '))
    for (const { dest, rect } of (await page.getAnnotations()) as { dest?: unknown; rect: [number, number, number, number] }[]) {
      if (typeof dest !== 'string') continue
      const [left, bottom, right, top] = rect
      const inside = words.filter(({ x, y, width }) => y >= bottom - 1 && y <= top && x + width / 2 >= left - 1 && x + width / 2 <= right + 1)
      links.push({
        on: number,
        to: dest,
        text: inside
          .map(({ text }) => text)
          .join('')
          .trim(),
      })
    }
  }
  await pdf.loadingTask.destroy()
  return { places, links, texts, largestPt: letterPt.map((heights) => heights.at(-1) ?? 0), letterPt, sizePt }
}

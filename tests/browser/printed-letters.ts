import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** Letters that stand together on paper: the height of their font, and their place in points from the lower left corner. */
export interface Letters {
  text: string
  pt: number
  x: number
  y: number
}

/** What is printed on each page of a PDF, in the order in which it was written. */
export async function printedLetters(bytes: Uint8Array): Promise<Letters[][]> {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise
  const pages: Letters[][] = []
  for (let number = 1; number <= pdf.numPages; number++) {
    const { items } = await (await pdf.getPage(number)).getTextContent()
    pages.push(
      items.flatMap((item) =>
        'str' in item && item.str.trim() !== ''
          ? [{ text: item.str.trim(), pt: Math.round(item.height * 10) / 10, x: item.transform[4] as number, y: item.transform[5] as number }]
          : [],
      ),
    )
  }
  await pdf.loadingTask.destroy()
  return pages
}

import { expect, test } from 'vitest'
import { type PrintedDocument, printFaults } from '../../src/print/print-faults.ts'

const sound: PrintedDocument = {
  html: '<article class="kind-part" id="p1"><a class="ref" href="#p2">LO-2</a></article><article class="kind-lockout" id="p2"></article><div hidden><a href="#p1"></a></div>',
  total: 9,
  pages: new Map([
    ['p1', 4],
    ['p2', 7],
  ]),
  linked: new Map([['p2', 1]]),
  title: 'Crate washer',
  language: 'en',
  isTagged: true,
  outline: 3,
  lostPictures: [],
  missingGlyphs: [],
  isInSize: true,
}
const expected = { ids: ['p1', 'p2'], language: 'en' }

test.each<[string, Partial<PrintedDocument>, string[]]>([
  ['nothing', {}, []],
  ['a link over two lines, which is two in a PDF', { linked: new Map([['p2', 2]]) }, []],
  ['a link', { linked: new Map() }, ['page 4: the link to `p2` is not in the PDF']],
  ['a place, told once', { pages: new Map([['p1', 4]]) }, ['the place `p2` has no page']],
  ['a picture', { lostPictures: [{ file: 'images/a.svg', article: 'p2' }] }, ['page 7: the picture `images/a.svg` could not be loaded']],
  ['a character', { missingGlyphs: [3] }, ['page 3: no font of this computer has one of its characters']],
  [
    'the size of its letters',
    { isInSize: false },
    ['something is wider or higher than its page, so that every letter is printed smaller: look for a table of many columns or a long name'],
  ],
  ['the language', { language: '' }, ['the PDF is in ``, not in `en`']],
  ['title, tags and outline', { title: '', isTagged: false, outline: 0 }, ['the PDF has no title', 'the PDF has no tags', 'the PDF has no outline']],
])('a PDF that lost %s', (_, lost, faults) => expect(printFaults({ ...sound, ...lost }, expected)).toEqual(faults))

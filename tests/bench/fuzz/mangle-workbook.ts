import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from 'fflate'
import type { Random } from '../random.ts'
import { mangled, mangledBytes } from './mangle.ts'

type Parts = Record<string, Uint8Array>

/** Pieces of SpreadsheetML that a reader must bear anywhere. */
const pieces = [
  '<c r="A1" t="s"><v>0</v></c>',
  '<c r="A2" t="s"><v>99999</v></c>',
  '<c r="A2" t="s"><v>-1</v></c>',
  '<c r="XFD1048576"><v>1</v></c>',
  '<c r="ZZZ9999999"><v>1</v></c>',
  '<c r="B2" t="e"><v>#REF!</v></c>',
  '<c r="B2" t="b"><v>1</v></c>',
  '<c r="B2" t="d"><v>2026-02-30</v></c>',
  '<c r="B2" t="inlineStr"><is><t>PS-101</t></is></c>',
  '<c r="B2" t="str"><f>A1&amp;"x"</f><v>PS-101</v></c>',
  '<c s="4000"><v>1e309</v></c>',
  '<c><v>NaN</v></c>',
  '<row r="1048576" hidden="1"></row>',
  '<row r="0"></row>',
  '<row>',
  '</row>',
  '</sheetData><sheetData>',
  '<mergeCells><mergeCell ref="A1:XFD1048576"/></mergeCells>',
  '<mergeCell ref="B3:A1"/>',
  '<mergeCell ref="A2:A9"/>',
  '<cols><col min="1" max="16384" hidden="1"/></cols>',
  '<si><t xml:space="preserve"> PS-101 </t></si>',
  '<si><r><t>PS</t></r><rPh sb="0" eb="1"><t>x</t></rPh></si>',
  '<numFmt numFmtId="164" formatCode="0000&quot;-&quot;00"/>',
  '<numFmt numFmtId="164" formatCode="[&gt;99]0;[Red]yyyy-mm;;@"/>',
  '<numFmt numFmtId="14" formatCode=""/>',
  '<xf numFmtId="164"/>',
  '<xf numFmtId="x"/>',
  '<workbookPr date1904="1"/>',
  '<sheet name="" sheetId="1" r:id="rId1"/>',
  '<sheet name="&#10;" sheetId="9" state="hidden" r:id="rId2"/>',
  '<Relationship Id="rId1" Type="x/worksheet" Target="../../../etc"/>',
  '<!DOCTYPE a [<!ENTITY b "c">]>',
  '&b;',
  '_x000D_',
  '<![CDATA[',
  '\u0000',
]

type Damage = (bytes: Uint8Array, random: Random) => Uint8Array

const repacked =
  (change: (parts: Parts, random: Random) => void): Damage =>
  (bytes, random) => {
    const parts = unzipSync(bytes)
    change(parts, random)
    return pack(parts)
  }

/** The same bytes in every run: a zip holds a date. */
const pack = (parts: Zippable) => zipSync(parts, { mtime: '1990-01-01T12:00:00' })

/** A part: in two of three the cells or texts, which hold the list. */
function pickPart(parts: Parts, random: Random): string {
  const names = Object.keys(parts)
  return random.pick(random.below(3) === 0 ? names : names.filter((name) => /sheet\d+\.xml$|sharedStrings|styles/.test(name))) ?? names[0] ?? ''
}

const damages: readonly Damage[] = [
  mangledBytes,
  (bytes, random) => bytes.slice(0, random.below(bytes.length + 1)),
  // The directory of a zip is at its end.
  (bytes, random) => {
    const out = bytes.slice()
    for (let left = 1 + random.below(4); left > 0; left--) out[Math.max(0, out.length - 1 - random.below(700))] = random.below(256)
    return out
  },
  (bytes, random) => new Uint8Array([...bytes, ...bytes.slice(random.below(bytes.length + 1))]),
  (bytes) => pack(Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, [part, { level: 0 }]]))),
  repacked((parts, random) => {
    delete parts[pickPart(parts, random)]
  }),
  repacked((parts, random) => {
    parts[pickPart(parts, random)] = new Uint8Array()
  }),
  repacked((parts, random) => {
    const [one, two] = [pickPart(parts, random), pickPart(parts, random)]
    const [first, second] = [parts[one], parts[two]]
    if (first && second) Object.assign(parts, { [one]: second, [two]: first })
  }),
  repacked((parts, random) => {
    const name = pickPart(parts, random)
    const part = parts[name]
    if (part) parts[name] = mangledBytes(part, random)
  }),
]

const inParts: Damage = repacked((parts, random) => {
  for (let left = 1 + random.below(2); left > 0; left--) {
    const name = pickPart(parts, random)
    const xml = strFromU8(parts[name] ?? new Uint8Array())
    parts[name] = strToU8(random.below(2) === 0 ? mangled(xml, random) : withPieces(xml, random))
  }
})

/** The XML with pieces between its elements, or an attribute or value changed. */
function withPieces(xml: string, random: Random): string {
  let out = xml
  for (let left = 1 + random.below(3); left > 0; left--) {
    const found = random.pick([...out.matchAll(random.below(2) === 0 ? /(?<=>)/g : /(?<==")[^"]*(?=")|(?<=>)[^<]+(?=<)/g)])
    if (!found) continue
    const put =
      found[0] === ''
        ? random.pick(pieces)
        : random.pick([
            '0',
            '-1',
            '1',
            '65536',
            '1e309',
            's',
            'inlineStr',
            'XFD1048576',
            'A1:XFD1048576',
            '',
            ' ',
            '164',
            '22',
            '44000.5',
            'xl/workbook.xml',
          ])
    out = out.slice(0, found.index) + (put ?? '') + out.slice(found.index + found[0].length)
  }
  return out
}

/** The workbook damaged as a zip or, two times in three, inside the XML of its parts. */
export function mangledWorkbook(bytes: Uint8Array, random: Random): Uint8Array {
  const damage = random.below(3) === 0 ? random.pick(damages) : inParts
  try {
    return (damage ?? inParts)(bytes, random)
  } catch {
    // An earlier damage has made it a zip that cannot be opened.
    return mangledBytes(bytes, random)
  }
}

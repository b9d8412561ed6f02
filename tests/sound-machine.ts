import { judge, type Verdict } from '../src/check/judge.ts'
import { rules } from '../src/check/rules.ts'
import { checkLoaded } from '../src/check/run.ts'
import { everyRule } from '../src/cli/every-rule.ts'
import { diskFolder, memoryFolder } from '../src/load/folder.ts'
import { loadMachine } from '../src/load/load-machine.ts'
import type { Loaded } from '../src/load/loaded.ts'
import { type DrawingTexts, readDrawingTexts } from '../src/load/pdf/drawing-texts.ts'
import type { PdfText } from '../src/load/pdf/pdf-reader.ts'

/** Path to text of the files that differ from the sound machine; undefined takes a file away. */
export type Changes = ReadonlyMap<string, string | undefined>

const shared = 'content/'

/** The sound machine of `fixtures/` with some files changed. Files under `content/` are shared content. */
export function loadSound(changes: Changes = new Map(), drawingTexts?: DrawingTexts): Loaded {
  const machine = soundFiles()
  const content = new Map<string, string>()
  for (const [path, text] of changes) {
    if (text === undefined) machine.delete(path)
    else if (path.startsWith(shared)) content.set(path.slice(shared.length), text)
    else machine.set(path, text)
  }
  return loadMachine(memoryFolder(machine), memoryFolder(content, shared), undefined, drawingTexts)
}

/** Each PDF of the cases is read once. */
const pdfTexts = new Map<string, PdfText>()

/** The same, with the drawing PDFs among the changed files read first. */
export async function loadSoundWithPdfs(changes: Changes): Promise<Loaded> {
  const pdfs = new Map([...changes].flatMap(([path, text]) => (text !== undefined && path.endsWith('.pdf') ? [[path, text] as const] : [])))
  const cache = { get: (key: string) => pdfTexts.get(key), set: (key: string, text: PdfText) => void pdfTexts.set(key, text) }
  return loadSound(changes, await readDrawingTexts(memoryFolder(pdfs), cache))
}

function soundFiles(): Map<string, string | Uint8Array> {
  const folder = diskFolder('tests/fixtures/sound-machine', '')
  return new Map(folder.list().map((path) => [path, folder.read(path)]))
}

/** What the check comes to on the first of June 2026, with some of the rules taken away. */
export function judgeLoaded(loaded: Loaded, active = rules): Verdict {
  const whole = !loaded.findings.some(({ severity }) => severity === 'error')
  const today = '2026-06-01'
  return judge(checkLoaded(loaded, active, today), { ...loaded, known: everyRule, today, whole })
}

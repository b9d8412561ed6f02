/** A piece of text where a page draws it: the start of its baseline, in points from the top left of the sheet as it is shown. */
export interface TextRun {
  text: string
  x: number
  y: number
  /** Length along the baseline, in points. */
  length: number
  fontSize: number
  /** Clockwise from horizontal, in degrees. */
  angleDeg: number
}

/** A text of a sheet with the middle of its place, in points. */
export interface PlacedText {
  text: string
  x: number
  y: number
  fontSize: number
  angleDeg: number
}

/** A run along its own line: `along` the baseline and `across` it, in points. */
interface LaidRun extends TextRun {
  along: number
  across: number
}

const sameBaselineEm = 0.25
const joinedGapEm = 0.3
const widestBlankEm = 0.6
const widestLetterGapEm = 1.5

/**
 * Joins the runs that a reader sees as one text: the same angle, baselines within 0.25 em, less than 0.3 em between
 * them; also letters set apart in even steps. Limits tried on sheets of several drawing programs.
 */
export function joinRuns(runs: readonly TextRun[]): PlacedText[] {
  const byAngle = Map.groupBy(runs.filter(isDrawn).map(laid), ({ angleDeg }) => ((Math.round(angleDeg) % 360) + 360) % 360)
  return [...byAngle.values()].flatMap((turned) => linesOf(turned).flatMap(textsOfLine))
}

/** A blank counts where it is no wider than a blank: a wide one is the distance between two texts. */
const isDrawn = ({ text, length, fontSize }: TextRun) => fontSize > 0 && (text.trim() !== '' || (text !== '' && length < widestBlankEm * fontSize))

function laid(run: TextRun): LaidRun {
  const radians = (run.angleDeg * Math.PI) / 180
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)]
  return { ...run, along: run.x * cos + run.y * sin, across: run.y * cos - run.x * sin }
}

function linesOf(runs: readonly LaidRun[]): LaidRun[][] {
  const lines: LaidRun[][] = []
  for (const run of runs.toSorted((a, b) => a.across - b.across || a.along - b.along)) {
    const first = lines.at(-1)?.[0]
    if (first && run.across - first.across < sameBaselineEm * Math.min(first.fontSize, run.fontSize)) lines.at(-1)?.push(run)
    else lines.push([run])
  }
  return lines.map((line) => line.sort((a, b) => a.along - b.along))
}

const gapEm = (before: LaidRun, run: LaidRun) => (run.along - before.along - before.length) / Math.min(before.fontSize, run.fontSize)

function textsOfLine(line: readonly LaidRun[]): PlacedText[] {
  const texts: LaidRun[] = []
  for (const run of line) {
    const before = texts.at(-1)
    const gap = before ? gapEm(before, run) : Number.POSITIVE_INFINITY
    // Some programs draw a text twice, a little apart, to make it bold.
    if (before && before.text === run.text && Math.abs(run.along - before.along) < joinedGapEm * run.fontSize) continue
    if (before && Math.abs(gap) < joinedGapEm) texts[texts.length - 1] = joined(before, run, '')
    else if (run.text.trim() !== '') texts.push(run)
  }
  return spacedLettersJoined(texts).flatMap(placed)
}

function joined(before: LaidRun, run: LaidRun, between: string): LaidRun {
  return { ...before, text: before.text + between + run.text, length: run.along + run.length - before.along }
}

/** Three or more single letters in even steps are one word: `P R S 1 0 4`. */
function spacedLettersJoined(runs: readonly LaidRun[]): LaidRun[] {
  const texts: LaidRun[] = []
  for (let start = 0; start < runs.length; ) {
    const end = endOfSpacedLetters(runs, start)
    const letters = end - start >= 3 ? runs.slice(start, end) : runs.slice(start, start + 1)
    texts.push(letters.reduce((before, run) => joined(before, run, '')))
    start += letters.length
  }
  return texts
}

function endOfSpacedLetters(runs: readonly LaidRun[], start: number): number {
  let end = start
  let step: number | undefined
  for (let before: LaidRun | undefined; end < runs.length; end++) {
    const run = runs[end]
    if (run?.text.trim().length !== 1) break
    const gap: number = before ? gapEm(before, run) : 0
    if (before && (gap > widestLetterGapEm || (step !== undefined && Math.abs(gap - step) > 0.1))) break
    if (before) step ??= gap
    before = run
  }
  return end
}

function placed(run: LaidRun): PlacedText[] {
  const trimmed = run.text.replace(/\s+/g, ' ').trim()
  const text = /^\S( \S){2,}$/.test(trimmed) ? trimmed.replaceAll(' ', '') : trimmed
  if (text === '') return []
  const radians = (run.angleDeg * Math.PI) / 180
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)]
  const [middle, raised] = [run.length / 2, run.fontSize * 0.35]
  return [
    {
      text,
      x: toHundredths(run.x + middle * cos + raised * sin),
      y: toHundredths(run.y + middle * sin - raised * cos),
      fontSize: toHundredths(run.fontSize),
      angleDeg: toHundredths(run.angleDeg),
    },
  ]
}

const toHundredths = (value: number) => Math.round(value * 100) / 100

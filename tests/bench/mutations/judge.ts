import type { Finding } from '../../../src/source/finding.ts'
import { checkFiles, type Files } from '../example.ts'
import { seededRandom } from '../random.ts'
import { cellKinds } from './cells.ts'
import { checkoutKinds } from './checkouts.ts'
import { folderKinds } from './folders.ts'
import { jobKinds } from './jobs.ts'
import { lessonKinds } from './lessons.ts'
import { lockoutKinds } from './lockouts.ts'
import { messageKinds } from './messages.ts'
import type { Mistake } from './mistake.ts'
import { nameKinds } from './names.ts'
import { pageKinds, readingKinds } from './pages.ts'
import { readExample } from './read-example.ts'
import { rowKinds } from './rows.ts'
import { siblingKinds, valueKinds } from './values.ts'

/** What the check says about one mistake. */
export interface Verdict {
  mistake: Mistake
  /** Findings that the machine without the mistake does not have. */
  findings: readonly Finding[]
  /** A finding, or a place that it shows, stands on a changed line or at an owner of what is missing. */
  atItsLine: boolean
}

const kinds = [
  ...nameKinds,
  ...rowKinds,
  ...cellKinds,
  ...valueKinds,
  ...pageKinds,
  ...folderKinds,
  ...readingKinds,
  ...siblingKinds,
  ...messageKinds,
  ...lockoutKinds,
  ...jobKinds,
  ...checkoutKinds,
  ...lessonKinds,
]

/** The mistakes of a seed, each one alone over the same machine. The same seed gives the same mistakes. */
export function makeMistakes(files: Files, seed: number): Mistake[] {
  const example = readExample(files)
  const random = seededRandom(seed)
  return kinds.flatMap((kind) => [...kind.make(example, random)].map((draft): Mistake => ({ ...draft, kind: kind.name })))
}

/** A function that judges mistakes over files whose own findings do not count. */
export function judgeOver(files: Files): (mistake: Mistake) => Verdict {
  const before = new Set(checkFiles(files).findings.map(keyOf))
  return (mistake) => {
    const findings = checkFiles(mistake.files).findings.filter((finding) => !before.has(keyOf(finding)))
    const lines = new Set(mistake.at.map(({ file, line }) => `${file}:${line}`))
    const places = findings.flatMap(({ place, related = [] }) => [place, ...related.map((it) => it.place)])
    return { mistake, findings, atItsLine: places.some(({ file, line }) => lines.has(`${file}:${line}`)) }
  }
}

/** Lines move when a row is left out, so the place is not part of it. */
const keyOf = ({ rule, message, place }: Finding) => [rule, place.file, message].join('\n')

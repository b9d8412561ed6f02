import { textOf } from '../example.ts'
import { type Kind, linesOf, type Piece, replaced } from './mistake.ts'
import type { Example } from './read-example.ts'

const lockoutsOf = ({ files }: Example) => [...files.keys()].filter((path) => /^pages\/lockout\/[^.]+\.mdx$/.test(path))

const translationsOf = ({ files }: Example) => [...files.keys()].filter((path) => /^pages\/lockout\/[^.]+\.es\.mdx$/.test(path))

/** Takes out each place that matches; it may be reported anywhere in the file that it was taken from, or in the lockouts. */
function eachLeftOut(name: string, filesOf: (example: Example) => readonly string[], pattern: RegExp): Kind {
  return {
    name,
    count: Number.POSITIVE_INFINITY,
    *make(example) {
      for (const file of filesOf(example)) {
        for (const { index, 0: value } of textOf(example.files, file).matchAll(pattern)) {
          const piece: Piece = { file, start: index, end: index + value.length, value }
          const draft = replaced(example.files, piece, '', `${value.trim().slice(0, 60).replace(/\s+/g, ' ')} left out`)
          yield { ...draft, at: [file, 'data/hazards.yaml', ...lockoutsOf(example)].flatMap((path) => linesOf(draft.files, path)) }
        }
      }
    },
  }
}

const energy = () => ['data/energy.yaml']

/** The safe position of a point and the one in service change places, point after point. */
const exchangedPositions: Kind = {
  name: 'lockout: safe position and service exchanged',
  count: Number.POSITIVE_INFINITY,
  *make({ files }) {
    for (const match of textOf(files, 'data/energy.yaml').matchAll(/^ {4}safe: (.*)\n {4}service: (.*)\n/gm)) {
      const [value, safe, service] = match
      const piece: Piece = { file: 'data/energy.yaml', start: match.index, end: match.index + value.length, value }
      yield replaced(files, piece, `    safe: ${service}\n    service: ${safe}\n`, `${safe} and ${service} exchanged`)
    }
  },
}

/** Every element of every lockout of the example, one after another: none is drawn by lot. */
export const lockoutKinds: readonly Kind[] = [
  exchangedPositions,
  eachLeftOut(
    'lockout: key of its head left out',
    lockoutsOf,
    /^(?:title|number|energy|areas|purpose|scope|authorised|responsible|enforcement): .*\n/gm,
  ),
  eachLeftOut('lockout: energy source left out of its list', lockoutsOf, /(?<=^energy: \[(?:.*, )?)[a-z-]+, |(?<=^energy: \[.*), [a-z-]+(?=\])/gm),
  eachLeftOut('lockout: shut-down left out', lockoutsOf, /^<Steps phase="shut-down">\n[\s\S]*?^<\/Steps>\n/gm),
  eachLeftOut('lockout: step of a translation left out', translationsOf, /^ {2}<Step[ >][\s\S]*?<\/Step>\n/gm),
  eachLeftOut('lockout: safety message left out', lockoutsOf, /^<(?:Include caution=|Safety hazard=)[^>]*(?:\/>|>\n[\s\S]*?^<\/Safety>)\n\n?/gm),
  eachLeftOut(
    'lockout: key of an isolation point left out',
    energy,
    /^ {4}(?:tag|device|safe|service|place|hardware|lockable): .*\n(?=(?: {4}[^\n]*\n)*(?:\n {2}- point|\nsources:|$))/gm,
  ),
  eachLeftOut(
    'lockout: key of an energy source left out',
    energy,
    /^ {4}(?:form|name|magnitude|areas|hazards|isolation|stored|reaccumulates): .*\n/gm,
  ),
  eachLeftOut('lockout: hazard, release or proof left out', energy, /^ {4}(?:hazard|dissipate|watch|verify):(?: .*\n|\n(?: {6}.*\n)+)/gm),
  eachLeftOut('lockout: way, method or reading of a proof left out', energy, /^ {6}(?:by|method|expect|noVoltageTest):(?: .*\n|\n(?: {8}.*\n)+)/gm),
]

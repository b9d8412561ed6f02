import type { Machine, NamedThing, Reference } from '../../model/machine.ts'
import { namesOf } from '../names.ts'
import type { Rule } from '../rule.ts'

export const notFitted: Rule = {
  id: 'not-fitted',
  severity: 'error',
  summary: 'A page or row that is kept names something that this unit does not have.',
  why: 'The reader is sent to a device, part or page that is not on this machine.',
  source: 'house rule',
  guards: 'build',

  *check(machine) {
    const { references, absent, options } = machine
    const named = [...references, ...bareReferences(machine)]
    const present = new Map<NamedThing, Set<string>>()
    for (const { kind, id, place, page } of named) {
      const gone = absent.get(`${kind}:${id}`)
      if (gone?.reason !== 'left-out') continue
      // An option that nobody declared is reported where it stands.
      if (gone.fits.some((option) => !options.has(option))) continue
      // Two rows may share a name, one for each option.
      const names = present.get(kind) ?? namesOf(machine, kind)
      present.set(kind, names)
      if (names.has(id)) continue
      const [option] = gone.fits
      const kept = gone.fits.map((it) => `\`${it}\``).join(', ')
      yield {
        message: `\`${id}\` is named where it is not fitted`,
        place,
        related: [{ label: option ? `it is kept for ${kept} only` : 'it fits no device of this unit', place: gone.place }],
        help: advice(option, page !== undefined),
      }
    }
  },
}

/** What the words of a page or of the data name without an element. */
function bareReferences(machine: Machine): Pick<Reference, 'kind' | 'id' | 'place' | 'page'>[] {
  const tags = machine
    .bareTags()
    .flatMap(({ mention, prose }) => (mention.tag === undefined ? [] : [{ kind: 'tag' as const, id: mention.tag, mention, prose }]))
  const numbers = machine.bareNumbers().flatMap(({ mention, prose }) => {
    const [kind, ...others] = mention.kinds
    return mention.known && kind !== undefined && others.length === 0 ? [{ kind, id: mention.written, mention, prose }] : []
  })
  return [...tags, ...numbers].map(({ kind, id, mention: { start, end }, prose: { page, language, place } }) => ({
    kind,
    id,
    place: place(start, end),
    ...(page ? { page: { page, language } } : {}),
  }))
}

function advice(option: string | undefined, onPage: boolean): string {
  if (option === undefined) return 'remove the reference, or give the page an option under `fits`'
  if (!onPage) return `give the row \`${option}\` under \`fits\` too, or take the name out of it`
  return `put it in \`<Fitted option="${option}">\`, or give the page \`fits: [${option}]\``
}

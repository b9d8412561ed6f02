import type { NamedThing } from './machine.ts'
import type { Collection } from './schema/pages.ts'

const claim = { 'withoutLockout.energy': 'energy', 'withoutLockout.protectedBy': 'tag' } as const

/** Which values of a page's frontmatter name something: `callouts.part` is `part` of each item of `callouts`, or of it alone. */
export const pageReferences: Record<Collection, Readonly<Record<string, NamedThing>>> = {
  components: { fits: 'option', tags: 'tag' },
  lessons: {
    fits: 'option',
    tags: 'tag',
    needs: 'lesson',
    needsSignedOff: 'lesson',
    roles: 'role',
    'signOff.by': 'role',
    'covers.tags': 'tag',
    'covers.lockouts': 'lockout',
    'covers.alarms': 'alarm',
    'covers.pages': 'page',
    'outputs.tags': 'tag',
  },
  lockout: { fits: 'option', energy: 'energy', areas: 'area' },
  alarms: { fits: 'option', alarm: 'alarm', lockout: 'lockout', ...claim, 'outputs.tags': 'tag' },
  procedures: { fits: 'option', tags: 'tag', lockout: 'lockout', ...claim, 'outputs.tags': 'tag' },
  parts: { fits: 'option', figure: 'image', 'callouts.part': 'part' },
  front: { fits: 'option' },
  cautions: {},
}

import type { NamedThing } from './machine.ts'
import type { Collection } from './schema/pages.ts'

/** Which values of a page's frontmatter name something: `callouts.part` is `part` of each item of `callouts`. */
export const pageReferences: Record<Collection, Readonly<Record<string, NamedThing>>> = {
  components: { fits: 'option', tags: 'tag' },
  lessons: { fits: 'option', tags: 'tag', needs: 'lesson', roles: 'role' },
  lockout: { fits: 'option', energy: 'energy', areas: 'area' },
  alarms: { fits: 'option', alarm: 'alarm', lockout: 'lockout' },
  procedures: { fits: 'option', tags: 'tag', lockout: 'lockout' },
  parts: { fits: 'option', figure: 'image', 'callouts.part': 'part' },
  front: { fits: 'option' },
  cautions: {},
}

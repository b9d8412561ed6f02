/** 0 none, 1 knows it, 2 does it under supervision, 3 does it alone, 4 can train others. Common practice. */
export type Level = 0 | 1 | 2 | 3 | 4
export const trainerLevel = 4

/** A skill that a team needs. */
export interface NeededSkill {
  readonly id: string
  /** Level that is asked for. */
  readonly level: Level
  /** How many people have to have it at that level; 1 where nothing is said. */
  readonly people?: number
}

export interface SkilledPerson {
  readonly person: string
  /** Level by skill; a skill that is not named is at level 0. */
  readonly levels: ReadonlyMap<string, Level>
}

export interface SkillCover {
  readonly skill: string
  /** Who has the level that is asked for. */
  readonly able: readonly string[]
  /** The one on whom it rests alone. */
  readonly singlePoint?: string
  /** Who can train others in it. */
  readonly trainers: readonly string[]
  /** How many people are missing. */
  readonly tooFew: number
}

/** Levels that a person lacks of what is asked for. */
export function gapOf(skill: Pick<NeededSkill, 'id' | 'level'>, { levels }: SkilledPerson): number {
  return Math.max(0, skill.level - (levels.get(skill.id) ?? 0))
}

/** Per skill who has it, on whom it rests alone, who can teach it, and how many people are missing. */
export function coverOf(skills: readonly NeededSkill[], team: readonly SkilledPerson[]): SkillCover[] {
  return skills.map((skill) => {
    const able = team.filter((it) => gapOf(skill, it) === 0).map(({ person }) => person)
    const [only] = able
    const trainers = team.filter(({ levels }) => levels.get(skill.id) === trainerLevel).map(({ person }) => person)
    const single = only !== undefined && able.length === 1 ? { singlePoint: only } : {}
    return { skill: skill.id, able, ...single, trainers, tooFew: Math.max(0, (skill.people ?? 1) - able.length) }
  })
}

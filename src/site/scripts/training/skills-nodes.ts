import type { TrainingRecord } from '../../../training/record.ts'
import { type SkillLesson, skillLevels } from '../../../training/skill-levels.ts'
import { coverOf, gapOf, type Level, type NeededSkill, type SkilledPerson } from '../../../training/skills.ts'
import type { PlanningRole, PlanningSheet, PlanningSkill } from '../../training/planning-sheet.ts'
import { fill } from '../../words/fill.ts'
import type { LearningWords } from '../../words/learning.ts'
import type { PlanningWords } from '../../words/planning.ts'
import { element } from '../dom.ts'
import { type Cell, tableNode } from './table-node.ts'
import { today } from './training-page.ts'

interface Team {
  sheet: PlanningSheet
  /** Whose needs the levels are held against. */
  role: PlanningRole
  people: ReadonlyMap<string, string>
  records: readonly TrainingRecord[]
  words: PlanningWords & LearningWords
}

/** Level that is asked of a skill where the role asks for none: does it alone. */
const usualLevel = 3

/** Who is at which level of each skill, what is lacking, on whom a skill rests alone, and who can teach it. */
export function skillsNodes(team: Team): HTMLElement[] {
  const { sheet, role, people, words } = team
  if (people.size === 0) return [element('p', { className: 'hint', text: words.matrixNobody })]
  const skilled = skilledPeople(team)
  const headings = [words.matrixPerson, ...sheet.skills.map((skill) => headingOf(skill, role, words))]
  const rows = skilled.map((person): Cell[] => [
    { text: people.get(person.person) ?? person.person, note: people.get(person.person) === person.person ? undefined : person.person },
    ...sheet.skills.map((skill) => levelCell(skill, role, person, words)),
  ])
  const foot: Cell[] = [{ text: words.matrixTeam }, ...coverCells(team, skilled)]
  return [tableNode({ headings, rows: [...rows, foot] })]
}

function skilledPeople({ sheet, people, records }: Team): SkilledPerson[] {
  const levels = sheet.skills.map((skill) => {
    const lessons = skill.lessons.flatMap((id): SkillLesson[] => {
      const lesson = sheet.lessons.find(({ taught }) => taught.id === id)
      return lesson ? [{ ...lesson.taught, ...(isLevel(lesson.level) ? { level: lesson.level } : {}) }] : []
    })
    return [skill.id, skillLevels({ lessons, records, today: today() })] as const
  })
  return [...people.keys()].map((person) => ({ person, levels: new Map(levels.map(([id, byPerson]) => [id, byPerson.get(person) ?? 0])) }))
}

function headingOf({ id, name }: PlanningSkill, role: PlanningRole, words: PlanningWords): string {
  const level = role.needs[id]
  return level === undefined ? name : `${name} · ${fill(words.matrixNeeds, { role: role.name, level })}`
}

function levelCell({ id }: PlanningSkill, role: PlanningRole, person: SkilledPerson, words: Team['words']): Cell {
  const level = person.levels.get(id) ?? 0
  const needed = role.needs[id]
  const gap = isLevel(needed) ? gapOf({ id, level: needed }, person) : 0
  return {
    text: level === 0 ? words.matrixNone : words[`skillLevel_${level}`],
    note: gap > 0 ? fill(words.matrixLacks, { count: gap }) : undefined,
    className: gap > 0 ? 'matrix-gap' : 'matrix-level',
  }
}

function coverCells({ sheet, role, people, words }: Team, skilled: readonly SkilledPerson[]): Cell[] {
  const needed = sheet.skills.map(({ id, people: count }): NeededSkill => {
    const level = role.needs[id]
    return { id, level: isLevel(level) ? level : usualLevel, ...(count === undefined ? {} : { people: count }) }
  })
  const called = (id: string) => people.get(id) ?? id
  return coverOf(needed, skilled).map(({ able, singlePoint, trainers, tooFew }, index) => ({
    className: 'matrix-cover',
    text: fill(words.matrixAble, { level: needed[index]?.level ?? usualLevel, count: able.length }),
    note: [
      ...(tooFew > 0 ? [fill(words.matrixFew, { count: tooFew })] : []),
      ...(singlePoint === undefined ? [] : [fill(words.matrixSingle, { person: called(singlePoint) })]),
      trainers.length === 0 ? words.matrixNoTrainer : fill(words.matrixTrainers, { people: trainers.map(called).join(', ') }),
    ].join('. '),
  }))
}

const isLevel = (level: number | undefined): level is Level => level !== undefined && [0, 1, 2, 3, 4].includes(level)

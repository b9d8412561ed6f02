import type { Rule } from './rule.ts'
import { prerequisiteCycle } from './rules/prerequisite-cycle.ts'
import { sensorWithoutLesson } from './rules/sensor-without-lesson.ts'
import { unknownLesson } from './rules/unknown-lesson.ts'
import { unknownRole } from './rules/unknown-role.ts'
import { unknownSkill } from './rules/unknown-skill.ts'

/** The rules about lessons, roles and what they ask for. A new one is one line here. */
export const trainingRules: readonly Rule[] = [prerequisiteCycle, sensorWithoutLesson, unknownLesson, unknownRole, unknownSkill]

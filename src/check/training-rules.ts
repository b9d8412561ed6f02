import type { Rule } from './rule.ts'
import { answerWithoutReason } from './rules/answer-without-reason.ts'
import { dutyWithoutLesson } from './rules/duty-without-lesson.ts'
import { implausibleMinutes } from './rules/implausible-minutes.ts'
import { incompleteAssessment } from './rules/incomplete-assessment.ts'
import { lessonChanged } from './rules/lesson-changed.ts'
import { lessonForNobody } from './rules/lesson-for-nobody.ts'
import { lessonHistory } from './rules/lesson-history.ts'
import { lessonLongerThanSession } from './rules/lesson-longer-than-session.ts'
import { lockoutWithoutTraining } from './rules/lockout-without-training.ts'
import { prerequisiteCycle } from './rules/prerequisite-cycle.ts'
import { questionsDifferInTranslation } from './rules/questions-differ-in-translation.ts'
import { sensorWithoutLesson } from './rules/sensor-without-lesson.ts'
import { sequenceAgainstNeeds } from './rules/sequence-against-needs.ts'
import { signOffNeverGiven } from './rules/sign-off-never-given.ts'
import { skillNeverReached } from './rules/skill-never-reached.ts'
import { unknownLesson } from './rules/unknown-lesson.ts'
import { unknownRole } from './rules/unknown-role.ts'
import { unknownSkill } from './rules/unknown-skill.ts'
import { unsoundQuestion } from './rules/unsound-question.ts'

/** The rules about lessons, roles and what they ask for. A new one is one line here. */
export const trainingRules: readonly Rule[] = [
  answerWithoutReason,
  dutyWithoutLesson,
  implausibleMinutes,
  incompleteAssessment,
  lessonChanged,
  lessonForNobody,
  lessonHistory,
  lessonLongerThanSession,
  lockoutWithoutTraining,
  prerequisiteCycle,
  questionsDifferInTranslation,
  sensorWithoutLesson,
  sequenceAgainstNeeds,
  signOffNeverGiven,
  skillNeverReached,
  unknownLesson,
  unknownRole,
  unknownSkill,
  unsoundQuestion,
]

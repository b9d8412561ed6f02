/** The words of a training plan: of the planning page, of its papers and of `fettle train`. */
const en = {
  planFor: 'Training plan: {role}',
  planSession: 'Session {number}',
  planDay: 'day {day}',
  planQuoted: '“{title}”',
  planAfter: 'after {lessons}',
  planSignedOff: '{lesson}, signed off',
  planBySequence: 'part of “{sequence}”',
  planBySkill: 'for “{skill}”, level {level}',
  planByRole: 'for every {role}',
  planByNeed: '“{lesson}” needs it',
  planCount: '{lessons} in {sessions} of at most {limit} minutes. {minutes} minutes in all.',
  planLessons: '{count} lessons',
  planLessonsOne: '1 lesson',
  planSessions: '{count} sessions',
  planSessionsOne: '1 session',
  planOptimal: 'No plan has fewer sessions.',
  planBound: 'No shorter plan was found; any plan has at least {bound}.',
  planDone: 'Done already: {lessons}.',
  planNothing: 'Nothing is left to take.',
  planNoLessons: 'This role is asked to take no lesson.',
  planTooLong: '“{lesson}” takes {minutes} minutes. A session has {limit}.',
}

export type PlanningWords = { readonly [K in keyof typeof en]: string }

const es: PlanningWords = {
  planFor: 'Plan de formación: {role}',
  planSession: 'Sesión {number}',
  planDay: 'día {day}',
  planQuoted: '«{title}»',
  planAfter: 'después de {lessons}',
  planSignedOff: '{lesson}, firmada',
  planBySequence: 'parte de «{sequence}»',
  planBySkill: 'para «{skill}», nivel {level}',
  planByRole: 'para cada {role}',
  planByNeed: 'la necesita «{lesson}»',
  planCount: '{lessons} en {sessions} de {limit} minutos como máximo. {minutes} minutos en total.',
  planLessons: '{count} lecciones',
  planLessonsOne: '1 lección',
  planSessions: '{count} sesiones',
  planSessionsOne: '1 sesión',
  planOptimal: 'Ningún plan tiene menos sesiones.',
  planBound: 'No se ha encontrado un plan más corto; todo plan tiene al menos {bound}.',
  planDone: 'Ya hechas: {lessons}.',
  planNothing: 'No queda nada por hacer.',
  planNoLessons: 'A este puesto no se le pide ninguna lección.',
  planTooLong: '«{lesson}» dura {minutes} minutos. Una sesión tiene {limit}.',
}

export { en as planningEn, es as planningEs }

const tables = new Map<string, PlanningWords>([
  ['en', en],
  ['es', es],
])

/** The words of a language; undefined for one that has none. */
export const planningWords = (language: string): PlanningWords | undefined => tables.get(language)

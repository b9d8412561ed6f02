import { expect, test } from 'vitest'
import { lessonSheetOf } from '../../src/site/training/lesson-sheet-of.ts'
import { loadSound } from '../sound-machine.ts'

const source = `---
title: Lock it
revision: B
minutes: 10
objectives: [Say who takes a lock away]
roles: [operator]
questions:
  - ask: Who takes a lock away?
    choose: one
    answers:
      - { text: Who put it there, right: true, because: Only that person knows. }
      - { text: The shift leader }
practical: [Lock the press]
history: [{ revision: A, date: '2025-01-01', change: text, what: First, hash: '11111111' }, { revision: B, date: '2026-01-01', change: text, what: Second, hash: '22222222' }]
---
Lock it.
`
const translation = (questions: string) => `---
title: Bloquear
objectives: [Decir quién retira un candado]
${questions}
---
Bloquee.
`

/** The sheet of the lesson in a language, with its translation. */
function sheet(language: string, translated?: string) {
  const files: [string, string][] = [['pages/lessons/lock.mdx', source]]
  if (translated !== undefined) files.push(['pages/lessons/lock.es.mdx', translated])
  const [machine] = loadSound(new Map(files)).machines
  const page = machine?.pages.find(({ id }) => id === 'lessons/lock')
  if (page?.collection !== 'lessons') throw new Error('the lesson was not read')
  return lessonSheetOf(page, language)
}

const spanish = `questions:
  - ask: ¿Quién retira un candado?
    answers:
      - { text: Quien lo puso, because: Solo esa persona lo sabe. }
      - { text: El jefe de turno }
practical: [Bloquear la prensa]`

test('in the language of the lesson', () => {
  expect(sheet('en')).toEqual({
    isTranslated: true,
    sheet: {
      lesson: 'lock',
      revision: 'B',
      contentHash: '22222222',
      passPercent: 100,
      questions: [
        {
          ask: 'Who takes a lock away?',
          several: false,
          answers: [
            { text: 'Who put it there', right: true, because: 'Only that person knows.' },
            { text: 'The shift leader', right: false },
          ],
        },
      ],
      practical: ['Lock the press'],
      needsSignOff: true,
    },
  })
})

test('translated: the words change, what is right does not', () => {
  const { sheet: shown, isTranslated } = sheet('es', translation(spanish))
  expect(isTranslated).toBe(true)
  expect(shown.questions[0]).toEqual({
    ask: '¿Quién retira un candado?',
    several: false,
    answers: [
      { text: 'Quien lo puso', right: true, because: 'Solo esa persona lo sabe.' },
      { text: 'El jefe de turno', right: false },
    ],
  })
  expect(shown.practical).toEqual(['Bloquear la prensa'])
})

// A word at the wrong answer would make a wrong one right: the check refuses it, and a preview shows the source.
test.each([
  ['no translation', undefined],
  ['a translation without the questions', translation('')],
  ['one answer more', translation(spanish.replace('El jefe de turno }', 'El jefe de turno }\n      - { text: Nadie }'))],
  ['one task more', translation(spanish.replace('prensa]', 'prensa, Otra cosa]'))],
])('%s: what is not translated stands in the language of the lesson', (_, translated) => {
  const { sheet: shown, isTranslated } = sheet('es', translated)
  expect(isTranslated).toBe(false)
  expect(shown.questions[0]?.answers.map(({ right }) => right)).toEqual([true, false])
})

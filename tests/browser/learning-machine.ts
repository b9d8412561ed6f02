import { type BuiltMachine, buildSoundMachine } from './build-sound-machine.ts'

const lock = `---
title: Stop the press & lock it
revision: B
minutes: 15
mode: practise
level: 2
objectives: [Stop the press and say who locks it]
roles: [operator]
needs: [look-round]
questions:
  - ask: Who takes a lock away?
    answers:
      - { text: Who put it there, right: true, because: Only that person knows that the work is done. }
      - { text: The shift leader, because: The person at the machine may still be inside it. }
  - ask: What can still hold energy behind a lock?
    choose: several
    answers:
      - { text: A raised load, right: true, because: Its weight pulls it down. }
      - { text: Compressed air, right: true, because: The valve shuts the supply and leaves the air behind it. }
      - { text: A lamp, because: It is dark once the supply is off. }
passPercent: 100
practical: [Stop the press, 'Lock it, and try to start it']
signOff: { by: trainer }
validMonths: 12
history: [{ revision: A, date: '2025-01-01', change: text, what: First edition }, { revision: B, date: '2025-06-01', change: procedure, what: The try comes after the lock }]
---
Stop the press. Find <Fact of="tag" tag="PS-101" />. <Page id="lessons/look-round" /> comes first.
`

const lockSpanish = `---
title: Parar la prensa y bloquearla
objectives: [Parar la prensa y decir quién la bloquea]
questions:
  - ask: ¿Quién retira un candado?
    answers:
      - { text: Quien lo puso, because: Solo esa persona sabe que el trabajo ha terminado. }
      - { text: El jefe de turno, because: La persona puede seguir dentro de la máquina. }
  - ask: ¿Qué puede guardar energía detrás de un candado?
    answers:
      - { text: Una carga elevada, because: Su peso la baja. }
      - { text: Aire comprimido, because: La válvula corta el suministro y deja el aire detrás. }
      - { text: Una lámpara, because: Se apaga sin suministro. }
practical: [Parar la prensa, 'Bloquearla y probar el arranque']
---
Pare la prensa. Busque <Fact of="tag" tag="PS-101" />. Antes viene <Page id="lessons/look-round" />.
`

const lamps = `---
title: Read the lamps
revision: A
minutes: 10
mode: read
objectives: [Say what a lamp means]
roles: [operator]
needs: [stop-and-lock]
questions:
  - ask: The lamp of the switch is dark. What do you look at first?
    answers:
      - { text: The supply, right: true, because: Without supply no lamp is lit. }
      - { text: The program, because: It is seldom the first cause. }
---
Look at the lamps.
`

const training = `roles:
  - { id: operator, name: { en: Operator, es: Operador } }
  - { id: trainer, name: { en: Trainer, es: Formadora } }
sequences:
  - { id: first-day, name: First day, role: operator, lessons: [read-lamps, stop-and-lock, look-round] }
`

/**
 * Builds the sound machine with three lessons of one role, of which two end with questions: `paths/operator.html`,
 * `lessons/stop-and-lock.html`, in Spanish below `es/`.
 */
export const buildLearning = (): Promise<BuiltMachine> =>
  buildSoundMachine({
    'training.yaml': training,
    'pages/lessons/stop-and-lock.mdx': lock,
    'pages/lessons/stop-and-lock.es.mdx': lockSpanish,
    'pages/lessons/read-lamps.mdx': lamps,
  })

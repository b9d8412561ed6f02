import { describe, expect, test } from 'vitest'
import { findingsOf, inShort, kindsOf } from './read.ts'

describe('a Spanish step', () => {
  const step = (text: string) => inShort(findingsOf('step', text, 'es'))

  test.each([
    'Abra la válvula de entrada.',
    'Limpiar el filtro con aire seco.',
    'No toque la placa caliente.',
    'No abra nunca la puerta.',
    'No toque nada.',
    'Ábralo despacio.',
    'Despacio, levante la tapa.',
    'Con un paño seco, limpie la lente.',
    'Si la lámpara H3 está roja, pulse RESET.',
    'Cuando el motor se pare, abra el resguardo.',
    'Quite la tapa solo cuando la bomba esté parada.',
    'Haga la prueba otra vez si es necesario.',
    'Compruebe si la lámpara está encendida.',
    'Asegúrese de que la puerta está cerrada.',
    'Pulse S2 y manténgalo pulsado 3 s.',
    'Afloje y retire los cuatro tornillos.',
    'Espere hasta que la temperatura baje de 40 °C.',
    'Desenergice la bomba.',
    'Intente subir y bajar el elevador.',
    'Desenrosque y retire el tapón.',
    'Arranque el motor y déjelo funcionar 5 minutos.',
    'Quite el aceite con un paño y vigile el nivel.',
    'Diga a otra persona dónde trabaja.',
    'Decida si el remedio necesita una herramienta.',
  ])('that is fine: %s', (text) => {
    expect(step(text)).toEqual([])
  })

  test.each([
    ['Cierre la válvula V12 y abra la válvula V13.', 'several-instructions: abra la válvula V13'],
    ['Pare la bomba, cierre la válvula y vacíe el tanque.', 'several-instructions: cierre la válvula y vacíe el tanque'],
    ['Gire la llave a manual e intente subir y bajar el elevador.', 'several-instructions: intente subir y bajar el elevador'],
    ['Sacar la varilla y quitar el aceite.', 'several-instructions: quitar el aceite'],
    ['Ponga el interruptor en 0 y bloquéelo.', 'several-instructions: bloquéelo'],
    ['Abra el resguardo cuando el motor se pare.', 'late-condition: cuando el motor se pare'],
    ['La válvula es abierta por el operador.', 'passive: es abierta'],
    ['El filtro debe ser sustituido cada 500 horas.', 'passive: ser sustituido'],
    ['La válvula se abre.', 'no-command: La válvula se abre.'],
    ['La persona decide si sigue.', 'no-command: La persona decide si sigue.'],
    ['La tapa está cerrada.', 'no-command: La tapa está cerrada.'],
    ['Comprobación del nivel de aceite.', 'no-command: Comprobación del nivel de aceite.'],
    ['Una persona cualificada mide la tensión.', 'no-command: Una persona cualificada mide la tensión.'],
    ['Mida la holgura con una galga; anote el valor en la hoja.', 'semicolon: ;'],
    ['Abra la la válvula.', 'doubled-word: la la → la'],
  ])('%s', (text, found) => {
    expect(step(text)).toEqual([found])
  })

  test('takes "no … nada" for one negative', () => {
    expect(inShort(findingsOf('paragraph', 'No hay nadie en la zona, y no se mueve nada.', 'es'))).toEqual([])
    expect(kindsOf('paragraph', 'La bomba no arranca a menos que la puerta no esté abierta.', 'es')).toEqual(['stacked-negative'])
  })

  test('is judged by Spanish words alone', () => {
    expect(kindsOf('paragraph', "Prior to the pump pressure relief valve, don't utilise it.", 'es')).toEqual([])
  })
})

describe('German, French and Italian', () => {
  test.each([
    ['de', 'Öffnen Sie das das Ventil.', []],
    ['de', 'Öffnen Sie mit mit Vorsicht.', ['doubled-word: mit mit → mit']],
    ['de', 'Wenn Sie sie öffnen, warten Sie.', []],
    ['de', 'Die Pumpe läuft nicht; sie ist heiß.', ['semicolon: ;']],
    ['fr', 'Vous vous arrêtez devant la la porte.', ['doubled-word: la la → la']],
    ['fr', 'La pompe est arrêtée par l’opérateur.', []],
    ['it', 'Aprire piano piano la valvola.', []],
    ['it', 'La pompa è ferma; è calda.', ['semicolon: ;']],
  ])('%s: %s', (language, text, found) => {
    expect(inShort(findingsOf('step', text, language))).toEqual(found)
  })

  test.each([
    ['de', 'Das Ventil ist zu.'],
    ['fr', 'La vanne est là.'],
    ['it', 'La valvola sta qui.'],
    ['es', 'La tapa está aquí.'],
  ])('%s: the length of sentences and paragraphs', (language, sentence) => {
    const long = `${Array.from({ length: 7 }, () => sentence.slice(0, -1)).join(', ')}.`
    expect(kindsOf('paragraph', long, language)).toEqual(['long-sentence'])
    expect(kindsOf('paragraph', Array.from({ length: 7 }, () => sentence).join(' '), language)).toEqual(['long-paragraph'])
  })
})

import { esCauses } from './es-causes.ts'
import { esStuck } from './es-stuck.ts'
import type { SignalWords } from './words.ts'

export const es: SignalWords = {
  faults: {
    healthy: { diagnosis: 'El circuito está bien.', nextStep: 'Anote las lecturas.' },
    'signal-open': {
      diagnosis: 'El hilo de señal está cortado entre el sensor y la tarjeta.',
      nextStep: 'Revise el conector, el borne y el hilo de señal.',
    },
    'l-plus-open': {
      diagnosis: 'L+ no llega al sensor.',
      nextStep: 'Revise el fusible, la distribución de L+ y el hilo desde allí hasta el sensor.',
    },
    'l-minus-open': { diagnosis: 'El polo de 0 V no llega al sensor.', nextStep: 'Revise el borne de 0 V y el hilo desde allí hasta el sensor.' },
    'signal-shorted-to-l-plus': {
      diagnosis: 'El hilo de señal toca L+.',
      nextStep: 'Sin tensión, desconecte el hilo de señal en los dos extremos y mida su aislamiento.',
    },
    'signal-shorted-to-l-minus': {
      diagnosis: 'El hilo de señal toca 0 V o tierra.',
      nextStep: 'Sin tensión, desconecte el hilo de señal en los dos extremos y mida su aislamiento.',
    },
    'supply-reversed': {
      diagnosis: 'La alimentación del sensor está invertida.',
      nextStep: 'Sin tensión, intercambie marrón y azul. Un sensor sin protección puede estar dañado.',
    },
    'device-is-npn': {
      diagnosis: 'El sensor es NPN y la entrada es de tipo sumidero.',
      nextStep: 'Compare la referencia con la lista de materiales.',
    },
    'device-is-pnp': { diagnosis: 'El sensor es PNP y la entrada es de tipo fuente.', nextStep: 'Compare la referencia con la lista de materiales.' },
    'contact-inverted': {
      diagnosis: 'El sensor conmuta al revés: NC en lugar de NA, o conexión en oscuro en lugar de en claro.',
      nextStep: 'Compare la referencia y el ajuste con la lista de entradas y salidas.',
    },
    'never-senses': {
      diagnosis: 'El sensor no detecta el objeto.',
      nextStep: 'Compare distancia, material y tamaño del objeto con los límites. Limpie la cara o la lente.',
    },
    'always-senses': {
      diagnosis: 'El sensor detecta un objeto que no está.',
      nextStep: 'Aleje el objeto más allá del límite de desconexión. Busque metal en el fondo, suciedad y un montaje incorrecto.',
    },
    'low-supply': {
      diagnosis: 'La alimentación es baja o la línea cae demasiado.',
      nextStep: 'Mida la alimentación en la fuente y en el sensor, y compare.',
    },
    'card-common-open': { diagnosis: 'El común de la tarjeta no está conectado.', nextStep: 'Revise el borne común de la tarjeta.' },
    'card-channel-failed': {
      diagnosis: 'El canal de la tarjeta ha fallado.',
      nextStep: 'Haga pasar el hilo a un canal libre y cambiar con él la dirección.',
    },
    'tag-stays-off': {
      diagnosis: 'La tarjeta ve la señal y la variable no: dirección o asignación incorrecta, o un bit forzado a 0.',
      nextStep: 'Compare la dirección con la lista de entradas y salidas y busque bits forzados.',
    },
    'tag-stays-on': {
      diagnosis: 'La tarjeta ve caer la señal y la variable no: dirección o asignación incorrecta, o un bit forzado a 1.',
      nextStep: 'Compare la dirección con la lista de entradas y salidas y busque bits forzados.',
    },
    leakage: {
      diagnosis: 'Una fuga o una tensión acoplada mantiene la entrada entre apagado y encendido.',
      nextStep: 'Compare la corriente de fuga del sensor con la entrada. Puede hacer falta una resistencia de carga o una entrada de tipo 2 o 3.',
    },
    'cores-swapped': { diagnosis: 'La señal llega a otro canal.', nextStep: 'Compare los hilos del regletero con el plano.' },
    'drop-too-high': {
      diagnosis: 'El sensor cae demasiada tensión para esta entrada.',
      nextStep: 'Compare la alimentación menos la caída con el límite de encendido. Puede hacer falta una entrada de tipo 2 o 3.',
    },
    'load-too-small': {
      diagnosis: 'La entrada consume menos que la carga mínima del sensor.',
      nextStep: 'Compare la corriente de entrada con la carga mínima. Puede hacer falta una resistencia de carga.',
    },
    'contact-stays-open': {
      diagnosis: 'El contacto se queda abierto.',
      nextStep: 'Mire si el actuador llega a su punto de maniobra y después pruebe el contacto sin tensión.',
    },
    'contact-stays-closed': {
      diagnosis: 'El contacto se queda cerrado.',
      nextStep: 'Mire si el actuador vuelve y después pruebe el contacto sin tensión.',
    },
    'poor-contact': {
      diagnosis: 'El contacto cerrado tiene caída de tensión.',
      nextStep: 'Repita la lectura con carga. Cambie el contacto si se mantiene.',
    },
    'line-shorted': {
      diagnosis: 'La línea al sensor está en cortocircuito.',
      nextStep: 'Desconecte la línea en el amplificador y mida su resistencia.',
    },
    'no-state': {
      diagnosis: 'La corriente está entre los dos estados.',
      nextStep: 'Compare la distancia con el límite, y el tipo y la resistencia de la línea con el amplificador.',
    },
    'amplifier-inverted': {
      diagnosis: 'El amplificador está ajustado al revés.',
      nextStep: 'Compare el sentido ajustado en el amplificador con la lista de entradas y salidas.',
    },
    'amplifier-without-supply': {
      diagnosis: 'El amplificador no tiene alimentación.',
      nextStep: 'Revise los bornes de alimentación y el fusible del amplificador.',
    },
  },
  ...esCauses,
  ...esStuck,
  stretches: {
    target: 'objeto y montaje',
    supply: 'alimentación',
    device: 'aparato',
    'signal-wire': 'hilo de señal',
    terminal: 'borne',
    card: 'tarjeta',
    address: 'dirección y programa',
  },
  points: {
    'input-at-card': 'borne de entrada a 0 V de la tarjeta',
    'supply-at-sensor': 'marrón a azul en el sensor',
    'output-at-sensor': 'negro a azul en el sensor',
    'brown-to-common': 'marrón en el sensor a 0 V del armario',
    'input-to-cabinet': 'borne de entrada a 0 V del armario',
    'across-sensor': 'entre los hilos del sensor',
    'feed-at-sensor': 'hilo que alimenta el sensor al polo opuesto',
    'loop-current': 'corriente del lazo',
  },
  indicators: {
    tag: 'variable en el controlador',
    'card-led': 'LED del canal en la tarjeta',
    'output-led': 'LED de salida del sensor',
    'other-led': 'LED de otro canal que cambia con el objeto',
    'fault-led': 'LED de fallo de línea del amplificador',
  },
  lights: { lit: 'encendido', dark: 'apagado', unsteady: 'parpadea o brilla poco' },
  states: { target: 'con objeto', none: 'sin objeto' },
  seen: {
    actuated: 'accionado',
    'at rest': 'en reposo',
    'guard open': 'resguardo abierto',
    'guard closed': 'resguardo cerrado',
    'field free': 'campo libre',
    'field interrupted': 'campo interrumpido',
    pulse: 'durante un impulso',
    'between pulses': 'entre impulsos',
  },
  levels: {
    driven: 'encendido: la alimentación menos la caída del sensor',
    live: 'el polo conmutado, sin caída',
    released: 'apagado: solo fuga',
    return: 'sin señal',
    'low-side': 'sin señal, o la caída del sensor',
    between: 'entre apagado y encendido',
    weak: 'débil: menos de lo que debe ser',
    swings: 'inestable',
    'full-supply': 'la alimentación',
    'low-supply': 'menos que la alimentación',
    'sagging-supply': 'menos que la alimentación, inestable',
    'reversed-supply': 'la alimentación, invertida',
    nothing: 'nada',
    drop: 'la caída del sensor',
    'high-drop': 'más de lo que el sensor puede caer aquí',
    rest: 'la alimentación',
    'contact-drop': 'más de 0,5 V',
    'high-impedance': 'alta impedancia',
    'low-impedance': 'baja impedancia',
    'namur-between': 'entre los dos estados',
    'line-break': 'rotura de línea',
    'line-short': 'cortocircuito',
  },
  refusals: {
    'material-without-factor': 'No se calcula: no consta factor de corrección para este material. Tómelo de la hoja de datos o mida.',
    'target-smaller-than-standard':
      'No se calcula: el objeto es menor que el objeto normalizado. Solo la curva de la hoja de datos dice hasta dónde se detecta.',
    'no-assured-distance': 'No se calcula: la regla de la distancia asegurada no vale para este tipo de sensor. Use el alcance de la hoja de datos.',
    'retro-reflective-gain': 'No se calcula: la reserva de un sensor réflex no sigue una ley sencilla. Use la curva de la hoja de datos.',
    'diffuse-gain': 'No se calcula: la reserva de un sensor difuso no sigue una ley sencilla. Use la curva de la hoja de datos.',
    'alternating-current-coil': 'No se calcula: la resistencia de una bobina de corriente alterna dice poco de su corriente.',
    'coil-with-electronics': 'No se calcula: una bobina con electrónica no muestra una resistencia que signifique algo.',
    'outside-class-range': 'No se calcula: la clase de tolerancia no llega a esta temperatura.',
    'safety-approval': 'No se juzga: una lectura muestra que llega una señal. No valida una función de seguridad.',
    'pnp-on-sourcing-input': 'Un sensor PNP no puede accionar una entrada de tipo fuente: la entrada lee 0 en todos los estados.',
    'npn-on-sinking-input': 'Un sensor NPN no puede accionar una entrada de tipo sumidero: la entrada lee 0 en todos los estados.',
    'not-this-pairing': 'Este sensor no es compatible con esta tarjeta.',
  },
  unread: {
    empty: 'Escriba un valor con su unidad.',
    'no-number': 'Esto no es un número.',
    'not-one-number': 'Escriba el número sin espacios ni signos de millar.',
    'no-unit': 'Escriba también la unidad: el mismo número significa otra cosa en otra unidad.',
    'unknown-unit': 'Esta unidad no se conoce. Distinga mayúsculas y minúsculas.',
    'wrong-dimension': 'Esta unidad mide otra cosa.',
  },
}

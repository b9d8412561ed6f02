import type { SignalWords } from './words.ts'

/** Faults of signals that are no switched inputs. */
export const esCauses: Pick<SignalWords, 'causes' | 'healthy'> = {
  causes: {
    'loop-open': {
      diagnosis: 'El lazo está abierto, no tiene alimentación o tiene los polos cambiados.',
      nextStep: 'Revise el fusible, la alimentación y la polaridad en el transmisor.',
    },
    'transmitter-reports-low': {
      diagnosis: 'El transmisor avisa de un fallo con una corriente baja.',
      nextStep: 'Lea el estado del transmisor y revise su sensor.',
    },
    'loop-starved': {
      diagnosis: 'El lazo no puede dar la corriente: demasiada resistencia o poca alimentación.',
      nextStep: 'Compare la resistencia y la alimentación del lazo con su cálculo.',
    },
    'transmitter-reports-high': {
      diagnosis: 'El transmisor avisa de un fallo con una corriente alta.',
      nextStep: 'Lea el estado del transmisor y revise su sensor.',
    },
    'transmitter-shorted': {
      diagnosis: 'El lazo está en cortocircuito en el transmisor.',
      nextStep: 'Sin tensión, desconecte el lazo en el transmisor y mida su aislamiento.',
    },
    'loop-fed-twice': {
      diagnosis: 'El lazo recibe dos alimentaciones: de la tarjeta y del transmisor.',
      nextStep: 'Compare tarjeta y transmisor con el plano: solo uno de los dos puede alimentar el lazo.',
    },
    'element-open': {
      diagnosis: 'El elemento o uno de sus hilos está cortado.',
      nextStep: 'Mida el elemento en su cabezal y en la tarjeta, y compare.',
    },
    'element-shorted': {
      diagnosis: 'El elemento o sus hilos están en cortocircuito.',
      nextStep: 'Mida el elemento en su cabezal con los hilos desconectados.',
    },
    'thermocouple-shorted': {
      diagnosis: 'El cable está en cortocircuito: la tarjeta muestra la temperatura del cortocircuito.',
      nextStep: 'Desconecte el termopar en su cabezal y mire si la tarjeta avisa de una rotura.',
    },
    'thermocouple-reversed': {
      diagnosis: 'Los hilos del termopar están cambiados.',
      nextStep: 'Compare los colores de los hilos con la norma que indica el plano.',
    },
    'thermocouple-type-wrong': {
      diagnosis: 'La tarjeta está ajustada a otro tipo de termopar.',
      nextStep: 'Compare el tipo del termopar con el ajuste de la tarjeta.',
    },
    'voltage-open': {
      diagnosis: 'El hilo de señal está abierto o el transmisor no tiene alimentación.',
      nextStep: 'Mida en el conector del transmisor: primero su alimentación y después su señal.',
    },
    'voltage-reversed': { diagnosis: 'Los polos de la señal están cruzados.', nextStep: 'Compare los hilos del borne con el plano.' },
    'voltage-touches-supply': {
      diagnosis: 'El hilo de señal toca L+.',
      nextStep: 'Sin alimentación, suelte el hilo de señal en los dos extremos y compruebe su aislamiento.',
    },
    'voltage-common-open': {
      diagnosis: 'El 0 V del transmisor no llega a la tarjeta.',
      nextStep: 'Revise el hilo de 0 V en el transmisor y en la tarjeta.',
    },
    'voltage-loaded': {
      diagnosis: 'Algo carga la señal: una segunda entrada, un conector mojado o una tarjeta para corriente.',
      nextStep: 'Suelte el hilo en la tarjeta y mida de nuevo. Compare la tarjeta con el plano.',
    },
    'voltage-offset': {
      diagnosis: 'El 0 V del transmisor y el de la tarjeta difieren, o el rango está mal ajustado.',
      nextStep: 'Mida entre los dos bornes de 0 V. Compare el rango con la lista de entradas y salidas.',
    },
    'thermocouple-open': {
      diagnosis: 'El termopar o su cable está abierto, o hay una mala unión.',
      nextStep: 'Mida en el cabezal y en el borne, y compare.',
    },
    'thermocouple-of-other-type': {
      diagnosis: 'El termopar es de otro tipo.',
      nextStep: 'Compare su referencia y sus colores con la lista de materiales.',
    },
    'thermocouple-cable-wrong': {
      diagnosis: 'Un tramo del cable es de otro metal, por ejemplo cobre.',
      nextStep: 'Siga el cable desde el cabezal hasta la tarjeta. Cada tramo debe ser del tipo del termopar.',
    },
    'command-missing': {
      diagnosis: 'El programa no da la orden a la salida.',
      nextStep: 'Busque la condición que espera el paso y un bit forzado a 0.',
    },
    'output-dark': {
      diagnosis: 'La salida de la tarjeta sigue apagada o la dirección es incorrecta.',
      nextStep:
        'Compare la dirección con la lista de entradas y salidas. Mire el supresor de la carga antes de pasar el hilo a una salida libre: una bobina sin él destruye salidas.',
    },
    'card-without-load-supply': {
      diagnosis: 'Las salidas de la tarjeta no tienen alimentación.',
      nextStep: 'Revise el fusible y los bornes de alimentación de este grupo de salidas.',
    },
    'output-sinks': {
      diagnosis: 'La tarjeta conmuta 0 V y la carga está cableada para una que conmuta L+.',
      nextStep: 'Compare la referencia de la tarjeta con la lista de materiales.',
    },
    'output-stays-on': {
      diagnosis: 'La salida sigue activa sin orden.',
      nextStep: 'Busque un bit forzado a 1 y después L+ en el hilo. Si el hilo queda sin tensión fuera de la tarjeta, ha fallado la salida.',
    },
    'output-overloaded': {
      diagnosis: 'La carga toma más corriente de la que admite la salida.',
      nextStep: 'Cuente las cargas de esta salida. Compare la pieza con la lista de materiales.',
    },
    'load-shorted': {
      diagnosis: 'La carga o su cable está en cortocircuito. La salida se protege.',
      nextStep: 'Sin alimentación, mida la carga sola y después el cable solo.',
    },
    'suppressor-conducts': {
      diagnosis: 'El supresor conduce: los polos de la carga están cruzados o el supresor ha fallado.',
      nextStep: 'Sin alimentación, compare más y menos en la carga con el plano. Después mida sin el supresor.',
    },
    'load-wire-open': {
      diagnosis: 'El hilo está abierto entre la tarjeta y la carga.',
      nextStep: 'Revise el hilo, el conector y el 0 V en la carga.',
    },
    'line-drops': {
      diagnosis: 'La línea pierde demasiada tensión hasta la carga.',
      nextStep: 'Busque un borne flojo. Mida en cada borne con la carga activa.',
    },
    'load-open': { diagnosis: 'La propia carga está abierta.', nextStep: 'Sin alimentación y con el conector suelto, mida la carga. Cámbiela.' },
    'turns-shorted': {
      diagnosis: 'La carga tiene muy poca resistencia: espiras en cortocircuito u otra bobina.',
      nextStep: 'Compare la placa de la bobina con la lista de materiales y cámbiela.',
    },
    'load-of-higher-resistance': {
      diagnosis: 'La carga tiene demasiada resistencia: una bobina para otra tensión o de menos potencia.',
      nextStep: 'Compare la placa de la bobina con la lista de materiales.',
    },
    'output-supply-low': { diagnosis: 'La alimentación es baja.', nextStep: 'Mida la alimentación en la fuente y desconecte ramas una por una.' },
    'winding-open': {
      diagnosis: 'Un devanado o su hilo está abierto.',
      nextStep: 'Mida de nuevo en la caja de bornes del motor, con los hilos sueltos.',
    },
    'windings-differ': {
      diagnosis: 'Los devanados difieren: espiras en cortocircuito o una mala unión.',
      nextStep: 'Mire los puentes y las uniones en la caja de bornes. Después compruebe el aislamiento y cambie el motor si sigue igual.',
    },
    'phase-missing': {
      diagnosis: 'Una fase no lleva corriente.',
      nextStep: 'Desconecte enseguida. Revise el guardamotor, el contactor y el hilo de esta fase.',
    },
    'phases-differ': {
      diagnosis: 'Las fases llevan corrientes distintas.',
      nextStep: 'Mida las tres tensiones de línea. Si son iguales, mida los devanados.',
    },
    'motor-overloaded': {
      diagnosis: 'El motor toma más corriente que la de su placa.',
      nextStep: 'Consigne y mire si lo que mueve gira libre. Después mire la tensión de alimentación.',
    },
    'encoder-without-supply': {
      diagnosis: 'El encóder tiene poca alimentación.',
      nextStep: 'Revise el fusible, el conector y la alimentación en los bornes.',
    },
    'encoder-stands': { diagnosis: 'El eje del encóder está parado.', nextStep: 'Consigne. Busque un acoplamiento flojo o un eje roto.' },
    'channel-a-open': {
      diagnosis: 'No llega el canal A.',
      nextStep: 'Revise el conector y el hilo del canal A. Con el hilo suelto en la tarjeta, distinga entre hilo y encóder.',
    },
    'channel-b-open': {
      diagnosis: 'No llega el canal B.',
      nextStep: 'Revise el conector y el hilo del canal B. Con el hilo suelto en la tarjeta, distinga entre hilo y encóder.',
    },
    'channels-swapped': { diagnosis: 'Los canales A y B están cruzados: cuenta hacia atrás.', nextStep: 'Compare los hilos del borne con el plano.' },
    'edges-set-wrong': {
      diagnosis: 'La tarjeta cuenta uno o dos flancos de cada impulso y no cuatro.',
      nextStep: 'Compare el ajuste de la tarjeta con la lista de entradas y salidas.',
    },
    'pulses-lost': {
      diagnosis: 'La tarjeta pierde impulsos: filtro de entrada, mal nivel o demasiada velocidad.',
      nextStep: 'Compare el filtro de la entrada con los impulsos. Mida el nivel de los dos canales.',
    },
    'pulses-added': {
      diagnosis: 'Se añaden impulsos: un cable de motor o una pantalla abierta.',
      nextStep: 'Revise la pantalla en el armario. Mire dónde va el cable junto a uno de motor.',
    },
    'encoder-of-other-resolution': {
      diagnosis: 'El encóder tiene otro número de impulsos.',
      nextStep: 'Compare su referencia con la lista de materiales.',
    },
    'flow-none': { diagnosis: 'No circula nada.', nextStep: 'Mire las válvulas, la bomba y el filtro.' },
    'flow-without-supply': {
      diagnosis: 'El caudalímetro tiene poca alimentación.',
      nextStep: 'Revise el fusible, el conector y la alimentación en los bornes.',
    },
    'flow-sensor-dead': {
      diagnosis: 'Circula líquido y el caudalímetro no da impulsos.',
      nextStep: 'Consigne. Busque un rotor trabado. Si gira libre, cambie el caudalímetro.',
    },
    'flow-wire-open': {
      diagnosis: 'Los impulsos no llegan a la tarjeta.',
      nextStep: 'Revise el conector y el hilo de señal del caudalímetro al borne.',
    },
    'flow-not-counted': {
      diagnosis: 'La tarjeta recibe los impulsos y el control no muestra caudal.',
      nextStep: 'Compare el canal y su dirección con la lista de entradas y salidas. Mire si el contador está habilitado.',
    },
    'flow-factor-wrong': {
      diagnosis: 'El control tiene otro número de impulsos por litro.',
      nextStep: 'Compare el factor del control con la placa del caudalímetro.',
    },
    'flow-pulses-lost': {
      diagnosis: 'La tarjeta pierde impulsos: su filtro es lento o el nivel es malo.',
      nextStep: 'Compare el filtro de la entrada con los impulsos. Mida el nivel en el borne.',
    },
    'flow-pulses-added': {
      diagnosis: 'Se añaden impulsos: un cable de motor o una pantalla abierta.',
      nextStep: 'Revise la pantalla en el armario. Mire dónde va el cable junto a uno de motor.',
    },
    'flow-does-not-stop': {
      diagnosis: 'Sigue circulando líquido cuando debería estar parado.',
      nextStep: 'Busque una válvula que pierde o no cierra.',
    },
    'flow-otherwise': {
      diagnosis: 'El caudalímetro puede estar bien: el caudal no es el de servicio.',
      nextStep: 'Mida el caudal con un recipiente y un reloj, e introdúzcalo.',
    },
    'flow-of-other-meter': {
      diagnosis: 'El caudalímetro da otro número de impulsos por litro, o está gastado.',
      nextStep: 'Compare su referencia con la lista de materiales.',
    },
    'turns-at-other-speed': {
      diagnosis: 'El encóder está bien: el eje gira a otra velocidad.',
      nextStep: 'Mida la velocidad del eje e introdúzcala.',
    },
  },
  healthy: {
    output: { diagnosis: 'La parte eléctrica está bien.', nextStep: 'Si nada se mueve ni se enciende, mire la válvula, el aire o la propia carga.' },
    encoder: { diagnosis: 'El encóder está bien.', nextStep: 'Compare la posición de la pantalla con una regla.' },
    flow: { diagnosis: 'El caudalímetro está bien.', nextStep: 'Compare los litros de una carga con una báscula o un recipiente.' },
  },
}

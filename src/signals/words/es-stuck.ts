import type { SignalWords } from './words.ts'

export const esStuck: Pick<SignalWords, 'healthySafety' | 'stuck'> = {
  healthySafety: {
    diagnosis: 'Lo leído es como se espera. No aprueba ninguna función de seguridad.',
    nextStep: 'Anote las lecturas. Una persona competente valida la función de seguridad.',
  },
  stuck: {
    actuated: {
      diagnosis: 'El aparato queda accionado.',
      nextStep: 'Compare el punto de consigna con el proceso y busque lo que lo retiene: suciedad, desgaste, una toma obstruida.',
    },
    'at rest': {
      diagnosis: 'El aparato queda en reposo.',
      nextStep:
        'Compare el punto de consigna con el proceso y busque lo que lo impide: una válvula cerrada, una toma obstruida, una palanca gastada.',
    },
    'guard open': {
      diagnosis: 'El resguardo figura como abierto, y está cerrado.',
      nextStep: 'Compruebe que cierra del todo y mire su actuador: posición, distancia, daños. Nunca lo puentee.',
    },
    'guard closed': {
      diagnosis: 'El resguardo figura como cerrado, y está abierto.',
      nextStep: 'Ponga la máquina fuera de servicio y bloquéela. Una persona competente busca el fallo.',
    },
    'field free': {
      diagnosis: 'El campo figura como libre, y hay algo en él.',
      nextStep: 'Ponga la máquina fuera de servicio y bloquéela. Una persona competente busca el fallo.',
    },
    'field interrupted': {
      diagnosis: 'El campo figura como interrumpido, y está libre.',
      nextStep: 'Limpie las dos cubiertas y compruebe su alineación. Busque lo que entra en el campo. Nunca lo puentee.',
    },
    pulse: {
      diagnosis: 'El caudalímetro se queda como en un impulso.',
      nextStep: 'Deje circular el líquido. Si nada cambia, consigne y busque un rotor trabado.',
    },
    'between pulses': {
      diagnosis: 'El caudalímetro no da ningún impulso.',
      nextStep: 'Deje circular el líquido. Si nada cambia, consigne y busque un rotor trabado.',
    },
  },
}

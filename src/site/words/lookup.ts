/** The words of the page that other programs ask by name. */
const en = {
  lookup: 'Called from the machine',
  lookupNothing: 'Nothing was asked for.',
  lookupNone: 'This manual has no {kind} {name}.',
  lookupSeveral: '{name} may be one of these:',
  lookupNear: 'The nearest:',
  lookupRevision:
    'It was made for serial no. {serial}, revision {revision}. If the program of the machine is newer, ask for the manual that belongs to it.',
  lookupSearch: 'Search for {name}',
  lookupNoScript: 'Scripts are off on this panel. Choose from a list:',
  lookup_alarm: 'alarm',
  lookup_tag: 'device',
  lookup_part: 'part',
  lookup_drawing: 'drawing',
  lookup_lockout: 'lockout',
}

const es: typeof en = {
  lookup: 'Llamado desde la máquina',
  lookupNothing: 'No se ha preguntado por nada.',
  lookupNone: 'Este manual no tiene: {kind} {name}.',
  lookupSeveral: '{name} puede ser uno de estos:',
  lookupNear: 'Lo más parecido:',
  lookupRevision:
    'Está hecho para el n.º de serie {serial}, revisión {revision}. Si el programa de la máquina es más nuevo, pida el manual que le corresponde.',
  lookupSearch: 'Buscar {name}',
  lookupNoScript: 'Los scripts están apagados en este panel. Elija en una lista:',
  lookup_alarm: 'alarma',
  lookup_tag: 'dispositivo',
  lookup_part: 'pieza',
  lookup_drawing: 'plano',
  lookup_lockout: 'bloqueo',
}

export { en as lookupEn, es as lookupEs }

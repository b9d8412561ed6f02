/** What pages say about work without a lockout and about outputs that are switched by hand. */
export const safetyEs = {
  claimOneLock: 'Sin bloqueo escrito: un candado en una fuente',
  claimOneLockWhy: 'La energía se aísla y se bloquea igualmente. A todo esto se respondió que sí:',
  claimMinorServicing: 'Sin bloqueo: trabajo menor durante la producción',
  claimMinorServicingWhy: 'A todo esto se respondió que sí:',
  claimNoStoredEnergy: 'No hay energía almacenada, residual ni que se acumule de nuevo.',
  claimOneSource: 'Hay una sola fuente, fácil de encontrar y de aislar.',
  claimLockDeenergises: 'Aislarla y bloquearla quita toda la energía.',
  claimLockedDuringWork: 'Permanece aislada y bloqueada durante el trabajo.',
  claimSingleLock: 'Basta un solo candado.',
  claimLockInOwnControl: 'Solo la persona autorizada que hace el trabajo puede quitar el candado.',
  claimNoHazardToOthers: 'El trabajo no crea peligro para otras personas.',
  claimNoEarlierAccident: 'No ha habido accidentes por un arranque inesperado durante estos trabajos.',
  claimDuringProduction: 'Es un cambio o ajuste pequeño durante la producción normal.',
  claimRoutine: 'Es habitual.',
  claimRepetitive: 'Se repite una y otra vez.',
  claimIntegral: 'La producción no puede seguir sin él.',
  claimOtherProtection: 'Otras medidas protegen a la persona.',
  claimSource: 'La fuente',
  claimProtectedBy: 'Qué protege',
  claimCaution:
    'Si algo de esto no se cumple aquí, pare y bloquee. El programa de control de energías de la empresa y las normas locales van primero.',
}

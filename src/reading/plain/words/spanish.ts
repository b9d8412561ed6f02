import { wordSet } from './word-set.ts'

export const articles = wordSet('el la los las un una unos unas su sus este esta estos estas ese esa cada todo toda todos todas ambos ambas')

export const subordinators = wordSet('si cuando antes después mientras hasta una tan salvo aunque porque como donde sin')

/** A condition that must be read before the act. */
export const conditions = wordSet('si cuando')

/** Words after which a condition belongs to another clause. */
export const clauseOpeners = wordSet('que qué cómo dónde quién cuál cuánto hasta para como aunque')

/** Before a condition they narrow the order down. */
export const narrowing = wordSet('solo sólo únicamente incluso solamente y o')

/** In the order to find something out, "si" says what to find out. */
export const findingOut = wordSet(`
  anote anotar averigüe compruebe comprobar decida determine diga fíjese mida medir mire mirar observe observar pregunte preguntar registre revise
  revisar vea ver verifique verificar
`)

/** The same where the clause follows at once. */
export const noting = findingOut

/** "Si es necesario" and the like. */
export const shortConditions = wordSet('es fuera hace procede hay corresponde está')

export const leadIns = wordSet('después luego entonces ahora primero también siempre solo sólo y por favor seguidamente finalmente')

export const functionWords = wordSet(`
  el la los las un una unos unas lo al del de a ante bajo con contra desde durante en entre hacia hasta para por según sin sobre tras mediante y e o
  u ni que si cuando mientras antes después este esta estos estas ese esa esos esas aquel su sus cada todo toda todos todas ambos ambas otro otra
  otros otras no nunca ya se le les me te nos es son está están hay fue era muy más menos como donde quien cual cuyo porque aunque pero sino ser
  estar tan tanto mucho poco siempre parte misma nada fuera debajo encima dentro delante cerca alguna ninguna
`)

/** Formal imperatives without accents and pronouns, of the acts at a machine. */
export const imperatives = wordSet(`
  abra accione acerque acople active actualice acuda afloje agarre agregue agite ajuste alinee alimente almacene amarre anote anule apague aplique
  apoye apriete arranque asegure asegurese ate atornille aumente avise baje barra bloquee borre busque calibre calcule cambie caliente cargue centre
  cepille cierre clasifique coja coloque coma compare compense complete compruebe conecte confirme conozca conserve consulte continue controle
  corrija corte cuelgue cuente cubra cumpla de decida defina deje deposite desactive desacople desatornille descargue desbloquee desconecte desenchufe
  desenergice desengrase deseche desinfecte deslice desmonte despresurice detenga determine devuelva diga dirija drene eche ejecute eleve elija elimine
  empiece empuje encienda enchufe energice engrase enjuague enrolle ensamble entregue enrosque envie escriba escuche espere evite examine extraiga
  exprima fije firme fijese gire golpee guarde haga identifique informe impida imprima incline indique inicie inserte inspeccione instale intente
  intercambie introduzca invierta ice inunde lave lea levante libere lije limpie llame lleve llene llegue localice lubrique mantenga marque mezcle
  meta mida mire monitorice monte mueva muestre numere observe obtenga oiga opere oprima ordene pare pase pegue permita pida pinte pise ponga
  posicione presione presurice pregunte prepare proceda proteja pruebe pulse pulverice purgue quite rearme realice recargue recicle recoja reconecte
  recorra recuerde reduzca reemplace registre regule reinicie reinstale rellene repare repita reponga reporte respete restablezca retire revise
  rompa rocie rote ruede rosque saque salga seleccione selle seque separe siga situe sople suba suelte sujete suministre supervise sustituya tapone
  tape tensione tense termine teclee tire toque tome trabaje trabe traccione traiga traslade trasvase ubique una use utilice vacie valide vaya vea
  ventile verifique vierta vigile vuelva
`)

export const nounsLikeInfinitives = wordSet(`
  lugar taller par mar pilar collar hogar radar solar celular lunar angular circular anular lineal mayor menor mejor peor calor color motor sector
  sensor titular auxiliar similar regular particular familiar ejemplar modular tubular pulsar-boton alquiler alfiler carácter cráter cualquier visor
  por ayer mujer poder deber ser menester nadir elixir placer
`)

/** Words in `-ado` and `-ido` that are no participle. */
export const noParticiples = wordSet(`
  adecuado adecuada adecuados adecuadas apropiado apropiada apropiados apropiadas pesado pesada pesados pesadas delgado delgada delgados delgadas
  elevado elevada elevados elevadas complicado complicada cuadrado cuadrada cuadrados cuadradas demasiado demasiada lado grado estado privado
  privada delicado delicada debido debida ruido ácido separado separada dado dada cuidado sentido resultado mercado limitado limitada helado salado
  prolongado prolongada variado variada
`)

export const irregularParticiples = wordSet(
  'abierto cubierto descubierto escrito hecho impreso muerto puesto dispuesto repuesto resuelto roto satisfecho visto vuelto devuelto disuelto',
)

export const formsOfSer = wordSet('es son fue fueron era eran será serán sea sean ser sido siendo sería serían')

export const atOnce = /\b(?:al mismo tiempo|a la vez|simultáneamente|juntos|mientras|con las dos manos|ambas manos)\b/iu

export const goingOn = wordSet('mantenga mantener sujete sujetar sostenga sostener apoye apoyar')

/** Acts that end or watch the one before them. */
export const closing = wordSet(
  'mantenga mantener sostenga sostener suelte soltar deje dejar espere esperar observe observar vigile vigilar mire mirar escuche',
)

export const gestures = { first: wordSet('pulse presione oprima empuje tire levante'), next: wordSet('gire tire empuje levante') }

export const readingOrders = wordSet('vea ver lea leer consulte consultar recuerde recordar compare comparar')

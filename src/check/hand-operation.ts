import type { PageText } from '../model/machine.ts'
import type { Place } from '../source/place.ts'
import { firstInSteps, thing } from './entry-step.ts'

const moving = {
  en: '(?:[Mm]ove|[Dd]rive|[Rr]un|[Rr]aise|[Ll]ower|[Cc]lose|[Oo]pen|[Ee]xtend|[Rr]etract|[Tt]urn|[Ss]tart|[Jj]og|[Ss]witch on|[Hh]old)',
  es: '(?:[Mm]ueva|[Aa]ccione|[Ss]uba|[Ll]evante|[Bb]aje|[Cc]ierre|[Aa]bra|[Gg]ire|[Aa]rranque|[Aa]ctive|[Mm]antenga)',
}
/** Where a sentence, or a clause of one that is an order, begins. */
const begins = '(?<=^|[.!?:,]\\s+(?:and |then |y )?)'

/** Orders to move or switch something by hand: from the screen in manual, by forcing an output, at the override of a valve. */
const orders: Readonly<Record<string, RegExp>> = {
  en: new RegExp(
    [
      `${begins}In manual(?: mode)?,? (?:slowly )?${moving.en}\\b`,
      `${begins}${moving.en}\\b[^.!?]*?\\bin manual\\b(?! (?:no\\.|\\d))`,
      `${begins}Select manual(?: mode)?(?:,? and(?: then)?|\\.) ${moving.en}\\b`,
      `${begins}Jog (?:(?:the|it|both|each|one)\\b|${thing})`,
      `${begins}Force (?:the |this |an |each )?(?:output|coil|valve|motor|contactor|%?Q|${thing})`,
      `${begins}Energi[sz]e (?:(?:the |this |an |each )(?:output|coil|valve|motor|contactor)\\b|${thing})`,
      `${begins}(?:Press|Push|Turn) (?:in )?the (?:manual )?override\\b`,
    ].join('|'),
    'u',
  ),
  es: new RegExp(
    [
      `${begins}En manual,? ${moving.es}\\b`,
      `${begins}${moving.es}\\b[^.!?]*?\\ben manual\\b(?! \\d)`,
      `${begins}(?:Elija|Seleccione|Ponga) (?:el )?(?:modo )?manual(?:,? y|\\.) ${moving.es}\\b`,
      `${begins}Fuerce (?:la |el |una |cada )?(?:salida|bobina|válvula|motor|contactor|%?Q|${thing})`,
      `${begins}(?:Pulse|Presione|Gire) el (?:mando|accionamiento) manual\\b`,
    ].join('|'),
    'u',
  ),
}

/** A page without any of these words has no such order, and need not be walked. */
const telling = /manual|Jog|Force|Energi|override|Fuerce/

/** Where the first step stands that moves or switches an output by hand; undefined where none does, or no words of the language are known. */
export function handOperation(text: PageText, language: string): Place | undefined {
  const pattern = orders[language]
  return pattern && telling.test(text.source.text) ? firstInSteps(text, pattern) : undefined
}

import { meaningOf, signCodes } from '../../hazard/safety-sign.ts'
import { attributePlace } from '../../model/placed-messages.ts'
import type { Place } from '../../source/place.ts'
import type { Rule } from '../rule.ts'

export const unknownSign: Rule = {
  id: 'unknown-sign',
  severity: 'error',
  summary: 'A safety message shows a sign whose code is not one of ISO 7010 that are known here.',
  why: 'A sign of another code has another meaning, and a message without its sign is read less.',
  source: 'ISO 7010',
  guards: 'people',

  *check({ hazards = [] }, graph) {
    for (const message of graph.safetyMessages())
      for (const code of message.symbols) if (meaningOf(code) === undefined) yield problem(code, attributePlace(message, 'symbols'))
    for (const { symbols } of hazards) for (const { value, place } of symbols) if (meaningOf(value) === undefined) yield problem(value, place)
  },
}

function problem(code: string, place: Place) {
  const near = signCodes.filter(
    (it) =>
      it === code.toUpperCase() || it === code.toUpperCase().replace(/^([A-Z])0*(\d{1,2})$/, (_, kind, digits) => kind + digits.padStart(3, '0')),
  )
  return {
    message: `\`${code}\` is no known code of a safety sign`,
    place,
    note: 'W warns, M asks to do, P forbids, each with three digits: W012 electricity, M004 wear eye protection, P010 do not touch',
    ...(near[0] ? { help: `write \`${near[0]}\`: ${meaningOf(near[0])}` } : {}),
  }
}

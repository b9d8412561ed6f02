import { formatsOf } from '../model/changeover.ts'
import { address } from '../site/address.ts'
import { roleName } from '../site/parts/role-name.ts'
import { pathIn, rolesWithLessons } from '../site/site-map.ts'
import { fill } from '../site/words/fill.ts'
import { planningWords } from '../site/words/planning.ts'
import { checkoutPage } from './checkout-page.ts'
import { factsOf, type PrintInput, partsHtml } from './machine-book.ts'
import { type Room, sheetHtml } from './sheet.ts'
import { signOffPage } from './sign-off-page.ts'

export type SheetKind = 'lockout' | 'lesson' | 'alarms' | 'parts' | 'set-up' | 'checkout' | 'sign-off'

export interface Sheet {
  /** Name of its file, without an ending. */
  name: string
  /** Pages that it should take at most. */
  most: number
  /** The document. A sheet that takes more pages is tried again with less room. */
  html(room: Room): string
}

/** The sheets of a kind: one for each lockout, lesson, alarm, product, role or device with something to measure, one for all parts. `tag`: of that device alone. */
export function sheetsOf(input: PrintInput, kind: SheetKind, tag?: string): Sheet[] {
  const { machine, language, labels, words, paper, styles } = input
  const facts = factsOf(input)
  const lists = new Set([labels.usedAlsoOn])
  return pagesOf(input, kind, tag).flatMap(({ name, at, lookUp, html: ownHtml }) => {
    const path = pathIn(machine, language, at)
    const html = ownHtml ? ownHtml(path) : input.read(path)
    if (html === undefined) return []
    const most = kind === 'lockout' ? 2 : 1
    const sheet: Sheet = {
      name,
      most,
      html: (room) => sheetHtml({ path, html, lookUp, facts, names: labels, words, paper, styles, lists, room }),
    }
    return [sheet]
  })
}

interface SheetPage {
  name: string
  /** Address of its page, the same in every language. */
  at: string
  lookUp: string | undefined
  /** What stands on the sheet in place of the page of that path; undefined where there is nothing to put on one. */
  html?: (path: string) => string | undefined
}

function pagesOf(input: PrintInput, kind: SheetKind, tag: string | undefined): SheetPage[] {
  const { machine, graph, language, labels, words } = input
  switch (kind) {
    case 'parts':
      return machine.parts.length === 0 ? [] : [{ name: 'parts', at: address.parts, lookUp: labels.parts, html: () => partsHtml(input, true) }]
    case 'alarms':
      return machine.alarms.map(({ number }) => pageOf(address.alarm(number.value), number.value))
    case 'lockout':
      return graph.pagesIn('lockout').map((page) => pageOf(address.page(page.id), page.frontmatter.number))
    case 'lesson':
      return graph.pagesIn('lessons').map((page) => pageOf(address.page(page.id), undefined))
    case 'set-up':
      return formatsOf(machine).map((format) => pageOf(address.format(format), format))
    case 'checkout':
      return machine.devices
        .filter((device) => tag === undefined || device.tag.value === tag)
        .map((device) => ({
          name: `checkout-${address.tag(device.tag.value).replace(/^tags\/|\.html$/g, '')}`,
          at: address.tag(device.tag.value),
          lookUp: device.tag.value,
          html: (path) => checkoutPage(input.read(path), checkoutWords(input)),
        }))
    case 'sign-off': {
      const planning = planningWords(language)
      if (!planning) throw new Error(`a sign-off sheet has no words for the language ${language}`)
      return rolesWithLessons(machine, graph).map((role) => ({
        name: `sign-off-${role}`,
        at: address.path(role),
        lookUp: roleName({ machine, language }, role),
        html: () => signOffPage(machine, graph, language, role, planning),
      }))
    }
  }
  function checkoutWords({ labels: { meterName, meterDate, meterRecord, signature } }: PrintInput) {
    return {
      checkout: meterRecord,
      measured: words.measured,
      passes: words.passes,
      yesNo: words.yesNo,
      lines: [words.meterUsed, fill(words.result, { yesNo: words.yesNo }), words.remarks, meterName, meterDate, signature],
    }
  }
}

/** A sheet is called as its page: `lockout-lo-1`. */
function pageOf(at: string, lookUp: string | undefined): SheetPage {
  return { name: at.replace(/\.html$/, '').replaceAll('/', '-'), at, lookUp }
}

import type { Machine } from '../../model/machine.ts'
import { type PageLevel, pageLevels } from '../../model/page-level.ts'
import { readPages } from '../../model/prose/read-text.ts'
import { readingLimit } from '../../model/reading-limit.ts'
import { collections } from '../../model/schema/pages.ts'
import { rememberedOf } from '../../source/once.ts'
import { type Context, langOf } from '../context.ts'
import { addressOf } from '../site-map.ts'
import { inLanguage } from '../words/decimal.ts'
import { fill } from '../words/fill.ts'
import type { Labels } from '../words/labels.ts'
import type { TableData } from './data-table.ts'

/** The level of every page in every language. */
const levelsOf = rememberedOf((machine: Machine) => pageLevels(machine, readPages(machine)))

/** The level of a page in the language of the site, in words, with its limit; undefined where it is too short to have one. */
export function levelText({ machine, labels, language }: Context, id: string): string | undefined {
  const found = levelsOf(machine).find((it) => it.page.id === id && it.language === language)
  if (!found?.level?.reliable) return undefined
  return `${scaleName(labels, found)} ${shown(found.level.value, language)}${found.limit ? ` (${readerName(labels, found.reader)}: ${limitText(labels, found, language)})` : ''}`
}

/** What each collection asks of each reader: how many pages have a level, the middle one, and the hardest with its page. */
export function readingTable(context: Context): TableData {
  const { machine, labels, language, link, titleOf } = context
  const own = levelsOf(machine).filter((it) => it.language === language)
  const rows = collections.flatMap((collection) =>
    [
      ...Map.groupBy(
        own.filter(({ page }) => page.collection === collection),
        ({ reader }) => reader,
      ),
    ].map(([reader, pages]) => {
      const long = pages.filter(({ level }) => level?.reliable).sort((a, b) => hardness(a) - hardness(b))
      const [middle, hardest] = [long[(long.length - 1) >> 1], long.at(-1)]
      const limit = readingLimit(machine, reader, language)
      return [
        { text: collectionName(labels, collection) },
        { text: readerName(labels, reader) },
        { text: fill(labels.readingOf, { have: long.length, of: pages.length }) },
        { text: middle ? levelValue(middle, language) : labels.readingTooShort },
        { text: limit && hardest ? limitText(labels, hardest, language) : '' },
        hardest
          ? {
              text: `${titleOf(hardest.page).text} · ${levelValue(hardest, language)}`,
              lang: langOf(context, titleOf(hardest.page)),
              ...(hardest.page.collection === 'cautions' ? {} : { href: link(addressOf(hardest.page)) }),
            }
          : { text: '' },
      ]
    }),
  )
  return {
    headings: [labels.readingKind, labels.readingReader, labels.readingPages, labels.readingMiddle, labels.readingLimit, labels.readingHardest],
    rows,
  }
}

/** The name of the scale on which the pages of a language are measured. */
export function scaleOf({ machine, labels, language }: Context): string {
  const found = levelsOf(machine).find((it) => it.language === language && it.level)
  return found ? scaleName(labels, found) : labels.readingOther
}

const hardness = ({ level }: PageLevel) => (level?.scale === 'ease' ? -level.value : (level?.value ?? 0))
/** One decimal, with the sign of the language. */
const shown = (value: number, language: string) => inLanguage(value.toFixed(1), language)
const levelValue = ({ level }: PageLevel, language: string) => (level ? shown(level.value, language) : '')

function scaleName(labels: Labels, { level }: PageLevel): string {
  if (level?.measure === 'fleschKincaidGrade') return labels.readingGrade
  return level?.measure === 'szigrisztPazos' ? labels.readingEase : labels.readingOther
}

function limitText(labels: Labels, { level, limit }: PageLevel, language: string): string {
  return limit
    ? fill(level?.scale === 'ease' ? labels.readingAtLeast : labels.readingAtMost, {
        value: inLanguage(String(limit.value), language),
      })
    : ''
}

export function readerName(labels: Labels, reader: PageLevel['reader']): string {
  return { operator: labels.readerOperator, maintenance: labels.readerMaintenance, engineer: labels.readerEngineer }[reader]
}

function collectionName(labels: Labels, collection: PageLevel['page']['collection']): string {
  return {
    components: labels.components,
    lessons: labels.lessons,
    lockout: labels.lockouts,
    alarms: labels.alarms,
    procedures: labels.procedures,
    parts: labels.parts,
    front: labels.kindFront,
    cautions: labels.kindCautions,
  }[collection]
}

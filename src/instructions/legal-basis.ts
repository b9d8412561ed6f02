/** The law that a machine's instructions follow in the European Union. */
export type LegalBasis = 'Directive 2006/42/EC' | 'Regulation (EU) 2023/1230'

/** The first day on which the Regulation applies and the Directive no longer does. Source: Regulation (EU) 2023/1230 as corrected in OJ L 169, 4.7.2023. */
const regulationFrom = '2027-01-20'

/** The law of the day, as `2027-01-20`, on which a machine is placed on the market. */
export const legalBasis = (placedOnMarket: string): LegalBasis =>
  placedOnMarket < regulationFrom ? 'Directive 2006/42/EC' : 'Regulation (EU) 2023/1230'

/** Years for which a digital manual stays online at least. Source: Regulation (EU) 2023/1230, Article 10(7)(c). */
const onlineYears = 10

/** The day until which a digital manual must be online: the expected life of the machine, and ten years at least. */
export function onlineUntilAtLeast(placedOnMarket: string, expectedLifeYears: number): string {
  const [year = '', month = '', day = ''] = placedOnMarket.split('-')
  // Part of a year counts as a year.
  const last = Number(year) + Math.max(onlineYears, Math.ceil(expectedLifeYears))
  return `${String(last).padStart(4, '0')}-${month}-${month === '02' && day === '29' ? '28' : day}`
}

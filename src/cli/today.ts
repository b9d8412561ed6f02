import { UsageError } from './options.ts'

/**
 * The date in UTC on which acceptances are judged, as `2026-09-14`. SOURCE_DATE_EPOCH (seconds, from
 * reproducible-builds.org) takes the place of the clock, so that an old release can be built again.
 */
export function today(): string {
  const epoch = process.env.SOURCE_DATE_EPOCH
  if (epoch !== undefined && !/^\d{1,11}$/.test(epoch)) throw new UsageError(`SOURCE_DATE_EPOCH takes seconds since 1970, not \`${epoch}\``)
  const now = epoch === undefined ? new Date() : new Date(Number(epoch) * 1000)
  return now.toISOString().slice(0, 10)
}

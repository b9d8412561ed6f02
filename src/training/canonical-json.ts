/** What JSON can hold. A member that is undefined is none. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [name: string]: Json | undefined }

/**
 * One text for one value: members in the order of their UTF-16 code units, no blanks, numbers and strings as ECMAScript
 * writes them. RangeError for a number that is not finite and for half a surrogate pair. Source: RFC 8785 (JCS).
 */
export function canonicalJson(value: Json): string {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new RangeError(`JSON has no number ${value}`)
  if (typeof value === 'string' && isBroken(value)) throw new RangeError('half a surrogate pair is no text')
  if (typeof value !== 'object' || value === null) return JSON.stringify(value)
  if (isList(value)) return `[${value.map(canonicalJson).join(',')}]`
  const members = Object.keys(value)
    .sort()
    .flatMap((name) => {
      const member = value[name]
      return member === undefined ? [] : [`${canonicalJson(name)}:${canonicalJson(member)}`]
    })
  return `{${members.join(',')}}`
}

const isList = (value: Json): value is readonly Json[] => Array.isArray(value)

/** Whether a text holds half a surrogate pair. */
export const isBroken = (text: string): boolean => /\p{Surrogate}/u.test(text)

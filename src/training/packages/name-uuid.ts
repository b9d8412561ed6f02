import { sha1 } from '@noble/hashes/legacy.js'
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js'

/** The name space of all that Fettle gives a UUID by its name; drawn once. */
const ownNames = '2f1d2c2e-3b58-4d2a-9a35-6b1f6a0c7d41'

/**
 * The same UUID for the same name, on every machine. Version 5, since systems refuse the later ones; its SHA-1 guards nothing.
 * Source: RFC 9562, section 5.5.
 */
export function nameUuid(name: string, nameSpace: string = ownNames): string {
  const space = hexToBytes(nameSpace.split('-').join(''))
  const text = new TextEncoder().encode(name)
  const bytes = new Uint8Array(space.length + text.length)
  bytes.set(space)
  bytes.set(text, space.length)
  const hash = sha1(bytes).slice(0, 16)
  hash[6] = ((hash[6] ?? 0) & 0x0f) | 0x50
  hash[8] = ((hash[8] ?? 0) & 0x3f) | 0x80
  const hex = bytesToHex(hash)
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`
}

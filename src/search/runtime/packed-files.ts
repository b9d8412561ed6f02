import type { EngineScope } from './scope.ts'

declare const self: EngineScope

/** Where Pagefind believes its files to be. Cut off again before a file is loaded. */
export const basePath = '/__pagefind/'

/** Takes the place of `fetch` in Pagefind: its only way to its files. */
export async function readPacked(address: string): Promise<object> {
  const name = address.slice(basePath.length).replace(/\?.*$/, '')
  const host = self.__fettleHost
  const content = await host.load(name).catch((error: unknown) => {
    host.failure = error instanceof Error ? error.message : String(error)
    throw error
  })
  const bytes = decodeBase64(content)
  return {
    ok: true,
    status: 200,
    arrayBuffer: async () => bytes.buffer,
    json: async () => JSON.parse(new TextDecoder().decode(bytes)),
  }
}

/** Takes the place of `document` in Pagefind, which reads the language of the page from it. A worker has none. */
export const languageOnly = {
  currentScript: null,
  querySelector: () => ({ getAttribute: () => self.__fettleHost.language }),
}

/**
 * Takes the place of `Intl` in Pagefind. It makes a new segmenter for every search, which takes longer than the
 * search; only languages written without spaces need one.
 */
export const segmenting = /^(zh|ja|th)\b/.test(self.__fettleHost.language) ? Intl : {}

function decodeBase64(base64: string): Uint8Array {
  const text = atob(base64)
  const bytes = new Uint8Array(text.length)
  for (let at = 0; at < text.length; at++) bytes[at] = text.charCodeAt(at)
  return bytes
}

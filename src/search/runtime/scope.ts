import type { EngineAnswer } from '../merge-pages.ts'

/** What the engine needs from around it, in the page as in a worker. */
export interface EngineHost {
  /** In lower case, from `<html lang>`. */
  language: string
  /** Content of a packed file, in base64. */
  load(name: string): Promise<string>
  /** Why a file could not be loaded for the question in hand. */
  failure?: string
}

export type Ask = (text: string, limit: number) => Promise<EngineAnswer>

/** Names on the global object by which the parts of `core.js` and the data files reach each other. */
export interface EngineScope {
  __fettleHost: EngineHost
  /** In the page only: a worker is asked by message. */
  __fettleAsk?: Ask
}

/** What the page and the worker tell each other. `id` ties an answer to its question. */
export type ToWorker =
  | { kind: 'ask'; id: number; text: string; limit: number }
  | { kind: 'loaded'; id: number; value: string }
  | { kind: 'failed'; id: number; reason: string }
export type FromWorker =
  | { kind: 'ready' }
  | { kind: 'load'; id: number; name: string }
  | { kind: 'answer'; id: number; answer: EngineAnswer }
  | { kind: 'failed'; id: number; reason: string }

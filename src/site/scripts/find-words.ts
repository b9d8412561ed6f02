/**
 * Where pieces of text follow each other in a text, whatever the white space: the range from the first to the last of them.
 * Undefined where one is missing.
 */
export function findWords(text: string, pieces: readonly string[]): { start: number; end: number } | undefined {
  const pattern = pieces.map((piece) => piece.split(' ').map(escaped).join('\\s+')).join('[^]*?')
  const found = pieces.length > 0 ? new RegExp(pattern).exec(text) : null
  return found ? { start: found.index, end: found.index + found[0].length } : undefined
}

const escaped = (word: string) => word.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&')

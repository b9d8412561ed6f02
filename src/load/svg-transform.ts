/** `[a, b, c, d, e, f]`: x' = a·x + c·y + e, y' = b·x + d·y + f. Source: SVG 1.1, 7.4. */
export type Matrix = readonly [number, number, number, number, number, number]

export const identity: Matrix = [1, 0, 0, 1, 0, 0]

/** The transformation that applies `inner` first and `outer` after it. */
export function multiply(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer
  const [g, h, i, j, k, l] = inner
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f]
}

/** Reads a `transform` attribute; angles are in degrees. Functions it does not know leave the matrix as it is. */
export function parseTransform(text: string): Matrix {
  let matrix = identity
  for (const [, name, list = ''] of text.matchAll(/(\w+)\s*\(([^)]*)\)/g)) {
    const n = list
      .trim()
      .split(/[\s,]+/)
      .map(Number)
    matrix = multiply(matrix, one(name ?? '', n))
  }
  return matrix
}

function one(name: string, [p = 0, q, r, s = 0, t = 0, u = 0]: number[]): Matrix {
  const radians = (p * Math.PI) / 180
  switch (name) {
    case 'translate':
      return [1, 0, 0, 1, p, q ?? 0]
    case 'scale':
      return [p, 0, 0, q ?? p, 0, 0]
    case 'rotate': {
      const turn: Matrix = [Math.cos(radians), Math.sin(radians), -Math.sin(radians), Math.cos(radians), 0, 0]
      if (q === undefined || r === undefined) return turn
      return multiply(multiply([1, 0, 0, 1, q, r], turn), [1, 0, 0, 1, -q, -r])
    }
    case 'skewX':
      return [1, 0, Math.tan(radians), 1, 0, 0]
    case 'skewY':
      return [1, Math.tan(radians), 0, 1, 0, 0]
    case 'matrix':
      return [p, q ?? 0, r ?? 0, s, t, u]
    default:
      return identity
  }
}

/** Bytes that let errors in `data` be mended: the rest of a division in GF(256) with the polynomial 0x11d. Source: ISO/IEC 18004, 7.5.2 (from memory). */
export function reedSolomon(data: readonly number[], checkBytes: number): number[] {
  const divisor = generator(checkBytes)
  const rest = new Array<number>(checkBytes).fill(0)
  for (const byte of data) {
    const factor = byte ^ (rest.shift() ?? 0)
    rest.push(0)
    for (const [index, coefficient] of divisor.entries()) rest[index] = (rest[index] ?? 0) ^ multiply(coefficient, factor)
  }
  return rest
}

/** Coefficients of (x - 1)(x - 2)(x - 4)… without the first, which is 1. */
function generator(degree: number): number[] {
  let polynomial = [1]
  let root = 1
  for (let step = 0; step < degree; step++) {
    const by = root
    polynomial = [...polynomial, 0].map((it, index) => it ^ multiply(polynomial[index - 1] ?? 0, by))
    root = multiply(root, 2)
  }
  return polynomial.slice(1)
}

function multiply(a: number, b: number): number {
  let product = 0
  for (let bit = 7; bit >= 0; bit--) product = (product << 1) ^ ((product >> 7) * 0x11d) ^ (((b >> bit) & 1) * a)
  return product
}

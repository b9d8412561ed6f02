import { escapeHtml } from './html-tree.ts'
import { qrCode } from './qr-code.ts'

const quietModules = 4

/** A QR code as a drawing, with the light border that readers need. */
export function qrSvg(text: string): string {
  const code = qrCode(text)
  const size = code.length + 2 * quietModules
  const squares = code.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x + quietModules} ${y + quietModules}h1v1h-1z`] : [])))
  return `<svg class="qr" viewBox="0 0 ${size} ${size}" role="img" aria-label="${escapeHtml(text)}" shape-rendering="crispEdges"><rect width="${size}" height="${size}" fill="#fff"/><path d="${squares.join('')}" fill="#000"/></svg>`
}

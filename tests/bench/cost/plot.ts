export interface Series {
  name: string
  /** Pages, and what they cost in `unit`. */
  points: readonly (readonly [pages: number, cost: number])[]
}

const size = { width: 640, height: 400, left: 70, right: 150, top: 40, bottom: 50 }

/** Costs against pages, both on logarithmic scales, as an SVG: what grows in step with the pages climbs ten times from one line of ten times the pages to the next. */
export function plotSvg(title: string, unit: string, series: readonly Series[]): string {
  const points = series.flatMap((it) => it.points)
  const [x, y] = [scale(points.map(([pages]) => pages)), scale(points.map(([, cost]) => cost))]
  const left = (pages: number) => size.left + x.share(pages) * (size.width - size.left - size.right)
  const top = (cost: number) => size.height - size.bottom - y.share(cost) * (size.height - size.top - size.bottom)
  const xy = ([pages, cost]: readonly [number, number]) => `${left(pages).toFixed(1)},${top(cost).toFixed(1)}`
  const text = (at: string, words: string, more = '') => `<text ${at} ${more}>${words.replace(/&/g, '&amp;').replace(/</g, '&lt;')}</text>`
  const [right, bottom] = [size.width - size.right, size.height - size.bottom]
  const grid = [
    ...x.ticks.map((tick) => `<path d="M${left(tick)} ${size.top}V${bottom}"/>`),
    ...y.ticks.map((tick) => `<path d="M${size.left} ${top(tick)}H${right}"/>`),
  ]
  const names = [
    ...x.ticks.map((tick) => text(`x="${left(tick)}" y="${bottom + 18}"`, tick.toLocaleString('en'), 'text-anchor="middle"')),
    ...y.ticks.map((tick) => text(`x="${size.left - 8}" y="${top(tick) + 4}"`, String(tick), 'text-anchor="end"')),
    text(`x="${(size.left + right) / 2}" y="${size.height - 10}"`, 'pages', 'text-anchor="middle"'),
    text(`x="10" y="${size.top - 14}"`, unit),
    text(`x="${size.width / 2}" y="18"`, title, 'text-anchor="middle" font-weight="bold"'),
  ]
  // By their dashes and not by colour.
  const lines = series.map(({ name, points }, index) => {
    const last = points.at(-1)
    const dash = index === 0 ? '' : ` stroke-dasharray="${2 + index * 4} 4"`
    return [
      `<polyline points="${points.map(xy).join(' ')}" fill="none" stroke="#000" stroke-width="2"${dash}/>`,
      ...points.map((point) => `<circle cx="${xy(point).replace(',', '" cy="')}" r="3"/>`),
      ...(last ? [text(`x="${left(last[0]) + 8}" y="${top(last[1]) + 4}"`, name)] : []),
    ].join('')
  })
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size.width} ${size.height}" font-family="sans-serif" font-size="12"><rect width="100%" height="100%" fill="#fff"/><g stroke="#bbb" fill="none">${grid.join('')}</g>${names.join('')}${lines.join('')}</svg>\n`
}

/** A logarithmic scale over whole decades around the values; `share` runs from 0 to 1. */
function scale(values: readonly number[]): { ticks: number[]; share(value: number): number } {
  const low = Math.floor(Math.log10(Math.min(...values)))
  const high = Math.max(low + 1, Math.ceil(Math.log10(Math.max(...values))))
  const ticks = Array.from({ length: high - low + 1 }, (_, index) => Number(`1e${low + index}`))
  return { ticks, share: (value) => (Math.log10(value) - low) / (high - low) }
}

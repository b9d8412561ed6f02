/** What a rule of the same selector, or of its end, has said of a box so far. */
type Box = Readonly<Record<string, string>>

/**
 * Margins in place of the `gap` of flex boxes, for engines that have it in grids only: Chromium before 84. They are
 * told by `appearance`, which came with the same version. `css` is flat, as esbuild writes it: rules, and rules in
 * `@media`.
 */
export function flexGaps(css: string): string {
  const boxes = new Map<string, Box>()
  const margins = blocksOf(css).map(({ head, body }) => {
    if (!head.startsWith('@')) return marginsOf(head, body, boxes)
    if (!head.startsWith('@media')) return ''
    const inside = blocksOf(body)
      .map((rule) => marginsOf(rule.head, rule.body, boxes))
      .join('')
    return inside && `${head}{${inside}}`
  })
  return `@supports not (appearance:none){${margins.join('')}}`
}

interface Block {
  head: string
  body: string
}

/** The blocks of a text that stand in no other block. Strings and addresses hold no braces here. */
function blocksOf(text: string): Block[] {
  const blocks: Block[] = []
  let [start, open, depth] = [0, 0, 0]
  for (let at = 0; at < text.length; at++) {
    if (text[at] === '{' && depth++ === 0) open = at
    if (text[at] !== '}' || --depth > 0) continue
    blocks.push({ head: text.slice(start, open).trim(), body: text.slice(open + 1, at) })
    start = at + 1
  }
  return blocks
}

function marginsOf(head: string, body: string, boxes: Map<string, Box>): string {
  const said = Object.fromEntries(body.split(';').map((line) => [line.slice(0, line.indexOf(':')).trim(), line.slice(line.indexOf(':') + 1).trim()]))
  return selectorsOf(head)
    .map((selector) => {
      const before = boxOf(selector, boxes)
      const box = { ...before, ...said }
      boxes.set(selector, box)
      const speaks = ['display', 'gap', 'row-gap', 'column-gap', 'flex-direction', 'flex-wrap'].some((name) => name in said)
      return speaks ? marginsIn(selector, box, before && flowOf(before)) : ''
    })
    .join('')
}

/** `.a .b .c` is `.c` too. */
function boxOf(selector: string, boxes: ReadonlyMap<string, Box>): Box | undefined {
  return boxes.get(selector) ?? (selector.includes(' ') ? boxOf(selector.slice(selector.indexOf(' ') + 1), boxes) : undefined)
}

/** How the children of a flex box with a gap follow each other; undefined for any other box. */
function flowOf(box: Box): 'row' | 'lines' | 'column' | undefined {
  if (!/flex/.test(box.display ?? '') || !(box.gap || box['row-gap'] || box['column-gap'])) return undefined
  return box['flex-direction'] === 'column' ? 'column' : box['flex-wrap'] === 'wrap' ? 'lines' : 'row'
}

/**
 * Margins before all but the first child, which a margin of its own outweighs: it may push the child away. Where a row
 * goes on below, the first child of a line is not known: there each child has them behind it, whatever is its own.
 */
function marginsIn(selector: string, box: Box, before: ReturnType<typeof flowOf>): string {
  const flow = flowOf(box)
  if (!flow) return ''
  const [row = '0', column = row] = (box.gap ?? '0').split(/\s+(?![^(]*\))/)
  const [down, along] = [box['row-gap'] ?? row, box['column-gap'] ?? column]
  const [next, each] = [`${selector}>*+*`, `${selector}>:not(#_)`]
  if (flow === 'lines') return `${before === 'row' ? `${next}{margin-left:0}` : ''}${each}{margin-right:${along};margin-bottom:${down}}`
  const behind = before === 'lines' ? `${each}{margin-right:0;margin-bottom:0}` : ''
  return flow === 'column' ? `${behind}${next}{margin-left:0;margin-top:${down}}` : `${behind}${next}{margin-left:${along}}`
}

/** Commas inside brackets divide nothing. */
const selectorsOf = (head: string) => head.split(/,(?![^(]*\))/).map((selector) => selector.trim())

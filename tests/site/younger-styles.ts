/** What came to styles after Chromium 80: the version that brought it, and the reason where the site may use it all the same. */
interface Younger {
  pattern: RegExp
  since: number
  /** What an old panel shows instead. */
  instead?: string
}

/** From memory of the release notes; `gap` of flex boxes, `:focus-visible` and lists in `:not` were seen to be missing in 80. */
export const youngerStyles: readonly Younger[] = [
  { pattern: /:focus-visible/, since: 86, instead: 'the frame of :focus, after a touch too' },
  { pattern: /accent-color:/, since: 93, instead: 'ticks in the colour of the browser' },
  { pattern: /text-underline-offset:/, since: 87, instead: 'a line closer to the letters' },
  { pattern: /text-decoration-thickness:/, since: 89, instead: 'a line as thick as the browser draws it' },
  { pattern: /[{;]color-scheme:/, since: 81, instead: 'scroll bars and empty boxes in their light form' },
  { pattern: /@media[^{]*forced-colors/, since: 89, instead: 'our own colours' },
  { pattern: /forced-color-adjust:/, since: 89, instead: 'our own colours' },
  { pattern: /[{;]print-color-adjust:/, since: 136, instead: 'the prefixed one beside it' },
  { pattern: /[{;]appearance:/, since: 84, instead: 'the prefixed one beside it' },
  { pattern: /:is\(/, since: 88 },
  { pattern: /:where\(/, since: 88 },
  { pattern: /:has\(/, since: 105 },
  { pattern: /:not\([^)]*[ ,>+~]/, since: 88 },
  { pattern: /:modal|:popover-open|:user-(in)?valid|:dir\(|:state\(|:open\b/, since: 105 },
  { pattern: /::marker|::details-content|::highlight/, since: 86 },
  { pattern: /&/, since: 120 },
  { pattern: /@(layer|container|property|scope|starting-style|counter-style|view-transition|position-try)/, since: 85 },
  { pattern: /@media[^{]*([<>]|prefers-contrast|dynamic-range|scripting|update|prefers-reduced-transparency)/, since: 96 },
  { pattern: /[{;]inset(-|:)/, since: 87 },
  { pattern: /[{;](margin|padding|border)-(inline|block):/, since: 87 },
  { pattern: /aspect-ratio:/, since: 88 },
  { pattern: /content-visibility:|contain-intrinsic/, since: 85 },
  { pattern: /overflow(-[xy])?:clip/, since: 90 },
  { pattern: /[{;](translate|rotate|scale):/, since: 104 },
  { pattern: /text-wrap|text-box|hyphenate-|hyphens:auto/, since: 88 },
  { pattern: /scrollbar-(gutter|color|width):/, since: 94 },
  { pattern: /[{;]mask(-[a-z]+)?:/, since: 120 },
  { pattern: /animation-timeline|view-transition|anchor-name|field-sizing|interpolate-size/, since: 111 },
  { pattern: /subgrid|masonry/, since: 117 },
  { pattern: /(color-mix|oklch|oklab|lch|lab|light-dark|color)\(/, since: 111 },
  { pattern: /\d(dvh|svh|lvh|dvw|svw|lvw|cqw|cqh|lh|rlh|cap)\b/, since: 108 },
  { pattern: /[^-]image-set\(|linear\(|[^a-z-](round|mod|rem|sin|cos|sqrt|pow|hypot)\(/, since: 113 },
]

/** What a style sheet asks for that an old panel neither has nor has something else for. */
export function missingStyles(css: string): string[] {
  const strings = css.replace(/"[^"]*"|'[^']*'/g, '""').replace(/url\([^)]*\)/g, 'url()')
  return youngerStyles.flatMap(({ pattern, instead }) => {
    const used = pattern.exec(strings)
    return used && !instead ? [used[0]] : []
  })
}

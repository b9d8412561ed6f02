import type { MachinePanel } from '../model/panel.ts'
import { panelSizes } from '../panel/panel-sizes.ts'

/** The screen of the machine, fitted either way round. An office screen of the same resolution is taken for it, and can be told that it is not. */
export function panelQuery({ widthPx, heightPx }: Pick<MachinePanel, 'widthPx' | 'heightPx'>): string {
  return `(device-width: ${widthPx}px) and (device-height: ${heightPx}px), (device-width: ${heightPx}px) and (device-height: ${widthPx}px)`
}

/** Steps of larger text, as `styles/tokens.css` has them: value of `data-text` -> times the usual size. */
export const textSteps = { larger: 1.2, largest: 1.4 } as const

/** Narrower than this, in times the text size, two columns do not fit beside each other. */
const twoColumnsRem = 47

/** On a screen of this height nameplate and rail do not grow with larger text, as `styles/comfort.css` has it. */
const lowPx = 560

/** How a page stands where it is narrow. No media query can ask for the size of the text, so the rules are written where they hold. */
const narrowRules: readonly (readonly [string, string])[] = [
  ['.device-place', 'order:2'],
  ['.meter-result', 'position:static;max-height:none'],
  ['.plate', 'flex-wrap:wrap;align-content:center;gap:0 12px;padding:4px 26px'],
  ['.plate-name', 'flex-basis:100%'],
  ['.plate-key', 'position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)'],
  ['.row', 'padding-left:10px;padding-right:10px'],
]

/** Paper has sizes of its own. */
const onScreenOnly = (query: string) => query.replace(/\(device-width/g, 'screen and (device-width')

const narrow = (root: string) => narrowRules.map(([what, how]) => `${root} ${what}{${how}}`).join('')

/**
 * What no style sheet can hold for every machine: text and targets as the reader at the panel needs them, by themselves on its
 * screen or where that was chosen (`data-sizes`), and the rules for narrow pages.
 */
export function panelStyles(panel: MachinePanel | undefined): string {
  const everywhere = `@media screen and (max-width:900px){${narrow(':root')}}\n`
  if (!panel) return everywhere
  const onScreen = rulesUnder(":root:not([data-sizes='office'])", panel)
  return `${everywhere}@media ${onScreenOnly(panelQuery(panel))}{${onScreen}}\n@media screen{${rulesUnder(":root[data-sizes='panel']", panel)}}\n`
}

function rulesUnder(root: string, panel: MachinePanel): string {
  const { rootPx, smallestShare, targetPx } = panelSizes(panel)
  const isLow = Math.min(panel.widthPx, panel.heightPx) <= lowPx
  const sizes = [
    `--root:${rootPx}px`,
    `--small:${smallestShare.toFixed(3)}rem`,
    `--less:${Math.max(0.9, smallestShare).toFixed(3)}rem`,
    `--target:${targetPx}px`,
    `--touch:${isLow ? `${targetPx}px` : `max(2.8rem,${targetPx}px)`}`,
    `--rail-height:${isLow ? `max(${(2.9 * rootPx).toFixed(1)}px,${targetPx}px)` : `max(2.9rem,${targetPx}px)`}`,
  ]
  const isNarrow = (times: number) => panel.widthPx / (rootPx * times) < twoColumnsRem
  const steps = Object.entries(textSteps).filter(([, times]) => isNarrow(times) && !isNarrow(1))
  return [`${root}{${sizes.join(';')}}`, ...(isNarrow(1) ? [narrow(root)] : steps.map(([step]) => narrow(`${root}[data-text='${step}']`)))].join('')
}

import {
  append,
  attribute,
  childElements,
  detach,
  element,
  elementsIn,
  escapeHtml,
  firstElement,
  firstWithClass,
  type HtmlElement,
  hasClass,
  parsePage,
  textOf,
  writeElement,
} from './html-tree.ts'

export interface CheckoutWords {
  /** Heading, after the tag of the device. */
  checkout: string
  /** Heads of the empty columns. */
  measured: string
  passes: string
  yesNo: string
  /** Lines to fill in below the table. */
  lines: readonly string[]
}

/**
 * The page of a device as a record to fill in: lockouts, signal path, what should be read, and room for what was. Undefined
 * where nothing is measured at the device.
 */
export function checkoutPage(devicePage: string, words: CheckoutWords): string | undefined {
  const page = parsePage(devicePage)
  const main = firstElement(page, ({ tagName }) => tagName === 'main')
  const meters = main ? [...elementsIn(main)].filter((it) => attribute(it, 'data-meter') !== undefined) : []
  const expected = meters.filter((it) => tableOf(it))
  const head = main && firstWithClass(main, 'device-head')
  if (!main || !head || expected.length === 0) return undefined
  const heading = firstElement(head, ({ tagName }) => tagName === 'h1')
  if (heading) append(heading, `: ${words.checkout}`)
  const before = [head, firstWithClass(main, 'where'), firstWithClass(main, 'act-lockout'), ...pathsOf(main)].filter((it) => it !== undefined)
  // What is said of every meter of a device is said once.
  const cautions = [...new Set(expected.flatMap((it) => childElements(it).filter(isCaution).map(writeElement)))]
  const records = expected.flatMap((meter) => [...childElements(meter).filter(isHint).map(writeElement), recordOf(meter, expected.length > 1, words)])
  const lines = words.lines.map((line) => `<p>${escapeHtml(line)} <span class="sign-line"></span></p>`).join('')
  const title = firstElement(page, ({ tagName }) => tagName === 'title')
  const parts = [...before.map(writeElement), ...cautions, ...records, `<div class="record-lines">${lines}</div>`]
  return `<!doctype html>${title ? writeElement(title) : ''}<body class="kind-checkout"><main>${parts.join('')}</main></body>`
}

const isCaution = (it: HtmlElement) => hasClass(it, 'meter-caution')
const isHint = (it: HtmlElement) => it.tagName === 'p' && hasClass(it, 'hint')

/** The paths of the page itself; those of the meters are the same again. */
function pathsOf(main: HtmlElement): HtmlElement[] {
  const signals = firstWithClass(main, 'signals')
  return signals ? [...elementsIn(signals)].filter((it) => hasClass(it, 'path')) : []
}

/** The table of what a device should read, and not that of its faults. */
function tableOf(meter: HtmlElement): HtmlElement | undefined {
  const details = firstElement(meter, (it) => hasClass(it, 'fault-details') && attribute(it, 'data-fault-table') === undefined)
  return details && firstElement(details, ({ tagName }) => tagName === 'table')
}

function recordOf(meter: HtmlElement, isNamed: boolean, { measured, passes, yesNo }: CheckoutWords): string {
  const table = tableOf(meter)
  const name = firstElement(meter, ({ tagName }) => tagName === 'h2')
  const signal = name && firstElement(name, ({ tagName }) => tagName === 'b')
  if (!table) return ''
  for (const row of elementsIn(table)) {
    if (row.tagName !== 'tr') continue
    const isHead = row.parentNode && 'tagName' in row.parentNode && row.parentNode.tagName === 'thead'
    const cells = isHead
      ? [element('th', { scope: 'col' }, measured), element('th', { scope: 'col' }, passes)]
      : [element('td', { class: 'blank' }), element('td', { class: 'yes-no' }, yesNo)]
    for (const cell of cells) append(row, cell)
  }
  detach(table)
  return `${isNamed && signal ? `<h2>${escapeHtml(textOf(signal))}</h2>` : ''}${writeElement(element('div', { class: 'checkout-table' }, table))}`
}

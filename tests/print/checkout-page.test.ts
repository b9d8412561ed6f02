import { expect, test } from 'vitest'
import { checkoutPage } from '../../src/print/checkout-page.ts'
import { sitePage } from './printed-pages.ts'

const words = { checkout: 'Checkout record', measured: 'Measured', passes: 'In order', yesNo: 'yes no', lines: ['Name', 'Date'] }
const head = '<header class="device-head"><p class="label">PRS1</p><div><h1>Lift low</h1></div></header>'
const table = (row: string) => `<table><thead><tr><th>Reading</th></tr></thead><tbody><tr><th>${row}</th></tr></tbody></table>`
const meter = (name: string, row: string) =>
  `<section class="meter" data-meter><h2>Measure: <b>${name}</b></h2><p class="meter-caution">Live parts</p><details class="fault-details">${table(row)}</details><details class="fault-details" data-fault-table>${table('broken wire')}</details></section>`
const plain = (html: string | undefined) =>
  html
    ?.replace(/<title>.*?<\/title>|<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()

test('a record has what should be read with room for what was, and no table of faults', () =>
  expect(plain(checkoutPage(sitePage('PRS1', head + meter('', 'supply')), words))).toBe(
    'PRS1 Lift low: Checkout record Live parts Reading Measured In order supply yes no Name Date',
  ))

test('of several signals each has its name, and a caution stands once', () =>
  expect(plain(checkoutPage(sitePage('PRS1', head + meter('a', 'supply') + meter('b', 'bit')), words))).toBe(
    'PRS1 Lift low: Checkout record Live parts a Reading Measured In order supply yes no b Reading Measured In order bit yes no Name Date',
  ))

test('a device at which nothing is measured has no record', () => expect(checkoutPage(sitePage('PRS1', head), words)).toBeUndefined())

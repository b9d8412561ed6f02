import { describe, expect, test } from 'vitest'
import { pagesOf, pageToken, writePageNumbers } from '../../src/print/page-numbers.ts'
import { settle } from '../../src/print/settle.ts'

test('a number stands where its token stood, and three zeros where none is known', () => {
  const text = `LO-1 ${pageToken('p1')}, LO-2 ${pageToken('p2')}`
  expect(writePageNumbers(text, new Map([['p1', 87]]))).toBe('LO-1 87, LO-2 000')
})

test('several places on one page are one number', () => {
  const pages = new Map([
    ['a', 9],
    ['b', 3],
    ['c', 9],
  ])
  expect(pagesOf(['a', 'b', 'c', 'unknown'], pages)).toEqual([
    { id: 'b', page: 3 },
    { id: 'a', page: 9 },
  ])
})

describe('settling', () => {
  /** A printer in which the text of a number moves what follows it. */
  const printer = (pagesFor: (printing: number) => [string, number][]) => {
    let printing = 0
    return async () => {
      const pages = new Map(pagesFor(++printing))
      return { pages, total: 10, pdf: new Uint8Array([printing]) }
    }
  }
  const html = () => ''

  test('ends with the printing that has the numbers of the one before', async () => {
    const settled = await settle({ html, print: printer((printing) => [['p1', printing === 1 ? 4 : 5]]) })
    expect(settled).toMatchObject({ printings: 3, pages: new Map([['p1', 5]]) })
  })

  test('is given the numbers of the printing before', async () => {
    const given: (number | undefined)[] = []
    await settle({
      html: (pages, total) => {
        given.push(pages.get('p1'), total)
        return ''
      },
      print: printer(() => [['p1', 4]]),
    })
    expect(given).toEqual([undefined, 0, 4, 10])
  })

  test('gives up on a text that goes to and fro, and says what moves', async () => {
    expect(
      await settle({
        html,
        print: printer((printing) => [
          ['p1', printing % 2],
          ['p2', 7],
        ]),
      }),
    ).toEqual({ moved: ['p1'] })
  })

  test('takes a place that is gone for one that moved', async () => {
    const settled = await settle({
      html,
      print: printer((printing) =>
        printing === 1
          ? [
              ['p1', 4],
              ['p2', 5],
            ]
          : [['p1', 4]],
      ),
    })
    expect(settled).toMatchObject({ printings: 3 })
  })
})

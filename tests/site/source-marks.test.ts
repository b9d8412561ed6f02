import { expect, test } from 'vitest'
import { attributeOf, elementsOf } from '../../src/model/mdx-elements.ts'
import { markName, withSourceMarks } from '../../src/site/source-marks.ts'
import { loadSound } from '../sound-machine.ts'

/** Each mark as `line: text of that line`. */
function marksOf(body: string): string[] {
  const page = `---\ntitle: Marks\n---\n${body}`
  const { machines } = loadSound(new Map([['pages/front/marks.mdx', page]]))
  const found = machines[0]?.pages.find(({ name }) => name === 'marks')
  if (!found) throw new Error('the page was not read')
  const marks = elementsOf(withSourceMarks(found.body, found.source, found.source), markName)
  return marks.map((mark) => {
    expect(attributeOf(mark, 'file')).toBe('pages/front/marks.mdx')
    const line = Number(attributeOf(mark, 'line'))
    return `${line}: ${found.source.line(line)}`
  })
}

test('each block and each step has the line it begins in', () => {
  expect(marksOf('## Top\n\nWords\nand more.\n\n<Steps>\n  <Step>One.</Step>\n  <Step>Two.</Step>\n</Steps>\n\n- a\n- b\n')).toEqual(
    expect.arrayContaining(['4: ## Top', '6: Words', '9: <Steps>', '10:   <Step>One.</Step>', '11:   <Step>Two.</Step>', '14: - a']),
  )
})

test('line ends of Windows count once', () => {
  expect(marksOf('One.\r\n\r\nTwo.\r\n')).toEqual(['4: One.', '6: Two.'])
})

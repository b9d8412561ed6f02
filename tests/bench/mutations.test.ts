import { describe, expect, test } from 'vitest'
import { readFiles } from './example.ts'
import { judgeOver, makeMistakes } from './mutations/judge.ts'

/** What is always found where it is made. One mistake of each kind, the same in every run. */
const alwaysFound = [
  'tag on a page: a digit',
  'tag on a page: letter O for 0',
  'tag in the I/O list: a digit',
  'tag in the device list: a digit',
  'tag in the alarm list: a digit',
  'tag of an energy source: a digit',
  'part number on a page: en dash for hyphen',
  'drawing number in the device list: a digit',
  'alarm number on a page: a digit',
  'page on a page: a letter',
  'lesson in training: a letter',
  'row of the device list left out',
  'row of the alarm list left out',
  'row of the I/O list twice',
  'row of the drawing register twice',
  'needed cell emptied',
  'text with a separator loses its quotes',
  'quote never closed',
  'number with a decimal comma',
  'number of sheets in the register: one less',
  'address that is in use',
  'safety message without its Avoid',
  'heading renamed that a link leads to',
  'needed key of a page left out',
  'key of a page misspelt',
  'frontmatter without its first fence',
  'curly brackets in the text',
  'closing tag left out',
  'sheet of a drawing deleted',
  'isolation of an energy source removed',
  'lockout: safe position and service exchanged',
  'lockout: key of its head left out',
  'lockout: energy source left out of its list',
  'lockout: shut-down left out',
  'lockout: safety message left out',
  'lockout: step of a translation left out',
  'lockout: key of an isolation point left out',
  'lockout: hazard, release or proof left out',
  'safety message moved behind the last step',
  'safety message moved behind the words of its step',
  'safety message of a job left out',
  'severity in a translation lowered',
  'waiting time of an energy source too short',
  'delay notice left out',
  'delay notice too short',
  'value of a store left out',
  'unit of a store of another quantity',
  'headings of two languages exchanged',
  'preconditions of outputs left out',
  'one precondition of outputs left out',
  'condition for no lockout answered with no',
  'set-up at full speed at once',
  'drawing without a row in the register',
  'lockout or lesson whose file is in capitals',
  'checkout: supply of the devices ten times as large',
  'checkout: drop ten times as large',
  'checkout: gap ten times as large',
  'checkout: range of light ten times as large',
  'checkout: set point ten times as large',
  'checkout: voltage of a coil ten times as large',
  'checkout: power of a coil ten times as large',
  'checkout: range of a transmitter in another unit',
  'checkout: cross-section ten times as large',
  'checkout: length of a cable a hundred times as large',
  'checkout: rated speed of a motor a tenth',
  'checkout: PNP and NPN exchanged',
  'checkout: analogue signal of another kind',
  'training: a second answer is marked right',
  'training: the reason of an answer left out',
  'training: a need misspelt',
  'training: the revision raised alone',
  'training: minutes ten times as many',
  'training: an answer left out of a translation',
  'checkout: name of a value misspelt',
  'checkout: supply misspelt',
  'checkout: decimal comma',
  'checkout: data of two parts exchanged',
]

describe('one mistake over the example machine', () => {
  const files = readFiles('example-machine', 'content')
  const mistakes = makeMistakes(files, 1)
  const judge = judgeOver(files)

  test('there are enough of them, the same in every run', () => {
    expect(mistakes.length).toBeGreaterThan(500)
    expect(makeMistakes(files, 1).map(({ what }) => what)).toEqual(mistakes.map(({ what }) => what))
    expect(makeMistakes(files, 2).map(({ what }) => what)).not.toEqual(mistakes.map(({ what }) => what))
  })

  test('each changes something', () => {
    const same = mistakes.filter(
      (mistake) => [...mistake.files].every(([path, text]) => files.get(path) === text) && mistake.files.size === files.size,
    )
    expect(same.map(({ what }) => what)).toEqual([])
  })

  test.each(alwaysFound)('%s', (name) => {
    const mistake = mistakes.find(({ kind, beyond }) => kind === name && !beyond)
    expect(mistake, 'no such mistake is made').toBeDefined()
    if (!mistake) return
    const { findings, atItsLine } = judge(mistake)
    expect({ what: mistake.what, found: findings.length > 0, atItsLine }).toEqual({ what: mistake.what, found: true, atItsLine: true })
  })
})

import { describe, expect, test } from 'vitest'
import { type LookupEntry, lookUp } from '../../src/site/lookup.ts'

const alarm = (name: string): LookupEntry => ({ kind: 'alarm', name, said: `text of ${name}`, href: `alarms/${name}.html` })
const tag = (name: string): LookupEntry => ({ kind: 'tag', name, said: `what ${name} does`, href: `tags/${name}.html` })
const entries = [alarm('A0217'), alarm('A0218'), alarm('A0301'), tag('PRS204'), tag('PRS205'), tag('A217')]

const found = (kind: LookupEntry['kind'], name: string, among = entries) => lookUp(among, kind, name).found?.name
const near = (kind: LookupEntry['kind'], name: string, among = entries) => lookUp(among, kind, name).near.map((it) => it.name)

describe('what a button of the machine asks for', () => {
  test.each(['A0217', 'a0217', 'A217', '217', '0217', ' 217 ', '00217'])('alarm %j is A0217', (asked) => expect(found('alarm', asked)).toBe('A0217'))
  test.each(['PRS204', 'prs 204', 'PRS-204', 'PRS0204'])('tag %j is PRS204', (asked) => expect(found('tag', asked)).toBe('PRS204'))

  test('a kind is asked for, and no other answers', () => {
    expect(found('tag', 'A217')).toBe('A217')
    expect(found('part', 'PRS204')).toBeUndefined()
    expect(near('part', 'PRS204')).toEqual([])
  })

  test('a number that two alarms have is no answer, and both are offered', () => {
    const two = [alarm('A0217'), alarm('W0217')]
    expect(found('alarm', '217', two)).toBeUndefined()
    expect(near('alarm', '217', two)).toEqual(['A0217', 'W0217'])
    expect(found('alarm', 'W217', two)).toBe('W0217')
  })

  test('an alarm that is not there leads to those beside it, a tag to those a slip away', () => {
    expect(near('alarm', '219')).toEqual(['A0218', 'A0217'])
    expect(near('tag', 'PRS206')).toEqual(['PRS204', 'PRS205'])
    expect(near('tag', 'PRS2')).toEqual(['PRS204', 'PRS205'])
  })

  test('the name as it is written wins over one that is the same but for spelling', () => {
    const two = [tag('B1-01'), tag('B1-1')]
    expect(found('tag', 'B1-1', two)).toBe('B1-1')
    expect(found('tag', 'B1-01', two)).toBe('B1-01')
  })

  test('what is far from everything has nothing near', () => expect(near('alarm', '9999')).toEqual([]))
})

import { describe, expect, test } from 'vitest'
import { cmi5Xml } from '../../../src/training/packages/cmi5-xml.ts'
import type { Course } from '../../../src/training/packages/course.ts'
import { nameUuid } from '../../../src/training/packages/name-uuid.ts'
import { packageFaults } from '../../../src/training/packages/package-faults.ts'
import { scorm12Manifest, scorm2004Manifest } from '../../../src/training/packages/scorm-manifest.ts'
import { course } from './course.ts'
import { schemaFaults } from './schemas.ts'

const cmi5 = cmi5Xml(course)
const scorm12 = scorm12Manifest(course)
const scorm2004 = scorm2004Manifest(course)
const awkward: Course = {
  ...course,
  title: 'x'.repeat(300),
  lessons: [
    { id: 'größe_1', title: '\u0007 bell', description: 'A', launch: 'launch/a b.html', passPercent: 100 },
    { id: 'größe-1', title: '<', description: '&', launch: 'launch/ü.html', passPercent: 0 },
  ],
  files: ['launch/a b.html', 'launch/ü.html'],
}

/** Exactly one place is changed. */
function changed(text: string, from: string, to: string): string {
  expect(text.split(from)).toHaveLength(2)
  return text.replace(from, to)
}

describe('C26: the course structure of cmi5 against its published schema', () => {
  test('is valid', async () => {
    expect(await schemaFaults(cmi5, 'cmi5')).toEqual([])
    expect(await schemaFaults(cmi5Xml(awkward), 'cmi5')).toEqual([])
  })

  const firstUnit = /<au id[\s\S]*?<\/au>\s*/g
  const description = `<description>\n      <langstring lang="en">${course.description}</langstring>\n    </description>`
  test.each([
    ['a mastery score of 1.2', changed(cmi5, 'masteryScore="0.8"', 'masteryScore="1.2"'), 'maxInclusive'],
    ['moveOn "PassedAndCompleted"', changed(cmi5, '"CompletedAndPassed"', '"PassedAndCompleted"'), 'enumeration'],
    ['no unit', cmi5.replace(firstUnit, ''), 'Missing child element'],
    ['no description of the course', changed(cmi5, description, ''), 'Missing child element'],
  ])('%s is refused', async (_, xml, reason) => {
    const faults = await schemaFaults(xml, 'cmi5')
    expect(faults.join('\n')).toContain(reason)
  })

  test('says what moves the learner on, and the pass mark where something is asked', () => {
    expect([...cmi5.matchAll(/moveOn="(\w+)"(?: masteryScore="([\d.]+)")?/g)].map(([, moveOn, score]) => [moveOn, score])).toEqual([
      ['Completed', undefined],
      ['CompletedAndPassed', '0.8'],
    ])
  })
})

describe('C27: the manifests of SCORM', () => {
  test.each([
    ['1.2', scorm12, scorm12Manifest(awkward), 'scorm-1.2'],
    ['2004', scorm2004, scorm2004Manifest(awkward), 'scorm-2004'],
  ] as const)('%s are valid', async (_, plain, strange, form) => {
    expect(await schemaFaults(plain, form)).toEqual([])
    expect(await schemaFaults(strange, form)).toEqual([])
  })

  test.each([
    ['1.2: scormtype "page"', changed(scorm12, 'adlcp:scormtype="asset"', 'adlcp:scormtype="page"'), 'scorm-1.2'],
    ['2004: scormType "page"', changed(scorm2004, 'adlcp:scormType="asset"', 'adlcp:scormType="page"'), 'scorm-2004'],
  ] as const)('%s is refused', async (_, xml, form) => {
    expect((await schemaFaults(xml, form)).join('\n')).toContain('enumeration')
  })

  test('2004: a pass mark above 1 is refused', async () => {
    const xml = changed(scorm2004, '>0.8<', '>1.8<')
    expect(await schemaFaults(xml, 'scorm-2004')).not.toEqual([])
  })

  test('a reference to nothing passes the schema; our own check finds it', async () => {
    const xml = changed(scorm12, 'identifierref="lesson-machine-tour"', 'identifierref="lesson-nothing"')
    expect(await schemaFaults(xml, 'scorm-1.2')).toEqual([])
    expect(packageFaults(xml, course.files)).toEqual(['item-machine-tour refers to lesson-nothing, and there is no such resource'])
  })

  test('a title longer than the edition takes is shortened in the list', () => {
    expect(scorm12Manifest(awkward)).toContain(`<title>${'x'.repeat(199)}…</title>`)
    expect(scorm2004Manifest(awkward)).toContain(`<title>${'x'.repeat(300)}</title>`)
  })

  test('two lessons of like names have two ids', () => {
    expect([...scorm12Manifest(awkward).matchAll(/<item identifier="([^"]+)"/g)].map(([, id]) => id)).toEqual([
      'item-gr_xf6__xdf_e_x5f_1',
      'item-gr_xf6__xdf_e-1',
    ])
  })
})

describe('what no schema sees', () => {
  test.each([
    ['cmi5', cmi5, cmi5Xml(awkward)],
    ['SCORM 1.2', scorm12, scorm12Manifest(awkward)],
    ['SCORM 2004', scorm2004, scorm2004Manifest(awkward)],
  ])('is in order in %s', (_, plain, strange) => {
    expect(packageFaults(plain, course.files)).toEqual([])
    expect(packageFaults(strange, awkward.files)).toEqual([])
  })

  test.each([
    ['a file that is not there', scorm12, course.files.slice(1), ['file names the file assets/site.css, and the package does not hold it']],
    [
      'a page to open that is not there',
      cmi5,
      course.files.filter((file) => file !== 'launch/machine-tour.html'),
      ['a unit names the file launch/machine-tour.html, and the package does not hold it'],
    ],
    [
      'an id twice',
      changed(scorm12, '"item-machine-tour"', '"item-stop_x5f_and.lock"'),
      course.files,
      ['the id item-stop_x5f_and.lock is there twice'],
    ],
    ['a unit twice', cmi5.replace(/<au id="[^"]+"/g, '<au id="urn:x"'), course.files, ['the id urn:x is there twice']],
    [
      'a dependency on nothing',
      changed(scorm12, '<resource identifier="shared"', '<resource identifier="others"'),
      course.files,
      Array(2).fill('dependency refers to shared, and there is no such resource'),
    ],
    [
      'a default that is not there',
      changed(scorm12, 'default="lessons"', 'default="x"'),
      course.files,
      ['the organization x is the default and is not there'],
    ],
  ])('%s is told', (_, xml, files, faults) => expect(packageFaults(xml, files)).toEqual(faults))
})

test('the same course gives the same manifests', () => {
  expect([cmi5Xml(course), scorm12Manifest(course), scorm2004Manifest(course)]).toEqual([cmi5, scorm12, scorm2004])
})

test('a UUID by its name is the one of RFC 9562, appendix A.4', () => {
  expect(nameUuid('www.example.com', '6ba7b810-9dad-11d1-80b4-00c04fd430c8')).toBe('2ed6657d-e927-568b-95e1-2665a8aea6a2')
})
